import { isPValue } from './blank.ts';
import { readHead } from './heads.ts';
import { labelStatistic } from './label-statistic.ts';
import { type LineRole, lineRole } from './line-words.ts';

/** "Early, Total" closes a section; "Total" closes the table. */
export function lineOf(own: string): LineRole {
  const parts = own.split(', ');
  // "Total, Count" and "Early, % within row": what a line holds comes last.
  if (parts.length > 1 && isKind(parts[parts.length - 1])) {
    const inner = lineRole(parts[parts.length - 1]);
    return inner === 'percent' || inner === 'aside' ? inner : lineOf(parts.slice(0, -1).join(', '));
  }
  const last = lineRole(parts[parts.length - 1]);
  if (parts.length > 1 && last === 'total') return 'subtotal';
  return lineRole(own);
}

/** Whether a label says what a line holds, not what it is of: "Count", "% within row", "Expected count". */
function isKind(label: string): boolean {
  const role = lineRole(label);
  return role === 'percent' || role === 'aside' || role === 'n' || readHead(label)?.role === 'count';
}

/** What lines of several kinds hold: "% within row" of "Early, % within row"; empty where a table has one kind. */
export function kindOf(own: string): string {
  const last = own.split(', ').pop() ?? '';
  return own.includes(', ') && isKind(last) ? last : '';
}

export interface Labelled {
  readonly at: number;
  readonly own: string;
  readonly section: string;
  /** The first of several labels. */
  readonly first: string;
  readonly under: number | null;
  /** Said where the row as a whole is no part of a sum: the test of the section that it heads. */
  readonly line?: LineRole;
}

/** @param ofTest which columns hold p or degrees of freedom. */
export function labelsOf(
  body: readonly (readonly string[])[],
  labelColumns: number,
  ofTest: readonly boolean[] = [],
): Labelled[] {
  let section = '';
  let above: string[] = [];
  const rows: Labelled[] = [];
  body.forEach((row, at) => {
    const labels = row.slice(0, labelColumns).map((cell) => cell.replaceAll(/\s+/g, ' ').trim());
    const cells = row.slice(labelColumns);
    if (cells.every((cell) => cell === '') && labels.some((label) => label !== '')) {
      // A label alone heads what follows.
      section = labels
        .filter((label) => label !== '')
        .join(' ')
        .replace(/:$/, '');
      return;
    }
    if (
      cells.every(
        (cell, c) => cell === '' || (ofTest[c] && (isPValue(cell) || /^\d+(?:[.,]\d+)?$/.test(cell))),
      ) &&
      cells.length > 1 &&
      labels[0] !== ''
    ) {
      // "Fibre, n (%)" with p at its end heads the kinds below, and the p is theirs.
      section = labels[0].replace(/:$/, '');
      const own = labelStatistic(section)?.of ?? section;
      rows.push({ at, own, section: '', first: '', under: null, line: 'aside' });
      return;
    }
    const blank = labels.every((label) => label === '');
    const before = rows[rows.length - 1];
    const percents = cells.filter((cell) => /%/.test(cell) || /^\(.*\)$/.test(cell)).length;
    if (blank && before !== undefined && percents * 2 >= cells.filter((cell) => cell !== '').length) {
      rows.push({
        at,
        own: `${before.own} %`,
        section: before.section,
        first: before.first,
        under: rows.length - 1,
      });
      return;
    }
    // Grouped labels are printed once and stand for the rows below.
    const full = labels.map((label, i) => (label === '' && i < labelColumns - 1 ? (above[i] ?? '') : label));
    above = full;
    const own = full.filter((label) => label !== '').join(', ');

    const ends = lineRole(own) === 'total' && section !== '';
    rows.push({
      at,
      own: own === '' ? `row ${at + 1}` : own,
      section: ends ? '' : section,
      first: labelColumns > 1 && !ends ? full[0] : '',
      under: lineOf(own) === 'percent' ? countAbove(rows, full) : null,
    });
  });
  return rows;
}

/** The line of counts that a line of per cents belongs to: the last of the same labels, or the one just above. */
function countAbove(rows: readonly Labelled[], full: readonly string[]): number | null {
  const of = full
    .slice(0, -1)
    .filter((label) => label !== '')
    .join(', ');
  const plain = (own: string) => (kindOf(own) === '' ? own : own.split(', ').slice(0, -1).join(', '));
  for (let at = rows.length - 1; at >= 0; at--) {
    const line = lineOf(rows[at].own);
    if (line === 'percent' || line === 'aside') continue;
    return of === '' || plain(rows[at].own) === of ? at : null;
  }
  return null;
}

/** Equal labels are told apart by a number: each line keeps its own arithmetic. */
export function unique(labels: readonly string[]): string[] {
  const times = new Map<string, number>();
  return labels.map((label) => {
    const before = times.get(label) ?? 0;
    times.set(label, before + 1);
    return before === 0 ? label : `${label} (${before + 1})`;
  });
}

import { type HeadReading, type LineRole, lineRole, type Role, readHead } from './heads.ts';

/** One column of numbers. */
export interface TableColumn {
  /** The head as it stands, with the head that spans it. */
  readonly head: string;
  /** The head that spans several columns; empty where none does. */
  readonly group: string;
  readonly reading: HeadReading;
  readonly line: LineRole;
}

export interface TableRow {
  /** The label as it stands, with that of its section; made unique by a number where two are alike. */
  readonly label: string;
  readonly line: LineRole;
  /** The section it stands in: a label alone above it, or the first of several labels; empty for none. */
  readonly section: string;
  /** A row without a label of its own under a row of counts holds their per cents. */
  readonly under: number | null;
}

/** Cells with what each row and column is called and holds. */
export interface Layout {
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** One text a row and column. */
  readonly texts: readonly (readonly string[])[];
  readonly corner: string;
  /** The rows were columns in print. */
  readonly turned: boolean;
}

const EMPTY = new Set(['', '-', '–', '—', '.', '·', 'n/a', 'na', 'n.d.', '…', '..', 'nd', '/']);

export function isBlank(text: string): boolean {
  return EMPTY.has(text.trim().toLowerCase());
}

const isNumber = (text: string) => /^[<>≤≥~(]?\s?[-+−–]?[\d.,]*\d/.test(text.trim());

/** Finds heads, sections and labels; turns a table whose statistics stand in the first column. */
export function layOut(grid: readonly (readonly string[])[], roles: Readonly<Record<string, Role>>): Layout {
  const headRows = hasTwoHeads(grid) ? 2 : 1;
  const labelColumns = countLabelColumns(grid.slice(headRows));
  const body = grid.slice(headRows);
  const rows = labelsOf(body, labelColumns);
  const texts = rows.map(({ at }) => body[at].slice(labelColumns));
  const heads = headsOf(grid.slice(0, headRows), labelColumns);
  const corner = grid[0].slice(0, labelColumns).join(' ').trim();
  const named = rows.filter(({ own }) => isStatistic(readHead(own))).length;
  const headed = heads.filter(({ head }) => isStatistic(readHead(head))).length;
  if (named >= 2 && named > headed && labelColumns === 1)
    return {
      columns: rows.map(({ own, section }) => column(own, section, roles)),
      rows: unique(heads.map(({ head, group }) => (group === '' ? head : `${group}, ${head}`))).map(
        (label, i) => ({
          label,
          line: lineRole(heads[i].head),
          section: heads[i].group,
          under: null,
        }),
      ),
      texts: heads.map((_, i) => texts.map((row) => row[i] ?? '')),
      corner,
      turned: true,
    };
  const labels = unique(rows.map(({ own, section }) => (section === '' ? own : `${section}, ${own}`)));
  return {
    columns: heads.map(({ head, group }) => column(head, group, roles)),
    rows: rows.map(({ own, under, section, first }, i) => ({
      label: labels[i],
      line: under === null ? lineOf(own) : 'percent',
      section: section === '' ? first : section,
      under,
    })),
    texts,
    corner,
    turned: false,
  };
}

function column(head: string, group: string, roles: Readonly<Record<string, Role>>): TableColumn {
  const said = roles[group === '' ? head : `${group} ${head}`] ?? roles[head];
  // What a column holds is its role; of its line only matters whether it sums.
  const sums = (text: string) => {
    const line = lineRole(text);
    return line === 'total' || line === 'subtotal' ? line : null;
  };
  const line = sums(head) ?? (group === '' ? null : sums(group)) ?? 'part';
  const reading: HeadReading =
    said !== undefined ? { role: said } : (readHead(head) ?? readHead(group) ?? { role: 'unknown' as const });
  return {
    head: group === '' ? head : head === '' ? group : `${group} ${head}`,
    group,
    reading,
    line,
  };
}

const STATISTICS: ReadonlySet<Role> = new Set<Role>([
  'mean',
  'sd',
  'se',
  'cv',
  'median',
  'q1',
  'q3',
  'iqr',
  'min',
  'max',
  'range',
  'interval',
  'p',
  'df',
  'sum-of-squares',
  'mean-square',
]);

/** Whether a head names a statistic beyond doubt; "low", "n" and "d" may be kinds or numbers of anything. */
export function isStatistic(reading: HeadReading | undefined): boolean {
  return reading !== undefined && (STATISTICS.has(reading.role) || reading.role === 'n');
}

/** A second row of heads holds words, or single signs such as "n" and "%", under heads that span. */
function hasTwoHeads(grid: readonly (readonly string[])[]): boolean {
  if (grid.length < 3) return false;
  const [first, second, third] = grid;
  const cells = second.slice(1);
  const words = cells.filter((cell) => cell !== '' && !isNumber(cell) && !isBlank(cell)).length;
  const filled = cells.filter((cell) => cell !== '').length;
  const spanning =
    first.slice(1).some((cell) => cell === '') || (third.slice(1).some(isNumber) && second[0] === '');
  return words >= 2 && words * 2 > filled && spanning && third.slice(1).some((cell) => isNumber(cell));
}

/** Leading columns of words; the first is always one of labels. */
function countLabelColumns(body: readonly (readonly string[])[]): number {
  const width = body[0]?.length ?? 0;
  let count = 1;
  while (count < width - 1) {
    const cells = body.map((row) => row[count]).filter((cell) => !isBlank(cell));
    const words = cells.filter((cell) => !isNumber(cell) && !/^(?:n\.?\s?s\.?|\*+)$/i.test(cell)).length;
    if (cells.length === 0 || words * 2 <= cells.length) break;
    count++;
  }
  return count;
}

/** "Early, Total" closes a section; "Total" closes the table. */
function lineOf(own: string): LineRole {
  const parts = own.split(', ');
  const last = lineRole(parts[parts.length - 1]);
  if (parts.length > 1 && last === 'total') return 'subtotal';
  return lineRole(own);
}

interface Labelled {
  readonly at: number;
  readonly own: string;
  readonly section: string;
  /** The first of several labels. */
  readonly first: string;
  readonly under: number | null;
}

function labelsOf(body: readonly (readonly string[])[], labelColumns: number): Labelled[] {
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
      under: null,
    });
  });
  return rows;
}

function headsOf(rows: readonly (readonly string[])[], labelColumns: number) {
  const [upper, lower] = rows.map((row) =>
    row.slice(labelColumns).map((cell) => cell.replaceAll(/\s+/g, ' ').trim()),
  );
  if (lower === undefined)
    return unique(upper.map((head, i) => (head === '' ? `column ${i + 1}` : head))).map((head) => ({
      head,
      group: '',
    }));
  let group = '';
  return upper.map((over, i) => {
    if (over !== '') group = over;
    const under = lower[i] ?? '';
    return under === ''
      ? { head: over === '' ? `column ${i + 1}` : over, group: '' }
      : { head: under, group };
  });
}

/** Equal labels are told apart by a number: each line keeps its own arithmetic. */
function unique(labels: readonly string[]): string[] {
  const times = new Map<string, number>();
  return labels.map((label) => {
    const before = times.get(label) ?? 0;
    times.set(label, before + 1);
    return before === 0 ? label : `${label} (${before + 1})`;
  });
}

import { printCount, printList } from '../../analyses/phrasing.ts';
import { isMissing } from '../../fragments/missing.ts';
import { nameIn } from '../../sources/reading/assemble.ts';
import type { Prepared } from '../prepare.ts';
import type { ReadinessLine } from '../results/results.ts';
import { MOST_NAMED, rowsWhere } from './rows.ts';

export function certaintyLine({ fragments }: Prepared): readonly ReadinessLine[] {
  const doubtful = [...fragments.columns.values()].flatMap((column) => {
    // Nobody has marked what was computed.
    if (column.kind !== 'term' || column.attribute.derived) return [];
    const count = rowsWhere(
      fragments,
      (row) => column.codes[row] >= 0 && column.certainty[row] > 0 && column.derivedFrom?.has(row) !== true,
    ).length;
    return count === 0 ? [] : [{ label: column.attribute.label, count }];
  });
  if (doubtful.length === 0) return [];
  const shown = doubtful.sort((a, b) => b.count - a.count).slice(0, MOST_NAMED);
  return [
    {
      topic: 'certainty',
      state: 'mind',
      says: `Marked as doubtful: ${printList(shown.map(({ label, count }) => `${label} ${count}`))}; they count with the certain ones.`,
      mend: 'Select certain ones alone with "certainty" in a condition; where a verdict turns with them, its answer says so.',
    },
  ];
}

/** Attributes that one source or site records and another never does: a gap there is no absence. */
export function gapLines({ fragments }: Prepared): readonly ReadinessLine[] {
  const { sources, origin } = fragments;
  if (sources.length < 2) return [];
  const rowsOf = sources.map((_, source) => rowsWhere(fragments, (row) => origin[row].source === source));
  const never = [...fragments.columns.values()].flatMap((column) => {
    if (!COMPARED.has(column.attribute.block) || column.attribute.derived) return [];
    const silent = sources.filter(
      (_, source) => rowsOf[source].length > 0 && rowsOf[source].every((row) => isMissing(column, row)),
    );
    const telling = sources.length - silent.length;
    return silent.length === 0 || telling === 0 ? [] : [{ label: column.attribute.label, silent }];
  });
  if (never.length === 0) return [];
  const shown = never
    .slice(0, MOST_NAMED)
    .map(({ label, silent }) => `${label} (not in ${printList(silent)})`);
  const rest = never.length - shown.length;
  return [
    {
      topic: 'gaps',
      state: 'mind',
      says: `Never recorded by some: ${printList([...shown, ...(rest > 0 ? [printCount(rest, 'further attribute')] : [])])}.`,
    },
  ];
}

const COMPARED: ReadonlySet<string> = new Set(['structure', 'spacing', 'fibre']);

export function recorderLine({ fragments }: Prepared): readonly ReadinessLine[] {
  const column = fragments.columns.get('recorder');
  const names = new Set(
    column === undefined ? [] : rowsWhere(fragments, () => true).map((row) => nameIn(column, row)),
  );
  names.delete('');
  if (names.size === 0)
    return [
      {
        topic: 'recorders',
        state: 'mind',
        says: 'Who recorded is not known: a difference between recorders cannot be told from one between places.',
        mend: 'Add a column of recorders.',
      },
    ];
  const shown = printList([...names].slice(0, MOST_NAMED));
  const all = `${printCount(names.size, 'recorder')}: ${shown}${names.size > MOST_NAMED ? ' and others' : ''}`;
  // Initials end in a point of their own.
  return [{ topic: 'recorders', state: 'ready', says: all.endsWith('.') ? all : `${all}.` }];
}

export function columnsLine({ sources }: Prepared): readonly ReadinessLine[] {
  const open = sources.flatMap(({ name, columns }) => {
    const suggested = columns.filter(
      ({ suggestion, attributes }) => suggestion !== undefined && attributes.length === 0,
    );
    return suggested.length === 0 ? [] : [`${suggested.length} of ${name}`];
  });
  if (open.length === 0)
    return [{ topic: 'columns', state: 'ready', says: 'No column waits for a confirmation.' }];
  return [
    {
      topic: 'columns',
      state: 'ask',
      says: `Columns whose meaning is only suggested, and not used: ${printList(open)}.`,
      mend: 'Confirm or refuse them on Sources, or in the profile.',
    },
  ];
}

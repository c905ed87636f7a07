import type { ResultTable } from '../contract.ts';
import type { CountedOtherwise, CrosstabFound } from './found.ts';

/** The cells that the answer quotes. */
export function quotedTable({ quoted, rowsLabel, columnsLabel, level }: CrosstabFound): ResultTable {
  return {
    title: 'Cells that stand out',
    columns: [
      { id: 'row', label: rowsLabel },
      { id: 'column', label: columnsLabel },
      { id: 'stands', label: 'than expected' },
      { id: 'count', label: 'count' },
      { id: 'base', label: 'of the row' },
      { id: 'share', label: 'share of the row' },
    ],
    rows: quoted.map(({ row, column, stands, count, of }) => [row, column, stands, count, of, count / of]),
    note: `Strongest first; lines with few records are left out${level.asked === 'recorded' ? ', and kinds are counted at the level that all record' : ''}.`,
  };
}

/** What the shares may be, where some records name only something broader. */
export function boundsTable({ bounds, rowsLabel, columnsLabel }: CrosstabFound): ResultTable {
  return {
    title: 'Bounds of the shares, as closely as anybody recorded',
    columns: [
      { id: 'row', label: rowsLabel },
      { id: 'column', label: columnsLabel },
      { id: 'count', label: 'count' },
      { id: 'could', label: 'broader, could be' },
      { id: 'base', label: 'of' },
      { id: 'low', label: 'share at least' },
      { id: 'high', label: 'share at most' },
    ],
    rows: bounds.map(({ group, kind, certain, could, of, low, high }) => [
      group,
      kind,
      certain,
      could,
      of,
      low,
      high,
    ]),
    note: 'A record that names only something broader may be of the kind or of none: shares where none of them is, and where all are.',
  };
}

const CHANGES: Readonly<Record<CountedOtherwise['change'], string>> = {
  'look-alikes as one': 'look-alikes counted as one',
  'line left out': 'left out',
  'told more closely': 'told apart, the few that say no more left out',
  'as recorded': 'counted by the words as recorded',
  'at the common level': 'counted at the level that all record',
};

/** The same question with the table counted otherwise. */
export function otherwiseTable({ otherwise }: CrosstabFound): ResultTable {
  return {
    title: 'The same, counted otherwise',
    columns: [
      { id: 'change', label: 'what is done' },
      { id: 'names', label: 'to' },
      { id: 'p', label: 'p' },
      { id: 'v', label: "Cramér's V, bias-corrected" },
      { id: 'told', label: 'association' },
    ],
    rows: otherwise.map(({ change, names, p, v, told }) => [CHANGES[change], names.join(', '), p, v, told]),
  };
}

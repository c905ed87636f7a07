import { wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';

/** What percentages of a printed table may be of. */
export type Base = 'first count' | 'row' | 'column' | 'all' | 'row n' | 'column n' | 'group' | 'section';
export const BASES: readonly Base[] = [
  'row',
  'column',
  'all',
  'row n',
  'column n',
  'group',
  'section',
  'first count',
];

export const BASE_WORDS: Readonly<Record<Base, string>> = {
  row: 'its row',
  column: 'its column',
  all: 'the whole table',
  'row n': 'the n of its row',
  'column n': 'the n of its column',
  group: 'the counts under its head',
  section: 'its section',
  'first count': 'the first count of its row',
};

/** The count that a percentage goes with: in its cell, in the column before or behind it, or in the row above. */
export function countBeside(
  { cells, columns, rows }: PrintedTable,
  figure: PrintedFigure,
): PrintedFigure | null {
  const at = figure.cell;
  if (at === null) return null;
  const isCount = ({ quantity, values: [value] }: PrintedFigure) =>
    (quantity === 'count' || quantity === 'n' || quantity === 'total') && !value.percent;
  const inCell = cells[at.row][at.column].find(isCount);
  if (inCell !== undefined) return inCell;
  const above = rows[at.row].under;
  if (above !== null) return cells[above][at.column].find(isCount) ?? null;
  for (const column of [at.column - 1, at.column + 1]) {
    const other = columns[column];
    if (other === undefined || other.group !== columns[at.column].group) continue;
    if (other.role !== 'count' && other.role !== 'n') continue;
    // Between two counts a percentage belongs to the one before it.
    const found = cells[at.row][column].find(isCount);
    if (found !== undefined) return found;
  }
  return null;
}

function countsIn(figures: readonly (readonly PrintedFigure[])[]): number | null {
  let sum = 0;
  let any = false;
  for (const cell of figures) {
    const count = cell.find(
      ({ quantity, values: [value] }) => (quantity === 'count' || quantity === 'n') && !value.percent,
    );
    const value = wholeOf(count);
    if (count === undefined) continue;
    if (value === null) return null;
    sum += value;
    any = true;
  }
  return any ? sum : null;
}

function sumIn(figures: readonly PrintedFigure[]): number | null {
  return wholeOf(
    figures.find(
      ({ quantity, values: [value] }) =>
        (quantity === 'total' || quantity === 'n' || quantity === 'count') && !value.percent,
    ),
  );
}

export function baseSize(table: PrintedTable, figure: PrintedFigure, base: Base): number | null {
  const at = figure.cell;
  if (at === null) return null;
  const { cells, rows, columns } = table;
  const row = rows[at.row].under ?? at.row;
  const countColumn = columns.findIndex(
    (other, c) =>
      Math.abs(c - at.column) === 1 &&
      (other.role === 'count' || other.role === 'n') &&
      other.group === columns[at.column].group,
  );
  // A cell that holds its own count, as "12 (34 %)", stands for itself.
  const inCell = cells[row][at.column].some(
    ({ quantity, values: [value] }) => quantity !== 'share' && value.percent !== true,
  );
  const own = inCell ? at.column : ownColumn(columns, at.column, countColumn);
  const partRows = rows.flatMap(({ line, under }, r) => (line === 'part' && under === null ? [r] : []));
  const partColumns = columns.flatMap(({ line, role }, c) =>
    line === 'part' && role === 'count' ? [c] : [],
  );
  const totalColumns = columns.flatMap(({ line, role }, c) =>
    line === 'total' && role !== 'share' ? [c] : [],
  );
  const totalRows = rows.flatMap(({ line }, r) => (line === 'total' ? [r] : []));
  switch (base) {
    case 'row':
      for (const c of totalColumns) {
        const printed = sumIn(cells[row][c]);
        if (printed !== null) return printed;
      }
      return partColumns.length > 1 ? countsIn(partColumns.map((c) => cells[row][c])) : null;
    case 'column':
      for (const r of totalRows) {
        const printed = sumIn(cells[r][own]);
        if (printed !== null) return printed;
      }
      return partRows.length > 1 ? countsIn(partRows.map((r) => cells[r][own])) : null;
    case 'all':
      for (const r of totalRows)
        for (const c of totalColumns) {
          const printed = sumIn(cells[r][c]);
          if (printed !== null) return printed;
        }
      return countsIn(partRows.flatMap((r) => partColumns.map((c) => cells[r][c])));
    case 'row n': {
      const c = columns.findIndex(({ role, line }) => role === 'n' && line !== 'total');
      const c2 =
        c >= 0
          ? c
          : columns.findIndex(
              ({ role, line }) =>
                role === 'count' && line === 'part' && partColumns.length === 1 && line !== undefined,
            );
      return c2 < 0 || c2 === own ? rows[row].size : sumIn(cells[row][c2]);
    }
    case 'column n': {
      const r = rows.findIndex(({ line }) => line === 'n');
      return r < 0
        ? columns[at.column].size
        : sumIn(cells[r][own].length > 0 ? cells[r][own] : cells[r][at.column]);
    }
    case 'first count': {
      const [first] = partColumns;
      return first === undefined || first === own ? null : sumIn(cells[row][first]);
    }
    case 'section': {
      const { section } = rows[row];
      const within = partRows.filter((r) => rows[r].section === section);
      return section === '' || within.length < 2 ? null : countsIn(within.map((r) => cells[r][own]));
    }
    case 'group': {
      const { group } = columns[at.column];
      const inGroup = columns.flatMap((column, c) =>
        column.group === group && column.role === 'count' && column.line === 'part' ? [c] : [],
      );
      return group === '' || inGroup.length < 2 ? null : countsIn(inGroup.map((c) => cells[row][c]));
    }
  }
}

/** The column of counts that a column of percentages goes with: the one before it, else the one behind. */
function ownColumn(columns: PrintedTable['columns'], at: number, beside: number): number {
  if (columns[at].role !== 'share' || beside < 0) return at;
  const before = columns[at - 1]?.role;
  return before === 'count' || before === 'n' ? at - 1 : beside;
}

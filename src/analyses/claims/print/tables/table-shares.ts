import type { Check } from '../../found.ts';
import { named, shown, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import { collect } from '../evidence.ts';
import { fitOfFraction, sharePossible } from '../shares.ts';

/**
 * The percentages of a printed table: each of the count beside it, of a base that the table shows by what fits.
 * A table takes all its percentages of one base: of its rows, its columns, the whole, or of an n that is printed.
 * Where no base fits most of them, what they are of is not told, and nothing is said against them.
 */
export function checkTableShares(table: PrintedTable): Check[] {
  const cells = table.figures.filter(
    ({ quantity, cell, values: [value] }) =>
      cell !== null &&
      table.columns[cell.column].role !== 'cumulative' &&
      (quantity === 'share' || (quantity === 'total' && value.percent === true)) &&
      value.relation === '=',
  );
  if (cells.length === 0) return [];
  const body = cells.filter((figure) => inBody(table, figure));
  const sums = cells.filter((figure) => !inBody(table, figure));
  return [
    // Lines of several kinds, and columns such as "%" and "Valid %", have each its own base.
    ...[...collect(body, (figure) => kindOf(table, figure)).values()].flatMap((one) =>
      settle(table, one, BASES),
    ),
    ...sums.flatMap((figure) => sumShare(table, figure)),
  ];
}

function kindOf({ rows, columns }: PrintedTable, { cell }: PrintedFigure): string {
  if (cell === null) return '';
  const { head, group, role } = columns[cell.column];
  return `${rows[cell.row].kind} / ${role === 'share' && /%|per ?cent/i.test(head) ? head.slice(group.length).trim() : ''}`;
}

function inBody({ rows, columns }: PrintedTable, { cell }: PrintedFigure): boolean {
  if (cell === null) return false;
  const row = rows[cell.row].line;
  return (
    (row === 'part' || row === 'percent') &&
    columns[cell.column].line !== 'total' &&
    columns[cell.column].line !== 'subtotal'
  );
}

type Base = 'first count' | 'row' | 'column' | 'all' | 'row n' | 'column n' | 'group' | 'section';
const BASES: readonly Base[] = [
  'row',
  'column',
  'all',
  'row n',
  'column n',
  'group',
  'section',
  'first count',
];

const BASE_WORDS: Readonly<Record<Base, string>> = {
  row: 'its row',
  column: 'its column',
  all: 'the whole table',
  'row n': 'the n of its row',
  'column n': 'the n of its column',
  group: 'the counts under its head',
  section: 'its section',
  'first count': 'the first count of its row',
};

interface Of {
  readonly over: number | null;
  readonly under: number;
  readonly with: readonly PrintedFigure[];
}

/** Count and base of a percentage, so far as the table prints them. */
function fractionOf(table: PrintedTable, figure: PrintedFigure, base: Base): Of | null {
  const count = countBeside(table, figure);
  const under = baseSize(table, figure, base);
  if (under === null || under < 1) return null;
  return { over: wholeOf(count ?? undefined), under, with: count === null ? [] : [count] };
}

/** The count that a percentage goes with: in its cell, in the column before or behind it, or in the row above. */
function countBeside({ cells, columns, rows }: PrintedTable, figure: PrintedFigure): PrintedFigure | null {
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

function baseSize(table: PrintedTable, figure: PrintedFigure, base: Base): number | null {
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

/** Outcome of one percentage under one base: it fits, it does not, or the table does not say. */
function fits({ over, under }: Of, figure: PrintedFigure): boolean {
  if (over === null) return sharePossible(figure, under);
  return fitOfFraction({ over: BigInt(over), under: BigInt(under) }, figure) !== undefined;
}

function settle(table: PrintedTable, cells: readonly PrintedFigure[], bases: readonly Base[]): Check[] {
  if (cells.length === 0) return [];
  const tried = bases.map((base) => {
    const of = cells.map((figure) => fractionOf(table, figure, base));
    const asked = of.filter((one) => one !== null).length;
    const good = of.filter((one, i) => one !== null && fits(one, cells[i])).length;
    return { base, of, asked, good };
  });
  const best = tried.reduce((one, other) => (other.good > one.good ? other : one));
  if (best.asked === 0) return [];
  const misfits = best.asked - best.good;
  const told = best.good >= 3 && best.good >= 3 * misfits;
  const few = best.asked <= 3 && best.good > misfits;
  return cells.flatMap((figure, i): Check[] => {
    const of = best.of[i];
    if (of === null) return [];
    const { over, under } = of;
    const words =
      over === null
        ? `of ${under} (${BASE_WORDS[best.base]})`
        : `${over}/${under} = ${shown(over / under, figure)} (of ${BASE_WORDS[best.base]})`;
    const said = {
      figure: figure.id,
      name: 'percentage of its base',
      from: 'print',
      with: of.with.map(({ id }) => id),
    } as const;
    if (fits(of, figure)) {
      const fit =
        over === null ? undefined : fitOfFraction({ over: BigInt(over), under: BigInt(under) }, figure);
      return [{ ...said, ...(fit ?? { outcome: 'passes' as const }), working: `${words}.` }];
    }
    if (!told && !few)
      return [
        {
          ...said,
          outcome: 'open',
          working: 'What these percentages are of the table does not show.',
          resolve: 'State what the percentages are of.',
        },
      ];
    return [
      {
        ...said,
        outcome: over === null || few ? 'differs' : 'cannot be',
        working: `${words}, which does not print as ${figure.printed}; ${best.good} of ${best.asked} percentages of the table are of that base.`,
        resolve: 'State the count and the number of records that the percentage is of.',
      },
    ];
  });
}

/** A percentage in a line of sums is of the whole, of its own line (100 %), or of the sums it stands among. */
function sumShare(table: PrintedTable, figure: PrintedFigure): Check[] {
  const count = countBeside(table, figure);
  const over = wholeOf(count ?? undefined);
  if (over === null || count === null) return [];
  const sizes = BASES.flatMap((base) => baseSize(table, figure, base) ?? []);
  const all = baseSize(table, figure, 'all');
  const every = [...new Set([...sizes, ...(all === null ? [] : [all]), over, ...sumsOfTable(table)])].filter(
    (size) => size >= over && size > 0,
  );
  const fitting = every.find(
    (size) => fitOfFraction({ over: BigInt(over), under: BigInt(size) }, figure) !== undefined,
  );
  const said = { figure: figure.id, name: 'percentage of a sum', from: 'print', with: [count.id] } as const;
  if (fitting !== undefined)
    return [
      { ...said, outcome: 'agrees', working: `${over}/${fitting} = ${shown(over / fitting, figure)}.` },
    ];
  return [
    {
      ...said,
      outcome: 'differs',
      working: `${named(count)} is this share of none of the sums that the table prints (${every.slice(0, 6).join(', ')}).`,
      resolve: 'State what the percentage is of.',
    },
  ];
}

function sumsOfTable({ figures }: PrintedTable): number[] {
  return figures.flatMap((figure) =>
    (figure.quantity === 'total' || figure.quantity === 'n') && !figure.values[0].percent
      ? (wholeOf(figure) ?? [])
      : [],
  );
}

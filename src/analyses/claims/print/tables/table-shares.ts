import type { FigureCheck } from '../../found.ts';
import { named, numberPrinted, shown, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import { collect } from '../evidence.ts';
import { fitOfFraction, sharePossible } from '../shares.ts';
import { BASE_WORDS, BASES, type Base, baseSize, countBeside } from './bases.ts';

/**
 * The percentages of a printed table: each of the count beside it, of a base that the table shows by what fits.
 * A table takes all its percentages of one base: of its rows, its columns, the whole, or of an n that is printed.
 * Where no base fits most of them, what they are of is not told, and nothing is said against them.
 */
export function checkTableShares(table: PrintedTable): FigureCheck[] {
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
  if (isPaired(columns[cell.column - 1]?.head, head)) return `${rows[cell.row].kind} / of pairs`;
  return `${rows[cell.row].kind} / ${role === 'share' && /%|per ?cent/i.test(head) ? head.slice(group.length).trim() : ''}`;
}

/** "Early n", "Early %": counts and per cents of one kind after another, all of one base. */
function isPaired(before: string | undefined, head: string): boolean {
  const kind = (text: string, sign: RegExp) => (sign.test(text) ? text.replace(sign, '').trim() : null);
  const own = kind(head, /[\s,]*\(?%\)?$/u);
  return own !== null && own !== '' && own === kind(before ?? '', /[\s,]+\(?[nN]\)?$/u);
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

/** Outcome of one percentage under one base: it fits, it does not, or the table does not say. */
function fits({ over, under }: Of, figure: PrintedFigure): boolean {
  if (over === null) return sharePossible(figure, under);
  return fitOfFraction({ over: BigInt(over), under: BigInt(under) }, figure) !== undefined;
}

function settle(table: PrintedTable, cells: readonly PrintedFigure[], bases: readonly Base[]): FigureCheck[] {
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
  // Per cents that add up along every line are of their line, however few of the counts agree.
  const few =
    (best.asked <= 3 && best.good > misfits) || (best.base === 'row' && best.good > 0 && linesAddUp(cells));
  return cells.flatMap((figure, i): FigureCheck[] => {
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

function linesAddUp(cells: readonly PrintedFigure[]): boolean {
  const lines = [...collect(cells, ({ cell }) => String(cell?.row)).values()];
  const near = (line: readonly PrintedFigure[]) => {
    const sum = line.reduce((all, one) => all + numberPrinted(one), 0);
    const unit = Math.max(...line.map(({ values: [{ number }] }) => Number(`1e-${number.decimals}`)));
    return line.length > 1 && Math.abs(sum - 1) <= (unit * line.length) / 2 + 1e-9;
  };
  return lines.length > 1 && lines.every(near);
}

/** A percentage in a line of sums is of the whole, of its own line (100 %), or of the sums it stands among. */
function sumShare(table: PrintedTable, figure: PrintedFigure): FigureCheck[] {
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

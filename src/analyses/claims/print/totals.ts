import { exactly, overlap, type PrintHabit, total as sumOf } from '../../../numerics/printed/range.ts';
import type { Check } from '../found.ts';
import { checkByRange, rangeOfFigure, wholeOf } from '../judging/check.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { PrintedTable } from '../reading/printed-table.ts';
import type { Evidence } from './evidence.ts';

/** Totals against what they sum: of a set of claims, and of the rows and columns of printed tables. */
export function checkTotals({ sets, tables }: Evidence): Check[] {
  return [
    ...[...sets].flatMap(([name, set]) => (tables.has(name) ? [] : setTotals(set))),
    ...[...tables.values()].flatMap(tableTotals),
  ];
}

function setTotals(set: readonly PrintedFigure[]): Check[] {
  return set
    .filter(({ quantity, attributes }) => quantity === 'total' && attributes.length === 0)
    .flatMap((figure) => {
      const kind = figure.values[0].percent ? 'share' : 'count';
      const parts = set.filter(({ quantity }) => quantity === kind);
      return parts.length < 2 ? [] : [sumCheck(figure, parts)];
    });
}

function sumCheck(figure: PrintedFigure, parts: readonly PrintedFigure[]): Check {
  const name = 'total of its parts';
  const resolve = 'Look up the parts and their sum; state what is counted twice or left out.';
  const exact = wholes(parts);
  const printed = figure.values[0].percent ? null : wholeOf(figure);
  if (exact !== undefined && printed !== null)
    return {
      figure: figure.id,
      name,
      from: 'print',
      outcome: exact === printed ? 'agrees' : 'cannot be',
      working: `${additionText(parts)} is ${exact}.`,
      ...(exact === printed ? {} : { resolve }),
      with: parts.map(({ id }) => id),
    };
  const sum = (habit: PrintHabit) => sumOf(parts.map((part) => rangeOfFigure(part, habit)));
  return checkByRange(figure, exact === undefined ? sum : () => exactly(exact), {
    name,
    working: (range) => `${additionText(parts)} is ${range}.`,
    resolve,
    with: parts,
  });
}

/** Counts add up exactly, and their sum is not rounded. */
function wholes(parts: readonly PrintedFigure[]): number | undefined {
  const values = parts.map(wholeOf);
  if (values.some((value) => value === null) || parts.some(({ values: [value] }) => value.percent))
    return undefined;
  return values.reduce((all: number, value) => all + (value ?? 0), 0);
}

/** "12 + 7 + 5"; long sums keep their two ends. */
function additionText(parts: readonly PrintedFigure[]): string {
  const texts = parts.map(({ values: [value] }) => value.text.trim());
  return texts.length <= 8
    ? texts.join(' + ')
    : `${texts.slice(0, 4).join(' + ')} + … + ${texts[texts.length - 1]} (${texts.length} parts)`;
}

function tableTotals(table: PrintedTable): Check[] {
  if (table.kind === 'samples') return [];
  const lines = [
    ...table.rows.map((_, row) => ({ sum: table.rowTotals[row], parts: table.cells[row] })),
    ...table.columns.map((_, column) => ({
      sum: table.columnTotals[column],
      parts: table.cells.map((line) => line[column]),
    })),
    { sum: table.grand, parts: table.rowTotals },
    { sum: table.grand, parts: table.columnTotals },
  ].map(({ sum, parts }) => ({ sum, parts: parts.filter((part) => part !== null) }));
  const sums = lines.flatMap(({ sum, parts }) =>
    sum === null || sum === undefined || parts.length < 2
      ? []
      : [{ sum, parts, check: sumCheck(sum, parts) }],
  );
  const culprit = table.kind === 'counts' ? (oneSlip(table) ?? slippedTotal(table)) : undefined;
  const totals = sums.map(({ check }) =>
    check.outcome !== 'cannot be' || culprit === undefined
      ? check
      : {
          ...check,
          explained: `one slip, in ${culprit.cell.id}: ${culprit.instead} instead of ${culprit.cell.printed}`,
        },
  );
  return [...totals, ...cellChecks(table, totals), ...hundred(table)];
}

/** A cell whose change alone would mend its row and its column, where exactly one line of each is off. */
function oneSlip(
  table: PrintedTable,
): { readonly cell: PrintedFigure; readonly instead: number } | undefined {
  const off = (sum: PrintedFigure | null, parts: readonly (PrintedFigure | null)[]) => {
    const printed = wholeOf(sum ?? undefined);
    if (printed === null) return 0;
    return printed - parts.reduce((all, part) => all + (wholeOf(part ?? undefined) ?? 0), 0);
  };
  const rows = table.rows.map((_, row) => off(table.rowTotals[row], table.cells[row]));
  const columns = table.columns.map((_, column) =>
    off(
      table.columnTotals[column],
      table.cells.map((line) => line[column]),
    ),
  );
  const [badRows, badColumns] = [rows, columns].map((list) =>
    list.flatMap((by, at) => (by === 0 ? [] : [at])),
  );
  if (badRows.length !== 1 || badColumns.length !== 1 || rows[badRows[0]] !== columns[badColumns[0]])
    return undefined;
  const cell = table.cells[badRows[0]][badColumns[0]];
  const value = wholeOf(cell ?? undefined);
  const instead = (value ?? 0) + rows[badRows[0]];
  return cell === null || value === null || instead < 0 ? undefined : { cell, instead };
}

/** A total whose change alone would mend its line and the grand total. */
function slippedTotal(table: PrintedTable): ReturnType<typeof oneSlip> {
  const grand = wholeOf(table.grand ?? undefined);
  if (grand === null) return undefined;
  const lists = [
    { totals: table.rowTotals, lines: table.cells },
    {
      totals: table.columnTotals,
      lines: table.columns.map((_, column) => table.cells.map((line) => line[column])),
    },
  ];
  const sum = (cells: readonly (PrintedFigure | null)[]) =>
    cells.reduce((all, cell) => all + (wholeOf(cell ?? undefined) ?? 0), 0);
  for (const { totals, lines } of lists) {
    const off = totals.map((total, i) => (wholeOf(total ?? undefined) ?? sum(lines[i])) - sum(lines[i]));
    const bad = off.flatMap((by, at) => (by === 0 ? [] : [at]));
    const cell = bad.length === 1 ? totals[bad[0]] : null;
    if (cell !== null && grand - sum(totals) === -off[bad[0]]) return { cell, instead: sum(lines[bad[0]]) };
  }
  return undefined;
}

/** A single slip in a cell would show in a total that fits, so the cell agrees with it. */
function cellChecks(table: PrintedTable, totals: readonly Check[]): Check[] {
  const outcomes = new Map<string, Check[]>();
  for (const check of totals)
    for (const id of check.with) outcomes.set(id, [...(outcomes.get(id) ?? []), check]);
  return table.cells.flat().flatMap((cell) => {
    const sums = cell === null ? [] : (outcomes.get(cell.id) ?? []);
    if (cell === null || sums.length === 0) return [];
    const fits = sums.every(({ outcome }) => outcome === 'agrees');
    return [
      {
        figure: cell.id,
        name: 'cell in its totals',
        from: 'print',
        outcome: !fits ? 'open' : table.kind === 'counts' ? 'agrees' : 'passes',
        working: fits
          ? `It adds up with its ${sums.length > 1 ? 'row and column' : 'line'}: ${sums.map(({ figure }) => figure).join(', ')}.`
          : `A total it belongs to does not add up: ${sums
              .filter(({ outcome }) => outcome !== 'agrees')
              .map(({ figure }) => figure)
              .join(', ')}.`,
        ...(fits ? {} : { resolve: 'Settle that total first.' }),
        with: sums.map(({ figure }) => figure),
      } satisfies Check,
    ];
  });
}

/** Percentages without a printed total: most lines add up to 100, so one that does not is asked about. */
function hundred(table: PrintedTable): Check[] {
  if (table.kind !== 'shares' || table.rowTotals.some((sum) => sum !== null)) return [];
  const one = { low: 1, high: 1 };
  const lines = table.cells.map((line) => line.filter((cell) => cell !== null));
  const fits = lines.map((line) => overlap(one, sumOf(line.map((cell) => rangeOfFigure(cell, 'any')))));
  if (fits.filter(Boolean).length * 2 <= lines.length) return [];
  return lines.flatMap((line, row) =>
    line.map((cell): Check => {
      return {
        figure: cell.id,
        name: 'percentages of a row',
        from: 'print',
        outcome: fits[row] ? 'passes' : 'differs',
        working: `${additionText(line)} adds up to ${Math.round(10_000 * line.reduce((sum, each) => sum + Number(`${each.values[0].number.digits}e-${each.values[0].number.decimals}`), 0)) / 100} %.`,
        ...(fits[row]
          ? {}
          : {
              resolve: `State what else the percentages of "${table.rows[row]}" are of, or print the one that was meant otherwise.`,
            }),
        with: line.filter((other) => other !== cell).map(({ id }) => id),
      };
    }),
  );
}

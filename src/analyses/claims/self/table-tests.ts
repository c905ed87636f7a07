import type { Random } from '../../../numerics/foundation/random.ts';
import { fisherTails } from '../../../numerics/printed/fisher-tails.ts';
import type { Rounding } from '../../../numerics/printed/printed-number.ts';
import { exactly, overlap } from '../../../numerics/printed/range.ts';
import { roundingsOf } from '../../../numerics/printed/rounding-of.ts';
import { pOf } from '../../../numerics/printed/test-p.ts';
import { association, withoutEmptyLines } from '../../../numerics/tests/contingency.ts';
import { fisherExact } from '../../../numerics/tests/fisher-exact.ts';
import { type Check, rangeOfFigure, shown, wholeOf } from '../check.ts';
import type { PrintedFigure } from '../claim.ts';
import type { Evidence } from '../evidence.ts';
import type { PrintedTable } from '../printed-table.ts';
import { fitOfRoundings } from './shares.ts';

/** One way to compute a figure, and what it gives. */
export interface Way {
  readonly said: string;
  readonly value: number;
}

/** Chi-squared, its df and p, and Fisher's exact p, recomputed from the printed table of counts. */
export function checkTableTests({ sets, tables }: Evidence, random: Random): Check[] {
  return [...tables.values()].flatMap((table) => {
    const counts = countsOf(table);
    const claims = (sets.get(table.name) ?? []).filter(
      ({ quantity }) => quantity === 'statistic' || quantity === 'df' || quantity === 'p',
    );
    if (counts === null || claims.length === 0) return [];
    const statistic = claims.find(({ quantity }) => quantity === 'statistic');
    return claims.flatMap((figure) => {
      const method = figure.method ?? statistic?.method ?? null;
      const ways =
        method === 'fisher'
          ? fisherWays(counts, random)
          : method === 'chi-squared' || method === null
            ? chiSquaredWays(counts, figure)
            : [];
      return ways.length === 0 ? [] : [checkByWays(figure, ways, table.name)];
    });
  });
}

function countsOf(table: PrintedTable): number[][] | null {
  if (table.kind !== 'counts') return null;
  const counts = table.cells.map((line) => line.map((cell) => (cell === null ? 0 : wholeOf(cell))));
  return counts.flat().includes(null) ? null : (counts as number[][]);
}

function chiSquaredWays(counts: number[][], figure: PrintedFigure): readonly Way[] {
  const { table } = withoutEmptyLines(counts);
  const found = association(table);
  if ('why' in found) return [];
  if (figure.quantity === 'df') return [{ said: '(rows − 1)(columns − 1)', value: found.df }];
  const corrected = table.length === 2 && table[0].length === 2 ? yates(table) : null;
  const p = figure.quantity === 'p';
  return [
    { said: 'Pearson', value: p ? found.p : found.chiSquared },
    { said: 'likelihood ratio', value: p ? found.gP : found.g },
    ...(corrected === null
      ? []
      : [{ said: "Yates's correction", value: p ? corrected.p : corrected.statistic }]),
  ];
}

/** Chi-squared of a 2 x 2 table with half a unit taken off each gap (Yates 1934), p with 1 df. */
function yates(
  table: readonly (readonly number[])[],
): { readonly statistic: number; readonly p: number } | null {
  const found = association(table);
  if ('why' in found) return null;
  let statistic = 0;
  const gaps = table.map((line, i) => line.map((count, j) => Math.abs(count - found.expected[i][j])));
  const off = Math.min(0.5, ...gaps.flat());
  table.forEach((line, i) => {
    line.forEach((_, j) => {
      statistic += ((gaps[i][j] - off) * (gaps[i][j] - off)) / found.expected[i][j];
    });
  });
  return { statistic, p: pOf('chi-squared', statistic, 1) };
}

function fisherWays(counts: number[][], random: Random): readonly Way[] {
  const found = fisherExact(counts, random);
  if ('why' in found || found.method !== 'exact') return [];
  const tails = counts.length === 2 && counts[0].length === 2 ? fisherTails(counts) : [];
  return [{ said: 'two-sided, tables no likelier than this', value: found.p }, ...tails];
}

/** The figure against each way in which it may have been computed. */
export function checkByWays(
  figure: PrintedFigure,
  ways: readonly Way[],
  from: string,
  resolve = 'State which way the figure was computed, and from which table.',
): Check {
  const fit = fitOfWays(figure, ways);
  const list = ways.map(({ said, value }) => `${shown(value, figure)} (${said})`).join(', ');
  return {
    figure: figure.id,
    name: `${figure.quantity} of the printed table`,
    from: 'print',
    ...(fit === null ? { outcome: 'cannot be' as const, resolve } : fit.fit),
    working: `From "${from}": ${list}; printed: ${figure.printed}${fit === null ? '' : ` (${fit.said})`}.`,
    with: [],
  };
}

/** The first way that gives the print, and how it was rounded. */
export function fitOfWays(figure: PrintedFigure, ways: readonly Way[]) {
  const fits = ways.flatMap(({ said, value }) => {
    const fit = fitOfValue(figure, value);
    return fit === undefined ? [] : [{ said, fit }];
  });
  return fits.find(({ fit }) => fit.outcome === 'agrees') ?? fits[0] ?? null;
}

/** How a computed number agrees with a print; undefined where it does not. */
function fitOfValue(figure: PrintedFigure, value: number) {
  const [{ relation, number }] = figure.values;
  if (relation !== '=')
    return overlap(exactly(value), rangeOfFigure(figure, 'any'))
      ? ({ outcome: 'agrees' } as const)
      : undefined;
  return fitOfRoundings(roundingsOf(value, number) as readonly Rounding[]);
}

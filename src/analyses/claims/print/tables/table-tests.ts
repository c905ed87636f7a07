import type { Random } from '../../../../numerics/foundation/random.ts';
import { fisherTails } from '../../../../numerics/printed/fisher-tails.ts';
import { association, withoutEmptyLines } from '../../../../numerics/tests/contingency.ts';
import { fisherExact } from '../../../../numerics/tests/fisher-exact.ts';
import { checkByWays, type Way } from '../../conventions/way.ts';
import { yates } from '../../conventions/yates.ts';
import type { Check } from '../../found.ts';
import { wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import type { Evidence } from '../evidence.ts';

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
  const counts = table.body.cells.map((line) => line.map((cell) => (cell === null ? 0 : wholeOf(cell))));
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

function fisherWays(counts: number[][], random: Random): readonly Way[] {
  const found = fisherExact(counts, random);
  if ('why' in found || found.method !== 'exact') return [];
  const tails = counts.length === 2 && counts[0].length === 2 ? fisherTails(counts) : [];
  return [{ said: 'two-sided, tables no likelier than this', value: found.p }, ...tails];
}

import { over, type PrintHabit } from '../../../../numerics/printed/range.ts';
import { pRange } from '../../../../numerics/printed/test-p.ts';
import type { FigureCheck } from '../../found.ts';
import { checkByRange, named, rangeOfFigure } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import type { Quantity } from '../../reading/terms.ts';
import { sumCheck } from './sum-check.ts';

const RESIDUAL =
  /^(?:.*, )?(?:resid(?:uals?)?|error|within(?: groups)?|innerhalb.*|résid.*|residu.*|fehler|errore|rest$)/i;

/** A table of an analysis of variance: mean squares, F, p and the line of all (Fisher 1925). */
export function checkAnova(table: PrintedTable): FigureCheck[] {
  if (!table.columns.some(({ role }) => role === 'sum-of-squares' || role === 'mean-square')) return [];
  const at = (row: number, quantity: Quantity): PrintedFigure | undefined =>
    table.cells[row]
      .flat()
      .find((figure) => figure.quantity === quantity || (quantity === 'df' && figure.quantity === 'total'));
  const residuals = table.rows.flatMap(({ label }, r) => (RESIDUAL.test(label) ? [r] : []));
  const totals = table.rows.findIndex(
    ({ line, label }) =>
      line === 'total' || /^(?:(?:corrected )?total|gesamt|insgesamt|totale?)/i.test(label),
  );
  const sources = table.rows.flatMap(({ line }, r) =>
    line === 'part' && !residuals.includes(r) && r !== totals ? [r] : [],
  );
  const checks: FigureCheck[] = [];
  for (const row of [...sources, ...residuals]) {
    const [ss, df, ms] = [at(row, 'sum-of-squares'), at(row, 'df'), at(row, 'mean-square')];
    if (ss !== undefined && df !== undefined && ms !== undefined)
      checks.push(
        checkByRange(
          ms,
          (habit) => over(rangeOfFigure(ss, habit), rangeOfFigure(df, habit === 'any' ? 'rounded' : habit)),
          {
            name: 'mean square',
            working: (found) => `${named(ss)} over ${named(df)} is ${found}.`,
            resolve: 'Look up the sum of squares and its degrees of freedom.',
            with: [ss, df],
          },
        ),
      );
  }
  if (residuals.length > 0)
    for (const row of sources) {
      // Each stratum of a design with several has its own, below its sources.
      const residual = residuals.find((one) => one > row) ?? residuals[0];
      const [ms, f, p, df] = [at(row, 'mean-square'), at(row, 'statistic'), at(row, 'p'), at(row, 'df')];
      const [rest, dfRest] = [at(residual, 'mean-square'), at(residual, 'df')];
      if (ms !== undefined && f !== undefined && rest !== undefined)
        checks.push(
          checkByRange(f, (habit) => over(rangeOfFigure(ms, habit), rangeOfFigure(rest, habit)), {
            name: 'F of the mean squares',
            working: (found) => `${named(ms)} over ${named(rest)} is ${found}.`,
            resolve: 'State which mean square F was taken over.',
            with: [ms, rest],
            // Mixed designs take F over another line.
            misfit: 'differs',
          }),
        );
      if (f !== undefined && p !== undefined && df !== undefined && dfRest !== undefined && !p.stars)
        checks.push(
          checkByRange(
            p,
            (habit: PrintHabit) =>
              pRange(
                'F',
                rangeOfFigure(f, habit),
                [rangeOfFigure(df, 'rounded'), rangeOfFigure(dfRest, 'rounded')].map(({ low, high }) => ({
                  low: (low + high) / 2,
                  high: (low + high) / 2,
                })),
              ),
            {
              name: 'p of its statistic',
              working: (found) => `${named(f)} with ${named(df)} and ${named(dfRest)} gives a p of ${found}.`,
              resolve: 'State the degrees of freedom, and whether p is corrected.',
              with: [f, df, dfRest],
              misfit: 'differs',
            },
          ),
        );
    }
  if (totals >= 0 && residuals.length === 1)
    for (const quantity of ['sum-of-squares', 'df'] as const) {
      const sum = at(totals, quantity);
      const parts = [...sources, ...residuals].flatMap((row) => at(row, quantity) ?? []);
      // Unbalanced designs need not add up.
      if (sum !== undefined && parts.length > 1 && (quantity === 'df' || sources.length === 1))
        checks.push(sumCheck(sum, parts, 'differs'));
    }
  return checks;
}

import { ln } from '../../../../numerics/foundation/elementary.ts';
import { exactly, overlap } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { named, rangeOfFigure, shown, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTest } from './test-groups.ts';

/**
 * Chi-squared or G of counts that are printed with it, against equal frequencies (Pearson 1900): where there are as
 * many counts as its degrees of freedom ask for. Other expectations are ordinary too, so a misfit settles nothing.
 */
export function goodnessChecks(
  { method, statistic, df }: PrintedTest,
  set: readonly PrintedFigure[],
): FigureCheck[] {
  if (method !== 'chi-squared' && method !== 'G') return [];
  const counts = set.filter(({ quantity, values: [value] }) => quantity === 'count' && !value.percent);
  const values = counts.map(wholeOf);
  if (counts.length < 2 || values.some((value) => value === null) || wholeOf(df) !== counts.length - 1)
    return [];
  const whole = values as readonly number[];
  const n = whole.reduce((sum, one) => sum + one, 0);
  const expected = n / whole.length;
  if (expected === 0) return [];
  const value =
    method === 'G'
      ? 2 * whole.reduce((sum, one) => sum + (one === 0 ? 0 : one * ln(one / expected)), 0)
      : whole.reduce((sum, one) => sum + ((one - expected) * (one - expected)) / expected, 0);
  const fits = overlap(exactly(value), rangeOfFigure(statistic, 'any'));
  return [
    {
      figure: statistic.id,
      name: 'goodness of fit',
      from: 'print',
      outcome: fits ? 'agrees' : 'open',
      ...(fits ? { under: 'equal frequencies' } : {}),
      working: `${counts.length} counts, ${counts.slice(0, 6).map(named).join(', ')}, against equal frequencies give ${shown(value, statistic)}; printed: ${statistic.values[0].text}.`,
      ...(fits ? {} : { resolve: 'State which frequencies were expected.' }),
      with: counts.map(({ id }) => id),
    },
  ];
}

import { mean, standardDeviation } from '../../../numerics/describing/moments.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import { oneWayAnova } from '../../../numerics/tests/analysis-of-variance.ts';
import { association, withoutEmptyLines } from '../../../numerics/tests/contingency.ts';
import { kruskalWallis } from '../../../numerics/tests/kruskal-wallis.ts';
import type { Unavailable } from '../../contract.ts';
import type { Way } from '../conventions/way.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { ofPairs } from './correlations.ts';
import { crossed } from './crossed.ts';
import { gammaRatio } from './gamma-ratio.ts';
import type { Recomputed } from './recomputed.ts';
import { groupsOf } from './several-groups.ts';
import { twoGroups } from './two-groups.ts';
import type { View } from './values.ts';

/** An effect size from the records, in the ways in which it is printed (Cohen 1988; Hedges 1981, J. Educ. Stat. 6:107). */
export function effectWays(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  switch (figure.method) {
    case 'cohen-d':
    case 'hedges-g':
      return standardised(figure, view);
    case 'eta-squared':
    case 'omega-squared':
    case 'epsilon-squared':
      return ofGroupMeans(figure, view);
    case 'cramer-v':
    case 'phi':
    case 'odds-ratio':
      return ofCounts(figure, view);
    case 'r-squared': {
      const found = ofPairs('r', figure, view);
      if ('why' in found) return found;
      const [{ statistic }] = found.list;
      return statistic === null
        ? { why: 'one of the two does not vary' }
        : { ways: [{ said: 'of Pearson’s r', value: statistic * statistic }], basis: found.basis };
    }
    default:
      return { why: 'the effect size is not named' };
  }
}

function standardised(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const groups = twoGroups(figure, view);
  if ('why' in groups) return groups;
  const { x, y } = groups;
  const [meanX, meanY, sdX, sdY] = [mean(x), mean(y), standardDeviation(x), standardDeviation(y)];
  if (isUnavailable(meanX) || isUnavailable(meanY) || isUnavailable(sdX) || isUnavailable(sdY))
    return { why: 'a group has fewer than two readings' };
  const df = x.length + y.length - 2;
  const pooled = Math.sqrt(((x.length - 1) * sdX * sdX + (y.length - 1) * sdY * sdY) / df);
  const plain = Math.sqrt((sdX * sdX + sdY * sdY) / 2);
  const d = meanX - meanY;
  const small =
    figure.method === 'hedges-g'
      ? [['corrected', 1 - 3 / (4 * df - 1)] as const, ['corrected exactly', gammaRatio(df)] as const]
      : [['', 1] as const];
  const ways = small.flatMap(([said, by]): Way[] =>
    [['pooled deviation', pooled] as const, ['mean of the variances', plain] as const].flatMap(([how, sd]) =>
      sd === 0
        ? []
        : [1, -1].map((sign) => ({
            said: [how, said, sign < 0 ? 'the other way round' : ''].filter((one) => one !== '').join(', '),
            value: (sign * by * d) / sd,
          })),
    ),
  );
  return ways.length === 0
    ? { why: 'neither group varies' }
    : { ways, basis: `${x.length} and ${y.length} ${view.unit}s` };
}

function ofGroupMeans(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const groups = groupsOf(figure, view);
  if ('why' in groups) return groups;
  const found = oneWayAnova(groups.list);
  const ranks = kruskalWallis(groups.list);
  const k = groups.list.length;
  const ways: Way[] = [];
  if (!isUnavailable(found)) {
    const { sumOfSquaresBetween: between, sumOfSquaresWithin: within, dfBetween, dfWithin } = found;
    const square = within / dfWithin;
    if (figure.method === 'eta-squared') ways.push({ said: 'of the sums of squares', value: found.rSquared });
    if (figure.method === 'omega-squared')
      ways.push({
        said: 'omega squared',
        value: (between - dfBetween * square) / (between + within + square),
      });
    if (figure.method === 'epsilon-squared')
      ways.push({
        said: 'of the sums of squares',
        value: (between - dfBetween * square) / (between + within),
      });
  }
  // Below nought, 0 is printed as often as the number itself.
  const below = figure.method === 'omega-squared' || figure.method === 'epsilon-squared';
  if (below && (ways[0]?.value ?? 0) < 0) ways.push({ said: 'below 0, printed as 0', value: 0 });
  if (!isUnavailable(ranks)) {
    if (figure.method === 'epsilon-squared') ways.push({ said: 'of the ranks', value: ranks.epsilonSquared });
    if (figure.method === 'eta-squared')
      ways.push({ said: 'of the ranks', value: (ranks.statistic - k + 1) / (ranks.n - k) });
  }
  return ways.length === 0 ? { why: 'the groups cannot be compared' } : { ways, basis: groups.basis };
}

function ofCounts(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const counts = crossed(figure, view);
  if ('why' in counts) return counts;
  const { table } = withoutEmptyLines(counts.table);
  const found = association(table);
  if (isUnavailable(found)) return found;
  const n = table.flat().reduce((sum, one) => sum + one, 0);
  const least = Math.min(table.length, table[0].length) - 1;
  const phi = Math.sqrt(found.chiSquared / n);
  if (figure.method === 'cramer-v')
    return { ways: [{ said: 'Cramér', value: phi / Math.sqrt(least) }], basis: counts.basis };
  if (figure.method === 'phi')
    return {
      ways: [
        { said: 'phi', value: phi },
        { said: 'phi, negative', value: -phi },
      ],
      basis: counts.basis,
    };
  if (table.length !== 2 || table[0].length !== 2) return { why: 'an odds ratio is of two by two kinds' };
  const ratio = (table[0][0] * table[1][1]) / (table[0][1] * table[1][0]);
  return Number.isFinite(ratio) && ratio > 0
    ? {
        ways: [
          { said: 'of the counts', value: ratio },
          { said: 'the other way round', value: 1 / ratio },
        ],
        basis: counts.basis,
      }
    : { why: 'a count of the odds ratio is 0' };
}

import { normalQuantileUpper, studentQuantileUpper } from '../../../../numerics/foundation/distributions.ts';
import { exp, ln } from '../../../../numerics/foundation/elementary.ts';
import { minus, over, overlap, plus, type Range, scaled } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { named, numberPrinted, printRangeText, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import { only } from '../evidence.ts';
import type { PrintedTest } from './test-groups.ts';

/**
 * A confidence interval that is printed with a test: that of a difference goes with its t, that of a correlation
 * with r and n (Fisher 1921, Metron 1:3), and an effect lies within its own. What an interval is of the print
 * seldom says, so a misfit only differs, and only where no reading fits.
 */
export function intervalChecks(test: PrintedTest, set: readonly PrintedFigure[]): FigureCheck[] {
  const beside = set.filter(({ line }) => line === test.statistic.line);
  const [low, high] = (['low', 'high'] as const).map((end) =>
    only(endsBeside(test, set).filter(({ quantity }) => quantity === end)),
  );
  if (low === undefined || high === undefined) return [];
  const ends = [rangeOfFigure(low, 'any'), rangeOfFigure(high, 'any')] as const;
  if (ends[0].low > ends[1].high) return [];
  const effect = only(beside.filter(({ quantity }) => quantity === 'effect'));
  const within = (figure: PrintedFigure) =>
    overlap(rangeOfFigure(figure, 'any'), { low: ends[0].low, high: ends[1].high });
  const inside = effect !== undefined && within(effect);
  const tail = (1 - (low.level ?? 0.95)) / 2;
  if (test.method === 't') return ofDifference(test, [low, high], ends, tail, inside);
  if (test.method === 'r') return ofCorrelation(test, [low, high], tail);
  if (effect === undefined || inside) return [];
  return [
    said(
      low,
      high,
      'differs',
      `${named(effect)} does not lie within ${low.values[0].text} to ${high.values[0].text}.`,
      [effect],
    ),
  ];
}

/** The ends in the text of the test; where none stand there, those of a row of its own that is of the same groups. */
function endsBeside({ statistic }: PrintedTest, set: readonly PrintedFigure[]): readonly PrintedFigure[] {
  const ends = set.filter(({ quantity }) => quantity === 'low' || quantity === 'high');
  const own = ends.filter(({ line }) => line === statistic.line);
  if (own.length > 0 || statistic.cell !== null) return own;
  const groupsOf = ({ attributes, selectText, versusText }: PrintedFigure) =>
    JSON.stringify([attributes, selectText, versusText]);
  const alike = set.filter((figure) => groupsOf(figure) === groupsOf(statistic));
  const tests = alike.filter(({ quantity }) => quantity === 'statistic' || quantity === 'correlation');
  return tests.length === 1 ? ends.filter((end) => alike.includes(end)) : [];
}

/** The middle over half the width, times the quantile of Student's t, is t. */
function ofDifference(
  { statistic, df }: PrintedTest,
  [low, high]: readonly [PrintedFigure, PrintedFigure],
  [from, to]: readonly [Range, Range],
  tail: number,
  ofEffect: boolean,
): FigureCheck[] {
  if (df === undefined || df.values.length !== 1 || statistic.manners.includes('another test')) return [];
  const quantile = studentQuantileUpper(tail, numberPrinted(df));
  const middle = scaled(plus(from, to), 0.5);
  const half = scaled(minus(to, from), 0.5);
  if (half.low <= 0) return [];
  const t = scaled(over(middle, half), quantile);
  const printed = rangeOfFigure(statistic, 'any');
  const either = overlap(t, printed) || overlap({ low: -t.high, high: -t.low }, printed);
  if (either)
    return [
      said(
        low,
        high,
        'agrees',
        `Its middle and width give t = ${printRangeText(t, statistic)}; printed: ${statistic.values[0].text}.`,
        [statistic, df],
      ),
    ];
  // An interval of d, of one mean, or by the quantile of the normal distribution.
  const excludes = from.low > 0 || to.high < 0;
  const far = Math.abs(numberPrinted(statistic)) > quantile;
  if (ofEffect || excludes === far) return [];
  return [
    said(
      low,
      high,
      'differs',
      `${named(statistic)} with ${named(df)} ${far ? 'lies beyond' : 'does not reach'} ${quantile.toFixed(2)}, yet the interval ${excludes ? 'leaves nought out' : 'takes nought in'}.`,
      [statistic, df],
    ),
  ];
}

function ofCorrelation(
  { statistic, df, sizes }: PrintedTest,
  [low, high]: readonly [PrintedFigure, PrintedFigure],
  tail: number,
): FigureCheck[] {
  const degrees = df === undefined ? null : wholeOf(df);
  const size = sizes.length === 1 ? wholeOf(sizes[0]) : null;
  const ns = [degrees === null ? null : degrees + 2, degrees, size].filter((n) => n !== null && n > 3);
  if (ns.length === 0) return [];
  const r = rangeOfFigure(statistic, 'any');
  const limits = ns.map((n) => {
    const reach = normalQuantileUpper(tail) / Math.sqrt((n ?? 4) - 3);
    const end = (side: -1 | 1) => ({
      low: shifted(Math.max(r.low, -1 + 1e-12), side * reach),
      high: shifted(Math.min(r.high, 1 - 1e-12), side * reach),
    });
    return [end(-1), end(1)] as const;
  });
  const fits = limits.find(
    ([a, b]) => overlap(a, rangeOfFigure(low, 'any')) && overlap(b, rangeOfFigure(high, 'any')),
  );
  const [first] = limits;
  return [
    said(
      low,
      high,
      fits === undefined ? 'differs' : 'agrees',
      `By Fisher's z the interval of ${named(statistic)} goes from ${printRangeText((fits ?? first)[0], low)} to ${printRangeText((fits ?? first)[1], high)}; printed: ${low.values[0].text} to ${high.values[0].text}.`,
      [statistic, ...(df === undefined ? sizes : [df])],
    ),
  ];
}

/** A correlation moved along Fisher's z. */
function shifted(r: number, by: number): number {
  const twice = exp(ln((1 + r) / (1 - r)) + 2 * by);
  return (twice - 1) / (twice + 1);
}

function said(
  low: PrintedFigure,
  high: PrintedFigure,
  outcome: 'agrees' | 'differs',
  working: string,
  rests: readonly PrintedFigure[],
): FigureCheck {
  return {
    figure: low.id,
    name: 'interval beside its test',
    from: 'print',
    outcome,
    working,
    ...(outcome === 'agrees'
      ? {}
      : { resolve: 'State what the interval is of, its confidence, and how it was made.' }),
    with: [high.id, ...rests.map(({ id }) => id)],
  };
}

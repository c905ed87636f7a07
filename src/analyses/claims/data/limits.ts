import { mean, standardDeviation } from '../../../numerics/describing/moments.ts';
import { normalQuantileUpper, studentQuantileUpper } from '../../../numerics/foundation/distributions.ts';
import { exp, ln } from '../../../numerics/foundation/elementary.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import type { Unavailable } from '../../contract.ts';
import { shareIntervals } from '../conventions/share-intervals.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { TestMethod } from '../reading/terms.ts';
import { numberPairs, ofPairs } from './correlations.ts';
import { crossed } from './crossed.ts';
import { lacking } from './lacking.ts';
import { basisOf, type Recomputed } from './recomputed.ts';
import { twoSamples } from './two-samples.ts';
import { known, rowsOf, type View, valuesOf } from './values.ts';

/** An end of a confidence interval: of a mean, of a share, or of a difference of two of them. */
export function limitsOf(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  if (figure.method !== null && OF_COEFFICIENT.has(figure.method)) return coefficientLimits(figure, view);
  if (figure.versus.length > 0) return differenceLimits(figure, view);
  if (figure.counted.length > 0) return shareLimits(figure, view);
  return figure.attributes.length === 2 ? pairedLimits(figure, view) : meanLimits(figure, view);
}

/** Of the mean difference of two numbers, record by record. */
function pairedLimits(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const pairs = numberPairs(figure, view);
  if ('why' in pairs) return pairs;
  const gaps = pairs.map(([a, b]) => a - b);
  const [average, sd] = [mean(gaps), standardDeviation(gaps)];
  if (isUnavailable(average) || isUnavailable(sd)) return { why: 'fewer than two records have both' };
  const side = figure.quantity === 'low' ? -1 : 1;
  const ways = levelsOf(figure).map((level) => ({
    said: `of the differences, ${Math.round(100 * level)} %`,
    value:
      average + (side * studentQuantileUpper((1 - level) / 2, gaps.length - 1) * sd) / Math.sqrt(gaps.length),
  }));
  return { ways, basis: `${gaps.length} ${view.unit}s with both` };
}

const OF_COEFFICIENT: ReadonlySet<TestMethod> = new Set<TestMethod>([
  'r',
  'rho',
  'tau',
  'cohen-d',
  'hedges-g',
  'eta-squared',
  'omega-squared',
  'epsilon-squared',
  'r-squared',
  'cramer-v',
  'phi',
  'odds-ratio',
]);

/** Of Pearson's r after Fisher 1921, of an odds ratio after Woolf 1955; of no other effect size is it recomputed. */
function coefficientLimits(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const side = figure.quantity === 'low' ? -1 : 1;
  const z = (level: number) => normalQuantileUpper((1 - level) / 2);
  const named = (level: number) => `${Math.round(100 * level)} %`;
  if (figure.method === 'r' && figure.attributes.length === 2) {
    const found = ofPairs('r', figure, view);
    if ('why' in found) return found;
    const [{ statistic: r, df }] = found.list;
    const n = (df[0] ?? 0) + 2;
    if (r === null || n < 4 || Math.abs(r) >= 1) return { why: 'too few pairs for an interval' };
    const ways = levelsOf(figure).map((level) => {
      const twice = exp(ln((1 + r) / (1 - r)) + (2 * side * z(level)) / Math.sqrt(n - 3));
      return { said: `Fisher’s z, ${named(level)}`, value: (twice - 1) / (twice + 1) };
    });
    return { ways, basis: found.basis };
  }
  if (figure.method === 'odds-ratio') {
    const counts = crossed(figure, view);
    if ('why' in counts) return counts;
    const [[a, b] = [], [c, d] = []] = counts.table;
    if (counts.table.length !== 2 || [a, b, c, d].some((one) => one === undefined || one === 0))
      return { why: 'an odds ratio is of two by two kinds, none of them 0' };
    const [log, error] = [ln((a * d) / (b * c)), Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d)];
    const ways = levelsOf(figure).flatMap((level) =>
      [1, -1].map((turn) => ({
        said: `Woolf, ${named(level)}${turn < 0 ? ', the other way round' : ''}`,
        value: exp(turn * log + side * z(level) * error),
      })),
    );
    return { ways, basis: counts.basis };
  }
  return { why: 'the interval of this effect size is not recomputed' };
}

const LEVELS = [0.95, 0.9, 0.99] as const;

/** The printed level alone where there is one. */
function levelsOf({ level }: PrintedFigure): readonly number[] {
  return level === null ? LEVELS : [level];
}

/** An interval for a difference: of two means, pooled or after Welch, or of two shares. */
function differenceLimits(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const side = figure.quantity === 'low' ? -1 : 1;
  if (figure.counted.length > 0) {
    const [a, b] = [figure.select, figure.versus].map((part) => {
      const n = rowsOf(view, [...part, ...known(figure.counted)]).length;
      return { n, share: rowsOf(view, [...part, ...figure.counted]).length / n };
    });
    if (a.n === 0 || b.n === 0) return { why: 'a group has no record' };
    const error = Math.sqrt((a.share * (1 - a.share)) / a.n + (b.share * (1 - b.share)) / b.n);
    const ways = levelsOf(figure).map((level) => ({
      said: `difference of two shares, ${Math.round(100 * level)} %`,
      value: a.share - b.share + side * normalQuantileUpper((1 - level) / 2) * error,
    }));
    return { ways, basis: `${a.n} and ${basisOf(view, b.n)}` };
  }
  const samples = twoSamples(figure, view);
  if ('why' in samples) return samples;
  const { a, b } = samples;
  const [meanA, meanB, sdA, sdB] = [mean(a), mean(b), standardDeviation(a), standardDeviation(b)];
  if (isUnavailable(meanA) || isUnavailable(meanB) || isUnavailable(sdA) || isUnavailable(sdB))
    return { why: 'a group has fewer than two readings' };
  const [v1, v2] = [(sdA * sdA) / a.length, (sdB * sdB) / b.length];
  const df = a.length + b.length - 2;
  const pooled = ((a.length - 1) * sdA * sdA + (b.length - 1) * sdB * sdB) / df;
  const welchDf = ((v1 + v2) * (v1 + v2)) / ((v1 * v1) / (a.length - 1) + (v2 * v2) / (b.length - 1));
  if (v1 + v2 === 0) return { why: 'neither group varies' };
  const ways = levelsOf(figure).flatMap((level) => {
    const tail = (1 - level) / 2;
    const forms = [
      ['Welch', studentQuantileUpper(tail, welchDf), Math.sqrt(v1 + v2)],
      ['pooled variances', studentQuantileUpper(tail, df), Math.sqrt(pooled * (1 / a.length + 1 / b.length))],
      ['normal distribution', normalQuantileUpper(tail), Math.sqrt(v1 + v2)],
    ] as const;
    return forms.flatMap(([said, by, error]) => [
      { said: `${said}, ${Math.round(100 * level)} %`, value: meanA - meanB + side * by * error },
      {
        said: `${said}, ${Math.round(100 * level)} %, the other way round`,
        value: meanB - meanA + side * by * error,
      },
    ]);
  });
  return { ways, basis: `${a.length} and ${basisOf(view, b.length)}` };
}

function shareLimits(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const base = rowsOf(view, [...figure.select, ...known(figure.counted)]).length;
  const count = rowsOf(view, [...figure.select, ...figure.counted]).length;
  if (base === 0) return { why: 'no record is left to take a share of' };
  const end = figure.quantity === 'low' ? ('low' as const) : ('high' as const);
  const ways = levelsOf(figure).flatMap((level) =>
    shareIntervals(count, base, level).map((one) => ({ said: one.said, value: one[end] })),
  );
  return { ways, basis: `${count} of ${basisOf(view, base)}` };
}

function meanLimits(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined) return lacking(figure, 'measure');
  const values = valuesOf(view, attribute, rowsOf(view, figure.select));
  if ('why' in values) return values;
  const [average, sd] = [mean(values.points), standardDeviation(values.points)];
  if (isUnavailable(average)) return average;
  if (isUnavailable(sd)) return sd;
  const n = values.points.length;
  const side = figure.quantity === 'low' ? -1 : 1;
  const ways = levelsOf(figure).flatMap((level) =>
    [
      ["Student's t", studentQuantileUpper((1 - level) / 2, n - 1)] as const,
      ['normal distribution', normalQuantileUpper((1 - level) / 2)] as const,
    ].map(([said, by]) => ({
      said: `${said}, ${Math.round(100 * level)} %`,
      value: average + (side * by * sd) / Math.sqrt(n),
    })),
  );
  return { ways, basis: basisOf(view, n, values.missing) };
}

import { exactShareLimits, jeffreysShareLimits } from '../../../numerics/assemblages/shares.ts';
import { mean, standardDeviation } from '../../../numerics/describing/moments.ts';
import { wilsonLimits } from '../../../numerics/describing/wilson.ts';
import { normalQuantileUpper, studentQuantileUpper } from '../../../numerics/foundation/distributions.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import type { Unavailable } from '../../contract.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { basisOf, type Recomputed } from './recomputed.ts';
import { twoSamples } from './two-samples.ts';
import { known, rowsOf, type View, valuesOf } from './values.ts';

/** An end of a confidence interval: of a mean, of a share, or of a difference of two of them. */
export function limitsOf(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  if (figure.versus.length > 0) return differenceLimits(figure, view);
  return figure.counted.length > 0 ? shareLimits(figure, view) : meanLimits(figure, view);
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

function shareLimits(figure: PrintedFigure, view: View): Recomputed {
  const base = rowsOf(view, [...figure.select, ...known(figure.counted)]).length;
  const count = rowsOf(view, [...figure.select, ...figure.counted]).length;
  const end = figure.quantity === 'low' ? ('low' as const) : ('high' as const);
  const ways = levelsOf(figure).flatMap((level) => {
    const z = normalQuantileUpper((1 - level) / 2);
    const share = count / base;
    const half = z * Math.sqrt((share * (1 - share)) / base);
    const limits = [
      ['score limits', wilsonLimits(count, base, level)],
      ['exact limits', exactShareLimits(count, base, level)],
      ['Jeffreys limits', jeffreysShareLimits(count, base, level)],
      ['normal approximation', base > 0 ? { low: share - half, high: share + half } : { why: 'no record' }],
    ] as const;
    return limits.flatMap(([said, found]) =>
      'why' in found ? [] : [{ said: `${said}, ${Math.round(100 * level)} %`, value: found[end] }],
    );
  });
  return { ways, basis: `${count} of ${basisOf(view, base)}` };
}

function meanLimits(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined) return { why: 'the attribute is not named' };
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

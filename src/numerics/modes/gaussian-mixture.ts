import { quantileSorted } from '../describing/quantile.ts';
import { ln } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type Climbed, climb, tally } from './mixture-climb.ts';
import type { GaussianPart } from './mixture-parts.ts';

export interface GaussianMixture {
  /** Ascending by mean. */
  readonly parts: readonly GaussianPart[];
  readonly logLikelihood: number;
  /** 2 log L - parameters ln n: larger is better. */
  readonly bic: number;
  readonly spread: 'equal' | 'own';
}

export interface MixtureOptions {
  /** `equal`: one sd for all parts; `own`, the default: one each. */
  readonly spread?: 'equal' | 'own';
  /** Parts to climb from, k of them; without, three starts are tried and the best is kept. */
  readonly from?: readonly GaussianPart[];
  /** The climb ends when a round gains less than this share of the log-likelihood; default 1e-10. */
  readonly tolerance?: number;
}

/**
 * Fits a mixture of Gaussians to one variable by expectation-maximisation (Dempster, Laird & Rubin
 * 1977; McLachlan & Peel 2000, section 3.2). A part may not shrink onto repeated values: no sd falls
 * below a hundredth of the whole sd. `from` spares the search where a like sample is fitted already.
 *
 * @param k parts, at least 1; needs 2 values a part.
 */
export function gaussianMixture(
  values: ArrayLike<number>,
  k: number,
  { spread = 'own', from, tolerance = 1e-10 }: MixtureOptions = {},
): GaussianMixture | Unavailable {
  const sorted = Float64Array.from(values).sort();
  const n = sorted.length;
  if (n < 2 * k) return { why: `${k} parts need at least ${2 * k} values, not ${n}` };
  const whole = spreadOf(sorted);
  if (whole === 0) return { why: 'all values are equal' };
  const data = tally(sorted);
  const rules = { spread, floor: whole / 100, tolerance };
  let best: Climbed | undefined;
  for (const starts of from === undefined ? startingParts(sorted, k, whole) : [from]) {
    const climbed = climb(data, starts, rules);
    if (best === undefined || climbed.logLikelihood > best.logLikelihood) best = climbed;
  }
  const { parts, logLikelihood } = best as Climbed;
  const parameters = k - 1 + k + (spread === 'equal' ? 1 : k);
  return { parts, logLikelihood, bic: 2 * logLikelihood - parameters * ln(n), spread };
}

function spreadOf(values: Float64Array): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0) / values.length);
}

/** Cuts of the sorted values into k runs: by equal counts, by equal widths, and at the widest gaps. */
function startingParts(sorted: Float64Array, k: number, whole: number): GaussianPart[][] {
  const n = sorted.length;
  if (k === 1) return [runs(sorted, [], whole)];
  const byCount = Array.from({ length: k - 1 }, (_, i) => quantileSorted(sorted, (i + 1) / k));
  const width = sorted[n - 1] - sorted[0];
  const byWidth = Array.from({ length: k - 1 }, (_, i) => sorted[0] + (width * (i + 1)) / k);
  const gaps = Array.from({ length: n - 1 }, (_, i) => i).sort(
    (a, b) => sorted[b + 1] - sorted[b] - (sorted[a + 1] - sorted[a]),
  );
  const byGap = gaps.slice(0, k - 1).map((i) => (sorted[i] + sorted[i + 1]) / 2);
  return [byCount, byWidth, byGap].map((cuts) => runs(sorted, cuts, whole));
}

/** The runs between the cuts as parts to start from. */
function runs(sorted: Float64Array, cuts: readonly number[], whole: number): GaussianPart[] {
  const k = cuts.length + 1;
  const edges = [...cuts].sort((a, b) => a - b);
  return Array.from({ length: k }, (_, part) => {
    const low = part === 0 ? -Infinity : edges[part - 1];
    const high = part === k - 1 ? Infinity : edges[part];
    const own = sorted.filter((value) => value > low && value <= high);
    const mean =
      own.length === 0
        ? quantileSorted(sorted, (part + 0.5) / k)
        : own.reduce((sum, value) => sum + value, 0) / own.length;
    return {
      share: Math.max(1, own.length) / sorted.length,
      mean,
      sd: Math.max(whole / (2 * k), own.length > 1 ? spreadOf(own) : 0),
    };
  });
}

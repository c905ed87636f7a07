import { normalUpper } from '../foundation/distributions.ts';
import { exp, ln } from '../foundation/elementary.ts';
import { orderOfPairs } from '../foundation/pair-order.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type GaussianMixture, gaussianMixture } from './gaussian-mixture.ts';
import type { GaussianPart } from './mixture-parts.ts';

/** Readings as the intervals that their steps leave open: `low === high` where a reading is exact. */
export interface Intervals {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

export interface IntervalMixtureOptions {
  /** `equal`: one sd for all parts; `own`: one each. */
  readonly spread: 'equal' | 'own';
  /** Parts to climb from; without, those that the midpoints of the intervals give. */
  readonly from?: readonly GaussianPart[];
  /** The climb ends when a round gains less than this share of the log-likelihood. */
  readonly tolerance?: number;
}

/** Intervals narrower than this share of the sd are as good as their midpoints. */
const NARROW = 0.05;
const ROUNDS = 1000;
/** The midpoints only give parts to start from. */
const ROUGH = 1e-5;
const ROOT_TWO_PI = 2.5066282746310002;
const LOG_ROOT_TWO_PI = 0.9189385332046727;

/**
 * Fits a mixture of Gaussians to rounded readings: each counts with the probability of its interval, in place of
 * the density at a point (McLachlan & Jones 1988, Biometrics 44:571, grouped data). Rounding then neither makes
 * parts nor sharpens them. Exact readings count with their density.
 *
 * @param k parts, at least 1; needs 2 readings a part.
 */
export function intervalMixture(
  { low, high }: Intervals,
  k: number,
  { spread, from, tolerance = 1e-8 }: IntervalMixtureOptions,
): GaussianMixture | Unavailable {
  const n = low.length;
  const middles = low.map((value, i) => (value + high[i]) / 2);
  const exact = low.every((value, i) => value === high[i]);
  const begin = { spread, tolerance, ...(from === undefined ? {} : { from }) };
  if (exact) return gaussianMixture(middles, k, begin);
  const start =
    from === undefined ? gaussianMixture(middles, k, { ...begin, tolerance: ROUGH }) : { parts: from };
  if ('why' in start) return start;
  const whole = Math.sqrt(varianceOf(middles));
  const data = tally(low, high);
  let parts: readonly GaussianPart[] = start.parts;
  let before = -Infinity;
  for (let round = 0; round < ROUNDS; round++) {
    const step = climbOnce(data, parts, spread, whole / 100, n);
    const gained = step.logLikelihood - before;
    before = step.logLikelihood;
    if (round > 0 && Math.abs(gained) < tolerance * Math.abs(before)) break;
    parts = step.parts;
  }
  const parameters = k - 1 + k + (spread === 'equal' ? 1 : k);
  const sorted = [...parts].sort((a, b) => a.mean - b.mean);
  return { parts: sorted, logLikelihood: before, bic: 2 * before - parameters * ln(n), spread };
}

interface Tally extends Intervals {
  readonly counts: Float64Array;
}

function tally(low: Float64Array, high: Float64Array): Tally {
  const order = orderOfPairs(low, high);
  const kept: number[] = [];
  const counts: number[] = [];
  for (const at of order) {
    const last = kept[kept.length - 1];
    if (last !== undefined && low[last] === low[at] && high[last] === high[at]) counts[counts.length - 1]++;
    else {
      kept.push(at);
      counts.push(1);
    }
  }
  return {
    low: Float64Array.from(kept, (at) => low[at]),
    high: Float64Array.from(kept, (at) => high[at]),
    counts: Float64Array.from(counts),
  };
}

/** One round: the log-likelihood of these parts, and the parts that expectation-maximisation makes of them. */
function climbOnce(
  { low, high, counts }: Tally,
  parts: readonly GaussianPart[],
  spread: 'equal' | 'own',
  floor: number,
  n: number,
): { readonly parts: GaussianPart[]; readonly logLikelihood: number } {
  const k = parts.length;
  const weights = new Float64Array(k);
  const firsts = new Float64Array(k);
  const seconds = new Float64Array(k);
  const likelihood = new Float64Array(k);
  const mean = new Float64Array(k);
  const square = new Float64Array(k);
  let logLikelihood = 0;
  for (let i = 0; i < counts.length; i++) {
    let total = 0;
    let nearest = 0;
    for (let j = 0; j < k; j++) {
      const { share, mean: mu, sd } = parts[j];
      momentsIn(low[i], high[i], mu, sd, j, likelihood, mean, square);
      likelihood[j] *= share;
      total += likelihood[j];
      const middle = (low[i] + high[i]) / 2;
      if (Math.abs(middle - mu) / sd < Math.abs(middle - parts[nearest].mean) / parts[nearest].sd)
        nearest = j;
    }
    logLikelihood += counts[i] * ln(Math.max(total, 1e-300));
    for (let j = 0; j < k; j++) {
      const member = counts[i] * (total > 0 ? likelihood[j] / total : j === nearest ? 1 : 0);
      weights[j] += member;
      // About the old mean, so that nothing cancels.
      firsts[j] += member * mean[j];
      seconds[j] += member * square[j];
    }
  }
  const shifts = firsts.map((sum, j) => sum / Math.max(weights[j], 1e-300));
  const squares = seconds.map((sum, j) => Math.max(0, sum - weights[j] * shifts[j] * shifts[j]));
  const pooled = Math.sqrt(squares.reduce((sum, value) => sum + value, 0) / n);
  return {
    logLikelihood,
    parts: parts.map(({ mean: old }, j) => ({
      share: Math.max(weights[j] / n, 1e-12),
      mean: old + shifts[j],
      sd: Math.max(floor, spread === 'equal' ? pooled : Math.sqrt(squares[j] / Math.max(weights[j], 1e-300))),
    })),
  };
}

/** Probability of an interval under one part, and mean and mean square about its mean within the interval. */
function momentsIn(
  low: number,
  high: number,
  mu: number,
  sd: number,
  j: number,
  likelihood: Float64Array,
  mean: Float64Array,
  square: Float64Array,
): void {
  const a = (low - mu) / sd;
  const b = (high - mu) / sd;
  if (b - a < NARROW) {
    const z = (a + b) / 2;
    const width = high === low ? 1 : high - low;
    likelihood[j] = (exp(-0.5 * z * z) / (ROOT_TWO_PI * sd)) * width;
    mean[j] = z * sd;
    square[j] = sd * sd * (z * z + ((b - a) * (b - a)) / 12);
    return;
  }
  const inside =
    a > 0
      ? normalUpper(a) - normalUpper(b)
      : b < 0
        ? normalUpper(-b) - normalUpper(-a)
        : 1 - normalUpper(b) - normalUpper(-a);
  if (!(inside > 1e-280)) {
    const z = a > 0 ? a : b;
    likelihood[j] = 0;
    mean[j] = z * sd;
    square[j] = sd * sd * z * z;
    return;
  }
  const atLow = exp(-0.5 * a * a - LOG_ROOT_TWO_PI);
  const atHigh = exp(-0.5 * b * b - LOG_ROOT_TWO_PI);
  likelihood[j] = inside;
  mean[j] = (sd * (atLow - atHigh)) / inside;
  square[j] = sd * sd * (1 + (a * atLow - b * atHigh) / inside);
}

function varianceOf(values: Float64Array): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0) / values.length;
}

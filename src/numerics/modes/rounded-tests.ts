import { exp, ln } from '../foundation/elementary.ts';
import { orderOfPairs } from '../foundation/pair-order.ts';
import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type DipTest, dip } from './dip.ts';
import type { Intervals } from './interval-mixture.ts';
import { type BandwidthTest, smoothedBootstrap } from './silverman.ts';

/** Readings with the steps that they were rounded to, on the scale on which they are compared. */
export interface Rounded extends Intervals {
  /** Midpoints in the unit that they were read in, and the step of each; 0 where it is exact. */
  readonly values: Float64Array;
  readonly steps: Float64Array;
  readonly logarithm: boolean;
}

/** No interval reaches below this share of its reading, so that it has a logarithm. */
const LEAST_SHARE = 0.25;

/** Readings as rounded ones; positive where the logarithm is taken. */
export function roundedReadings(values: Float64Array, steps: Float64Array, logarithm: boolean): Rounded {
  const end = (way: -1 | 1) =>
    values.map((value, i) => {
      const at = value + (way * steps[i]) / 2;
      return logarithm ? ln(Math.max(at, LEAST_SHARE * value)) : at;
    });
  return { values, steps, logarithm, low: end(-1), high: end(1) };
}

/**
 * Every reading somewhere within its step: equal readings are spread evenly over theirs. Where the readings have a
 * single mode before they are rounded, they have one afterwards, as a histogram has.
 */
export function spreadEvenly({ low, high }: Intervals): Float64Array {
  const order = orderOfPairs(low, high);
  const spread = new Float64Array(low.length);
  for (let from = 0; from < order.length; ) {
    let to = from;
    while (to < order.length && low[order[to]] === low[order[from]] && high[order[to]] === high[order[from]])
      to++;
    const start = low[order[from]];
    const width = high[order[from]] - start;
    for (let at = from; at < to; at++) spread[at] = start + (width * (at - from + 0.5)) / (to - from);
    from = to;
  }
  return spread.sort();
}

/** Draws on the scale of comparison, rounded as the readings are: each by the step of one of them. */
export function roundLike(drawn: Float64Array, { steps, logarithm }: Rounded): Rounded {
  const values = drawn.map((at, i) => {
    const value = logarithm ? exp(at) : at;
    const step = steps[i];
    if (step === 0) return value;
    const rounded = Math.round(value / step) * step;
    return logarithm ? Math.max(rounded, step) : rounded;
  });
  return roundedReadings(values, steps, logarithm);
}

/**
 * The dip test of Hartigan & Hartigan 1985 for rounded readings: the even samples that it is held against are
 * rounded to the same steps. With exact readings it is the plain test.
 */
export function roundedDipTest(readings: Rounded, random: Random, resamples: number): DipTest | Unavailable {
  const n = readings.low.length;
  if (n < 4) return { why: `a test for several modes needs 4 values, not ${n}` };
  const spread = spreadEvenly(readings);
  const statistic = dip(spread);
  const from = readings.low.reduce((least, value) => Math.min(least, value));
  const to = readings.high.reduce((most, value) => Math.max(most, value));
  const drawn = new Float64Array(n);
  let reached = 0;
  for (let i = 0; i < resamples; i++) {
    for (let j = 0; j < n; j++) drawn[j] = from + random.next() * (to - from);
    if (dip(spreadEvenly(roundLike(drawn, readings))) >= statistic) reached++;
  }
  return { statistic, p: (reached + 1) / (resamples + 1), n, resamples };
}

/**
 * Silverman's test of k modes (1981) for rounded readings: the samples from the smoothed density are rounded to
 * the same steps before their peaks are counted.
 */
export function roundedBandwidthTest(
  readings: Rounded,
  k: number,
  random: Random,
  resamples: number,
): BandwidthTest | Unavailable {
  return smoothedBootstrap(spreadEvenly(readings), k, random, resamples, (drawn) =>
    spreadEvenly(roundLike(drawn, readings)),
  );
}

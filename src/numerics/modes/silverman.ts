import { exp } from '../foundation/elementary.ts';
import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { standardNormal } from './mixture-parts.ts';

/** Points at which a density is looked at, a bandwidth. */
const STEPS_A_BANDWIDTH = 40;
/** A kernel further away than this many bandwidths adds nothing that could turn a slope. */
const REACH = 9;

/** Where a Gaussian kernel density turns: its peaks and the valleys between them, ascending. */
export interface Turns {
  readonly peaks: readonly number[];
  readonly valleys: readonly number[];
}

/**
 * Peaks and valleys of the Gaussian kernel density of the sample, found where its slope changes sign on
 * a grid of a fortieth of the bandwidth.
 *
 * @param sorted ascending values.
 * @param width bandwidth: sd of the kernel, in the unit of the values, above 0.
 */
export function turnsOf(sorted: ArrayLike<number>, width: number): Turns {
  const from = sorted[0];
  const range = sorted[sorted.length - 1] - from;
  const points = Math.max(2, Math.ceil((range / width) * STEPS_A_BANDWIDTH));
  const step = range / points;
  const slope = slopes(sorted, width, points, step);
  // Left of the sample the density rises, right of it it falls.
  slope[points] = -1;
  const peaks: number[] = [];
  const valleys: number[] = [];
  let before = 1;
  for (let point = 1; point <= points; point++) {
    const sign = Math.sign(slope[point]);
    if (sign === 0 || sign === before) continue;
    (sign < 0 ? peaks : valleys).push(from + (point - 0.5) * step);
    before = sign;
  }
  return { peaks, valleys };
}

/** Slope of the density at every point of the grid, up to a factor. */
function slopes(sorted: ArrayLike<number>, width: number, points: number, step: number): Float64Array {
  const slope = new Float64Array(points + 1);
  const scale = -1 / (2 * width * width);
  // On even steps each factor of the kernel is the last one times a constant, which spares the exponentials.
  const shrink = exp(2 * step * step * scale);
  const reach = Math.ceil((REACH * width) / step);
  for (let i = 0; i < sorted.length; i++) {
    const at = sorted[i] - sorted[0];
    const centre = Math.round(at / step);
    for (const way of [1, -1]) {
      const start = way === 1 ? centre : centre - 1;
      const off = start * step - at;
      let height = exp(off * off * scale);
      let factor = exp((2 * way * off * step + step * step) * scale);
      for (let gone = 0; gone <= reach; gone++) {
        const point = start + way * gone;
        if (point < 0 || point > points) break;
        slope[point] += (at - point * step) * height;
        height *= factor;
        factor *= shrink;
      }
    }
  }
  return slope;
}

/**
 * The smallest bandwidth at which the kernel density has at most k peaks (Silverman 1981, J. R. Stat.
 * Soc. B 43:97); large where k peaks are too few. With a Gaussian kernel the number of peaks never grows
 * with the bandwidth, so halving finds it, to 1 part in 10,000. Needs k + 1 different values.
 */
export function criticalBandwidth(sorted: ArrayLike<number>, k: number): number | Unavailable {
  const range = sorted[sorted.length - 1] - sorted[0];
  if (new Set(Array.from(sorted)).size <= k)
    return { why: `more than ${k} different values are needed to look for more than ${k} modes` };
  let high = range;
  let low = range;
  while (turnsOf(sorted, low).peaks.length <= k) {
    high = low;
    low /= 2;
    if (low < range / 2000) return { why: `no bandwidth shows more than ${k} peaks` };
  }
  while (high / low > 1.0001) {
    const middle = Math.sqrt(low * high);
    if (turnsOf(sorted, middle).peaks.length > k) low = middle;
    else high = middle;
  }
  return high;
}

export interface BandwidthTest {
  /** Critical bandwidth, in the unit of the values. */
  readonly bandwidth: number;
  readonly p: number;
  readonly resamples: number;
}

/**
 * Are there more than k modes? Samples are drawn from the density at the critical bandwidth, shrunk to the
 * spread of the sample (the smoothed bootstrap of Silverman 1981); p is the share of them that show
 * more than k peaks at that bandwidth, (b + 1) / (m + 1). For one mode the test errs on the side of a single
 * mode (Hall & York 2001, Stat. Sin. 11:515).
 */
export function bandwidthTest(
  values: ArrayLike<number>,
  k: number,
  random: Random,
  resamples = 199,
): BandwidthTest | Unavailable {
  const sorted = Float64Array.from(values).sort();
  return smoothedBootstrap(sorted, k, random, resamples, (drawn) => drawn.sort());
}

/**
 * The same for readings that a table does not give as they were drawn.
 *
 * @param sorted ascending values.
 * @param asRead the drawn values, in any order, as the table would give them, ascending.
 */
export function smoothedBootstrap(
  sorted: Float64Array,
  k: number,
  random: Random,
  resamples: number,
  asRead: (drawn: Float64Array) => Float64Array,
): BandwidthTest | Unavailable {
  const bandwidth = criticalBandwidth(sorted, k);
  if (typeof bandwidth !== 'number') return bandwidth;
  const n = sorted.length;
  const mean = sorted.reduce((sum, value) => sum + value, 0) / n;
  const variance = sorted.reduce((sum, value) => sum + (value - mean) * (value - mean), 0) / (n - 1);
  const shrink = 1 / Math.sqrt(1 + (bandwidth * bandwidth) / variance);
  let reached = 0;
  for (let draw = 0; draw < resamples; draw++) {
    const sample = sorted.map(
      () => mean + (sorted[random.integer(n)] - mean + bandwidth * standardNormal(random)) * shrink,
    );
    if (turnsOf(asRead(sample), bandwidth).peaks.length > k) reached++;
  }
  return { bandwidth, p: (reached + 1) / (resamples + 1), resamples };
}

/**
 * The valley between the two peaks of the density at the critical bandwidth for two: a threshold that
 * rests on no shape of the heaps.
 */
export function valleyOfTwo(sorted: ArrayLike<number>): number | Unavailable {
  const width = criticalBandwidth(sorted, 2);
  if (typeof width !== 'number') return width;
  const { valleys } = turnsOf(sorted, width);
  return valleys.length === 1 ? valleys[0] : { why: 'the density has no bandwidth with two peaks' };
}

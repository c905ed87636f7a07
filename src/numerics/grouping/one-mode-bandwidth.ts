import { exp } from '../foundation/elementary.ts';

/** Points of the grid on which modes are counted. */
const GRID = 128;
/** Halvings of the bracket: the bandwidth is found to 1 part in 10^4 of the range. */
const STEPS = 16;

/**
 * How much must a sample be smoothed until it shows a single heap? The smallest bandwidth at which its
 * Gaussian kernel density has one mode (Silverman 1981, *JRSS B* 43:97), for which the number of modes never
 * grows with the bandwidth. Counted on a grid of 128 points over the range and three bandwidths beyond it.
 * 0 where all values are equal.
 */
export function oneModeBandwidth(values: ArrayLike<number>): number {
  let low = values[0];
  let high = values[0];
  for (let i = 1; i < values.length; i++) {
    low = Math.min(low, values[i]);
    high = Math.max(high, values[i]);
  }
  const range = high - low;
  if (!(range > 0)) return 0;
  let rough = 0;
  let smooth = range;
  for (let step = 0; step < STEPS; step++) {
    const middle = (rough + smooth) / 2;
    if (countModes(values, low, high, middle) > 1) rough = middle;
    else smooth = middle;
  }
  return smooth;
}

/** Modes of the kernel density with this bandwidth. */
export function countModes(values: ArrayLike<number>, low: number, high: number, bandwidth: number): number {
  const start = low - 3 * bandwidth;
  const stride = (high - low + 6 * bandwidth) / (GRID - 1);
  const density = new Float64Array(GRID);
  for (let i = 0; i < values.length; i++) {
    // Beyond six bandwidths a kernel adds less than 2e-8 of its peak.
    const first = Math.max(0, Math.ceil((values[i] - 6 * bandwidth - start) / stride));
    const last = Math.min(GRID - 1, Math.floor((values[i] + 6 * bandwidth - start) / stride));
    for (let g = first; g <= last; g++) {
      const z = (start + g * stride - values[i]) / bandwidth;
      density[g] += exp(-0.5 * z * z);
    }
  }
  const floor = 1e-9 * density.reduce((most, value) => Math.max(most, value), 0);
  let modes = 0;
  let rising = true;
  for (let g = 1; g < GRID; g++) {
    if (density[g] > density[g - 1] + floor) rising = true;
    else if (density[g] < density[g - 1] - floor) {
      if (rising) modes++;
      rising = false;
    }
  }
  return modes + (rising && density[GRID - 1] > floor ? 1 : 0);
}

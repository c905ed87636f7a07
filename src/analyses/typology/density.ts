import { quantileSorted } from '../../numerics/describing/quantile.ts';
import { exp, pow } from '../../numerics/foundation/elementary.ts';
import type { HeapSplit } from './split-found.ts';

const POINTS = 160;
/** Two heaps far apart would be smeared by the rule for one, so half of it is taken. */
const SHARE_OF_RULE = 0.45;

/**
 * The density of readings with heaps in it: Gaussian kernels of half the width of Silverman's rule of thumb
 * (1986, equation 3.31), on the scale of comparison. Empty where there is no reading.
 *
 * @param scaled readings on the scale of comparison; `back` leads from there to the attribute's unit.
 */
export function densityOf(scaled: Float64Array, back: (value: number) => number): HeapSplit['curve'] {
  const n = scaled.length;
  if (n === 0) return { at: new Float64Array(), height: new Float64Array() };
  const sorted = scaled.slice().sort();
  const mean = scaled.reduce((sum, value) => sum + value, 0) / n;
  const squares = scaled.reduce((sum, value) => sum + (value - mean) * (value - mean), 0);
  const sd = Math.sqrt(squares / Math.max(1, n - 1));
  const middleHalf = (quantileSorted(sorted, 0.75) - quantileSorted(sorted, 0.25)) / 1.34;
  const spread = middleHalf > 0 ? Math.min(sd, middleHalf) : sd;
  const width = SHARE_OF_RULE * spread * pow(Math.max(2, n), -0.2) || 1e-6;
  const from = sorted[0] - 3 * width;
  const to = sorted[n - 1] + 3 * width;
  const at = Float64Array.from({ length: POINTS }, (_, i) => from + ((to - from) * i) / (POINTS - 1));
  const scale = 1 / (n * width * Math.sqrt(2 * Math.PI));
  const height = at.map(
    (x) =>
      scale * scaled.reduce((sum, value) => sum + exp(-((x - value) * (x - value)) / (2 * width * width)), 0),
  );
  return { at: at.map(back), height };
}

import gammainc from '@stdlib/math-base-special-gammainc';
import { normalUpper } from '../foundation/distributions.ts';

/**
 * How rare is what none of the draws reached? They say no more than fewer than one in so many, which is too little where
 * many tests are made. The upper tail of a gamma curve with their mean, standard deviation and skewness (Pearson's third
 * type, as in Minas & Montana 2014, Stat. Anal. Data Min. 7:196, for dissimilarities; from memory) goes further; of
 * draws that are not skewed to the right, the normal curve. Ten times the tail is given, to err to the safe side: held
 * against chances known exactly it was too small in 1 of 1,995 for the dissimilarities of shares, and then by half, but in
 * 4 of 100 for chi-square distances, down to an eightieth (`npm run simulate -- many-places`).
 *
 * @returns a chance between 0 and 1; null where the draws do not vary.
 */
export function chanceBeyond(observed: number, draws: ArrayLike<number>): number | null {
  const values = Float64Array.from(draws);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  let [squares, cubes] = [0, 0];
  for (const value of values) {
    const off = value - mean;
    squares += off * off;
    cubes += off * off * off;
  }
  const variance = squares / values.length;
  const sd = Math.sqrt(variance);
  if (!(sd > 0)) return null;
  const z = (observed - mean) / sd;
  const skewness = cubes / values.length / (variance * sd);
  if (skewness < LEAST_SKEWNESS) return Math.min(1, SAFE * normalUpper(z));
  const shape = 4 / (skewness * skewness);
  return Math.min(1, SAFE * gammainc(Math.max(0, shape + z * Math.sqrt(shape)), shape, true, true));
}

/** Of less skewed draws the gamma curve is the normal one, and its shape too large to reckon with. */
const LEAST_SKEWNESS = 0.01;

/** By so much the tail is taken larger. */
const SAFE = 10;

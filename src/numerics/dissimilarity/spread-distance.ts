/**
 * Distances where a code may stand for several kinds: a record that says only "tree bast" is of lime bast or of willow
 * bast, as a reading of 3 to 4 mm is of some number between. What intervals are to numbers, such codes are to kinds.
 */

export type SpreadRule = 'expected' | 'least' | 'greatest';

/** A code and the kinds that it may be. */
export interface Spread {
  readonly code: number;
  /** Codes of the kinds, none of them spread itself; at least one. */
  readonly kinds: readonly number[];
  /** How likely each is; they need not sum to 1. Of no concern to the least and the greatest distance. */
  readonly weights: readonly number[];
}

/**
 * - `expected`: mean of the distances of two kinds drawn independently, each by its weights. Two records of one such
 *   code are not 0 apart, because nothing says that the same kind is meant;
 * - `least`, `greatest`: the bounds that the kinds allow.
 *
 * A code that is not spread is one kind; between two of these the distance stays.
 *
 * @param between levels * levels distances of single kinds, row by row.
 * @param levels codes in `between`; a spread may have a code beyond these.
 * @returns distances of all codes, those beyond `levels` included, row by row.
 */
export function spreadDistances(
  between: Float64Array,
  levels: number,
  spreads: readonly Spread[],
  rule: SpreadRule,
): Float64Array {
  const all = spreads.reduce((most, { code }) => Math.max(most, code + 1), levels);
  const wide = new Float64Array(all * all);
  for (let a = 0; a < levels; a++) wide.set(between.subarray(a * levels, (a + 1) * levels), a * all);
  const spreadOf = new Map(spreads.map((one) => [one.code, one]));
  const asOne = (code: number): Spread => ({ code, kinds: [code], weights: [1] });
  for (const own of spreads) {
    for (let code = 0; code < all; code++) {
      const distance = apart(own, spreadOf.get(code) ?? asOne(code), between, levels, rule);
      wide[own.code * all + code] = distance;
      wide[code * all + own.code] = distance;
    }
  }
  return wide;
}

function apart(a: Spread, b: Spread, between: Float64Array, levels: number, rule: SpreadRule): number {
  let [least, greatest, sum, weight] = [Infinity, 0, 0, 0];
  a.kinds.forEach((one, i) => {
    b.kinds.forEach((other, j) => {
      const distance = between[one * levels + other];
      least = Math.min(least, distance);
      greatest = Math.max(greatest, distance);
      sum += a.weights[i] * b.weights[j] * distance;
      weight += a.weights[i] * b.weights[j];
    });
  });
  return rule === 'least' ? least : rule === 'greatest' ? greatest : sum / weight;
}

import { addTo } from '../foundation/lists.ts';

/**
 * What an attribute has in common with an axis, over the records that have a value of it.
 */

/** Product-moment correlation; pairs whose value is NaN are left out; NaN for fewer than three or no variance. */
export function correlation(values: readonly number[], at: readonly number[]): number {
  const pairs = values.flatMap((value, i) => (Number.isNaN(value) ? [] : [[value, at[i]] as const]));
  const mean = (side: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[side] / pairs.length, 0);
  const [a, b] = [mean(0), mean(1)];
  let [together, first, second] = [0, 0, 0];
  for (const [value, place] of pairs) {
    together += (value - a) * (place - b);
    first += (value - a) * (value - a);
    second += (place - b) * (place - b);
  }
  return pairs.length > 2 && first > 0 && second > 0 ? together / Math.sqrt(first * second) : Number.NaN;
}

/**
 * Share of the variance of `at` that lies between kinds (Pearson's correlation ratio, eta squared), over the
 * records that have one; NaN for fewer than three or no variance.
 */
export function correlationRatio(terms: readonly (string | null)[], at: readonly number[]): number {
  const groups = new Map<string, number[]>();
  terms.forEach((term, i) => {
    if (term !== null) addTo(groups, term, at[i]);
  });
  const all = [...groups.values()].flat();
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const centre = mean(all);
  const whole = all.reduce((sum, value) => sum + (value - centre) * (value - centre), 0);
  let between = 0;
  for (const values of groups.values()) {
    const apart = mean(values) - centre;
    between += values.length * apart * apart;
  }
  return all.length > 2 && whole > 0 ? between / whole : Number.NaN;
}

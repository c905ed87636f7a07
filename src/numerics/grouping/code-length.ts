import { ln } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * How many bits does it take to tell the values of an attribute to someone who knows the group of each
 * record, and the records of all other folds? Fewer bits = the groups say more of the attribute. Each
 * fold is told by what the others teach, so a grouping gains nothing by being finer than it can bear.
 */

const TWO_PI = 2 * Math.PI;

/**
 * Kinds: with the shares of the group in the other folds, half a record added to each kind (Krichevsky &
 * Trofimov 1981, IEEE Trans. Inf. Theory 27:199).
 *
 * @param codes kind 0 … kinds-1 of each record, -1 where not recorded: such a record costs nothing.
 * @param groups group 0 … of each record.
 */
export function kindBits(
  codes: ArrayLike<number>,
  kinds: number,
  groups: ArrayLike<number>,
  fold: ArrayLike<number>,
): number {
  let bits = 0;
  const known = Array.from({ length: codes.length }, (_, i) => i).filter((i) => codes[i] >= 0);
  for (const left of new Set(known.map((i) => fold[i]))) {
    const seen = new Map<number, Float64Array>();
    for (const i of known) {
      if (fold[i] === left) continue;
      const counts = seen.get(groups[i]) ?? new Float64Array(kinds);
      counts[codes[i]]++;
      seen.set(groups[i], counts);
    }
    for (const i of known) {
      if (fold[i] !== left) continue;
      const counts = seen.get(groups[i]);
      const total = counts?.reduce((sum, count) => sum + count, 0) ?? 0;
      bits -= ln(((counts?.[codes[i]] ?? 0) + 0.5) / (total + kinds / 2)) / Math.LN2;
    }
  }
  return bits;
}

/**
 * Numbers: by a Gaussian about the group's mean with one spread for all groups, both from the other folds,
 * widened for the uncertainty of the mean. A group that no other fold has is told by the mean and the spread of
 * all. The bits of a density hang on the unit: only differences between groupings mean anything.
 *
 * @param values NaN where not recorded: such a record costs nothing.
 */
export function numberBits(
  values: ArrayLike<number>,
  groups: ArrayLike<number>,
  fold: ArrayLike<number>,
): number | Unavailable {
  let bits = 0;
  const known = Array.from({ length: values.length }, (_, i) => i).filter((i) => !Number.isNaN(values[i]));
  for (const left of new Set(known.map((i) => fold[i]))) {
    const learn = known.filter((i) => fold[i] !== left);
    const within = spreadWithin(learn, values, groups);
    const whole = spreadWithin(learn, values, new Uint8Array(values.length));
    if (within === undefined || whole === undefined)
      return { why: 'too few records, or no spread, to tell by' };
    for (const i of known) {
      if (fold[i] !== left) continue;
      const own = within.means.get(groups[i]);
      const { sum, n } = own ?? whole.means.get(0)!;
      const variance = (own === undefined ? whole.variance : within.variance) * (1 + 1 / n);
      const off = values[i] - sum / n;
      bits += (ln(TWO_PI * variance) + (off * off) / variance) / (2 * Math.LN2);
    }
  }
  return bits;
}

interface Spread {
  readonly means: ReadonlyMap<number, { readonly sum: number; readonly n: number }>;
  /** Pooled within the groups. */
  readonly variance: number;
}

function spreadWithin(
  rows: readonly number[],
  values: ArrayLike<number>,
  groups: ArrayLike<number>,
): Spread | undefined {
  const means = new Map<number, { sum: number; n: number }>();
  for (const i of rows) {
    const { sum, n } = means.get(groups[i]) ?? { sum: 0, n: 0 };
    means.set(groups[i], { sum: sum + values[i], n: n + 1 });
  }
  let squares = 0;
  for (const i of rows) {
    const { sum, n } = means.get(groups[i])!;
    squares += (values[i] - sum / n) * (values[i] - sum / n);
  }
  const df = rows.length - means.size;
  return df < 1 || squares === 0 ? undefined : { means, variance: squares / df };
}

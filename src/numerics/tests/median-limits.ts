import betainc from '@stdlib/math-base-special-betainc';
import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * Limits of a median from the order of the values alone: the sign test inverted, so that they hold whatever the
 * spread, and interpolated between neighbouring values to come near the confidence (Hettmansperger & Sheather
 * 1986, Statist. Probab. Lett. 4:75). Unavailable with fewer values than the confidence takes (6 at 95 %), and
 * where equal readings leave the limits no width.
 *
 * @param values independent ones, such as one an item.
 */
export function medianLimits(
  values: ArrayLike<number>,
  confidence: number,
): { readonly low: number; readonly high: number } | Unavailable {
  const n = values.length;
  if (n === 0) return { why: 'no value' };
  if (between(1, n) < confidence) return { why: tooFew(confidence) };
  const sorted = Float64Array.from(values).sort();
  const at = (place: number) => sorted[place - 1];
  let k = 1;
  while (2 * (k + 1) <= n && between(k + 1, n) >= confidence) k++;
  const [outer, inner] = [between(k, n), 2 * (k + 1) <= n + 1 ? between(k + 1, n) : 0];
  const part = (outer - confidence) / (outer - inner);
  const share = ((n - k) * part) / (k + (n - 2 * k) * part);
  const low = (1 - share) * at(k) + share * at(k + 1);
  const high = (1 - share) * at(n - k + 1) + share * at(n - k);
  return low < high ? { low, high } : { why: 'the readings are too coarse to give limits a width' };
}

/** Fewest values that allow limits of a median at this confidence. */
export function fewestForMedian(confidence: number): number {
  let n = 1;
  while (between(1, n) < confidence) n++;
  return n;
}

const tooFew = (confidence: number) =>
  `fewer than ${fewestForMedian(confidence)} values allow no limits of a median at ${Number((confidence * 100).toPrecision(6))} %`;

/** Chance that the median lies between the k-th value from below and the k-th from above. */
function between(k: number, n: number): number {
  return 1 - 2 * betainc(0.5, n - k + 1, k, true, false);
}

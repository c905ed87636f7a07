import type { Unavailable } from '../foundation/unavailable.ts';

/** More pairs than these are counted, not written down: their memory would be the square of the sample. */
const MOST_WRITTEN = 4000;

/**
 * Median of all differences between a value of the first sample and one of the second, the estimate
 * of Hodges & Lehmann 1963, Ann. Math. Stat. 34:598: positive when the first is larger. The middle is
 * found by selection (Hoare 1961, Commun. ACM 4:321), so that it can be asked for thousands of times; of many pairs by
 * counting how many differences lie below a value, which takes no more memory than the samples (the idea of Johnson &
 * Mizoguchi 1978, SIAM J. Comput. 7:147, from memory). Both give the very same number.
 */
export function medianDifference(first: ArrayLike<number>, second: ArrayLike<number>): number | Unavailable {
  if (first.length === 0 || second.length === 0) return { why: 'a group has no value' };
  const pairs = first.length * second.length;
  const upper = Math.floor(pairs / 2);
  if (pairs > MOST_WRITTEN) {
    const rank = countedDifferences(first, second);
    return pairs % 2 === 1 ? rank(upper) : (rank(upper - 1) + rank(upper)) / 2;
  }
  const differences = new Float64Array(pairs);
  let at = 0;
  for (let i = 0; i < first.length; i++)
    for (let j = 0; j < second.length; j++) differences[at++] = first[i] - second[j];
  const high = select(differences, upper);
  if (pairs % 2 === 1) return high;
  let low = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < upper; i++) low = Math.max(low, differences[i]);
  return (low + high) / 2;
}

/**
 * The difference of each rank (0 = smallest), found by halving among the doubles themselves: rounding keeps the order,
 * so that in sorted samples the differences that do not pass a value are counted in one walk.
 */
function countedDifferences(first: ArrayLike<number>, second: ArrayLike<number>): (rank: number) => number {
  const rising = Float64Array.from(first).sort();
  const falling = Float64Array.from(second).sort().reverse();
  const notAbove = (value: number) => {
    let count = 0;
    let reach = falling.length;
    // The larger the first, the fewer of the second leave no more than the value.
    for (let i = 0; i < rising.length && reach > 0; i++) {
      while (reach > 0 && rising[i] - falling[reach - 1] > value) reach--;
      count += reach;
    }
    return count;
  };
  const [least, most] = [rising[0] - falling[0], rising[rising.length - 1] - falling[falling.length - 1]];
  return (rank) => {
    let [low, high] = [orderOf(least), orderOf(most)];
    while (low < high) {
      const middle = low + (high - low) / 2n;
      if (notAbove(doubleAt(middle)) > rank) high = middle;
      else low = middle + 1n;
    }
    // Nought has two doubles; a difference of equal values is the positive one.
    return doubleAt(low) + 0;
  };
}

const cell = new DataView(new ArrayBuffer(8));

/** Whole numbers in the order of the doubles that they stand for. */
function orderOf(value: number): bigint {
  cell.setFloat64(0, value);
  const bits = cell.getBigInt64(0);
  return bits >= 0n ? bits : -(bits & MAGNITUDE);
}

function doubleAt(order: bigint): number {
  cell.setBigInt64(0, order >= 0n ? order : -order);
  const value = cell.getFloat64(0);
  return order >= 0n ? value : -value;
}

const MAGNITUDE = 0x7fffffffffffffffn;

/** The value of rank `k` (0 = smallest), the smaller ones moved before it; changes `values`. */
export function select(values: Float64Array, k: number): number {
  let left = 0;
  let right = values.length - 1;
  while (left < right) {
    const pivot = values[(left + right) >> 1];
    let i = left;
    let j = right;
    while (i <= j) {
      while (values[i] < pivot) i++;
      while (values[j] > pivot) j--;
      if (i <= j) {
        const kept = values[i];
        values[i++] = values[j];
        values[j--] = kept;
      }
    }
    if (k <= j) right = j;
    else if (k >= i) left = i;
    else break;
  }
  return values[k];
}

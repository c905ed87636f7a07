/**
 * Places of pairs in ascending order: by the first number, then by the second, then as they stand. The first numbers are
 * put in order by themselves and each place is dealt to its number, which is far quicker than comparing pair by pair.
 */
export function orderOfPairs(first: Float64Array, second: Float64Array): Int32Array {
  const n = first.length;
  const sorted = first.slice().sort();
  const distinct = new Float64Array(n);
  const next = new Int32Array(n + 1);
  let groups = 0;
  for (let i = 0; i < n; i++) {
    if (i > 0 && sorted[i] === sorted[i - 1]) continue;
    distinct[groups] = sorted[i];
    next[groups++] = i;
  }
  next[groups] = n;
  const starts = next.slice(0, groups + 1);
  const order = new Int32Array(n);
  for (let i = 0; i < n; i++) order[next[placeAmong(first[i], distinct, groups)]++] = i;
  for (let group = 0; group < groups; group++) {
    const own = order.subarray(starts[group], starts[group + 1]);
    if (own.some((place) => second[place] !== second[own[0]]))
      own.sort((a, b) => second[a] - second[b] || a - b);
  }
  return order;
}

/** Place of a value among the first `count` of ascending distinct ones, which hold it. */
export function placeAmong(value: number, distinct: Float64Array, count: number): number {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (distinct[middle] < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

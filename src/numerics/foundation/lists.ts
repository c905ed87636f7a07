/**
 * Lists of any length. `Math.max(...values)` and `list.push(...more)` hand each value over as an argument, and
 * an engine has room for some hundred thousand of those; these have no such end.
 */

/** The smallest value, infinity of none; NaN where one is. */
export function least(values: Iterable<number>): number {
  let low = Number.POSITIVE_INFINITY;
  for (const value of values) low = Math.min(low, value);
  return low;
}

/** The largest value, minus infinity of none; NaN where one is. */
export function greatest(values: Iterable<number>): number {
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) high = Math.max(high, value);
  return high;
}

/** Adds one to the list of a key; copying the list for it would take the square of its length. */
export function addTo<Key, T>(lists: Map<Key, T[]>, key: Key, one: T): void {
  const known = lists.get(key);
  if (known === undefined) lists.set(key, [one]);
  else known.push(one);
}

/** Adds all of `more` at the end of a list. */
export function append<T>(list: T[], more: Iterable<T>): void {
  for (const one of more) list.push(one);
}

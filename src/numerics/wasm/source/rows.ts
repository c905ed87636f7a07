import { f64At, i32At, setF64, setI32 } from './memory';

/** Rows of a triangle of dissimilarities: `row` is the byte where the pair of this row with row 0 would lie. */

// @ts-expect-error: the compiler knows decorators of functions
@inline
function newsOf(row: usize, distance: usize, least: v128, j: i32): v128 {
  const values = v128.load(row + ((<usize>j) << 3));
  const known = v128.load(distance + ((<usize>j) << 3));
  return v128.or(v128.or(f64x2.lt(values, known), f64x2.lt(values, least)), f64x2.ne(values, values));
}

/**
 * Looks for the nearest neighbours of row i among the later ones, and for theirs, of equals the first.
 * Four columns at a time: few pairs are nearer than what was known, so that the branch is seldom taken.
 * Gives how many of the pairs are NaN.
 */
export function nearestInRow(row: usize, i: i32, n: i32, nearest: usize, distance: usize): i32 {
  let unknown = 0;
  let best = i32At(nearest, i);
  let least = f64At(distance, i);
  let j = i + 1;
  while (j < n) {
    let end = min(j + 4, n);
    if (end == j + 4) {
      const both = f64x2.splat(least);
      if (!v128.any_true(v128.or(newsOf(row, distance, both, j), newsOf(row, distance, both, j + 2)))) {
        j = end;
        continue;
      }
    }
    for (; j < end; j++) {
      const value = f64At(row, j);
      if (value != value) unknown++;
      if (value < least) {
        least = value;
        best = j;
      }
      if (value < f64At(distance, j)) {
        setF64(distance, j, value);
        setI32(nearest, j, i);
      }
    }
  }
  setI32(nearest, i, best);
  setF64(distance, i, least);
  return unknown;
}

/** out[t] = row[places[t]] for t = from … to - 1. */
export function pick(row: usize, places: usize, from: i32, to: i32, out: usize): void {
  for (let t = from; t < to; t++) setF64(out, t, f64At(row, i32At(places, t)));
}

/** Puts row[second[t]] to the end of the list of every t in open[from … to - 1]; `ends` are places in `lists`. */
export function append(
  row: usize,
  second: usize,
  open: usize,
  from: i32,
  to: i32,
  lists: usize,
  ends: usize,
): void {
  for (let at = from; at < to; at++) {
    const t = i32At(open, at);
    const end = i32At(ends, t);
    setF64(lists, end, f64At(row, i32At(second, t)));
    setI32(ends, t, end + 1);
  }
}

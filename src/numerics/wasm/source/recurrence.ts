import { f64At, setF64 } from './memory';

/**
 * Dissimilarity of a cluster of `n` records to the union of two, from those to its parts of nx and ny records
 * (Lance & Williams 1967, *Computer Journal* 9:373); the numbers of the linkages are those of `recurrence.ts`.
 */
// @ts-expect-error: the compiler knows decorators of functions
@inline
function union(kind: i32, toX: f64, toY: f64, n: f64, between: f64, nx: f64, ny: f64): f64 {
  if (kind == 0) return max(toX, toY);
  if (kind == 1) return (nx * toX + ny * toY) / (nx + ny);
  if (kind == 2) return 0.5 * (toX + toY);
  if (kind == 3) {
    const share = 1 / (nx + ny + n);
    return sqrt((n + nx) * share * toX * toX + (n + ny) * share * toY * toY - n * share * between * between);
  }
  return ((n + nx) * toX + (n + ny) * toY - n * between) / (nx + ny + n);
}

/** One loop a linkage, so that the choice stands outside. */
// @ts-expect-error: the compiler knows decorators of functions
@inline
function uniteRows(
  kind: i32, toX: usize, toY: usize, sizes: usize, from: i32, to: i32, between: f64, nx: f64, ny: f64,
): void {
  for (let t = from; t < to; t++) {
    setF64(toX, t, union(kind, f64At(toX, t), f64At(toY, t), f64At(sizes, t), between, nx, ny));
  }
}

/**
 * Dissimilarities of the clusters from … to - 1, of the given sizes, to the union of two; written over `toX`.
 *
 * @param between dissimilarity of the two parts, of nx and ny records
 */
export function unite(
  kind: i32, toX: usize, toY: usize, sizes: usize, from: i32, to: i32, between: f64, nx: f64, ny: f64,
): void {
  switch (kind) {
    case 0: return uniteRows(0, toX, toY, sizes, from, to, between, nx, ny);
    case 1: return uniteRows(1, toX, toY, sizes, from, to, between, nx, ny);
    case 2: return uniteRows(2, toX, toY, sizes, from, to, between, nx, ny);
    case 3: return uniteRows(3, toX, toY, sizes, from, to, between, nx, ny);
    default: return uniteRows(4, toX, toY, sizes, from, to, between, nx, ny);
  }
}

// @ts-expect-error: the compiler knows decorators of functions
@inline
function unitePlaces(
  kind: i32, out: usize, row: usize, size: f64, place: usize, second: usize, between: usize,
  nx: usize, ny: usize, from: i32, to: i32,
): void {
  for (let t = from; t < to; t++) {
    const at = out + ((<usize>load<i32>(place + ((<usize>t) << 2))) << 3);
    const toSecond = f64At(row, load<i32>(second + ((<usize>t) << 2)));
    store<f64>(at, union(kind, load<f64>(at), toSecond, size, f64At(between, t), f64At(nx, t), f64At(ny, t)));
  }
}

/**
 * Dissimilarities of one cluster to the unions from … to - 1. `out` holds those to the first parts, at the
 * places of the unions, and is written over; `row` those to the second parts, at their old places.
 *
 * @param size records of the one cluster; `between`, `nx` and `ny` belong to the unions
 */
export function uniteColumns(
  kind: i32, out: usize, row: usize, size: f64, place: usize, second: usize, between: usize,
  nx: usize, ny: usize, from: i32, to: i32,
): void {
  switch (kind) {
    case 0: return unitePlaces(0, out, row, size, place, second, between, nx, ny, from, to);
    case 1: return unitePlaces(1, out, row, size, place, second, between, nx, ny, from, to);
    case 2: return unitePlaces(2, out, row, size, place, second, between, nx, ny, from, to);
    case 3: return unitePlaces(3, out, row, size, place, second, between, nx, ny, from, to);
    default: return unitePlaces(4, out, row, size, place, second, between, nx, ny, from, to);
  }
}

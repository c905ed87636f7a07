import { f64At, i32At, setF64, setI32 } from './memory';

/**
 * The loops of k-means. Records and centres are rows of `stride` numbers, an even count, so that two numbers are
 * taken at a time; a column too many holds zeros.
 */

// @ts-expect-error: the compiler knows decorators of functions
@inline
function rowAt(rows: usize, place: i32, stride: i32): usize {
  return rows + ((<usize>(place * stride)) << 3);
}

// @ts-expect-error: the compiler knows decorators of functions
@inline
function square(a: usize, b: usize, stride: i32): f64 {
  let sums = f64x2.splat(0);
  const end = a + ((<usize>stride) << 3);
  while (a < end) {
    const difference = f64x2.sub(v128.load(a), v128.load(b));
    sums = f64x2.add(sums, f64x2.mul(difference, difference));
    a += 16;
    b += 16;
  }
  return f64x2.extract_lane(sums, 0) + f64x2.extract_lane(sums, 1);
}

/** A further centre: squared distances to the nearest and the second so far, and which is the nearest. */
export function addCentre(
  records: usize, n: i32, stride: i32, centre: usize, number: i32, membership: usize, nearest: usize, second: usize,
): void {
  for (let i = 0; i < n; i++) {
    const distance = square(rowAt(records, i, stride), centre, stride);
    const before = f64At(nearest, i);
    if (distance < before) {
      setF64(second, i, before);
      setF64(nearest, i, distance);
      setI32(membership, i, number);
    } else if (distance < f64At(second, i)) setF64(second, i, distance);
  }
}

/** Sum of the first n numbers, from the first on. */
export function sum(values: usize, n: i32): f64 {
  let total: f64 = 0;
  for (let i = 0; i < n; i++) total += f64At(values, i);
  return total;
}

/** The first place at which the running sum of the weights exceeds `target`; else the last weight above 0. */
export function reach(weights: usize, n: i32, target: f64): i32 {
  let left = target;
  let chosen = -1;
  for (let i = 0; i < n; i++) {
    const weight = f64At(weights, i);
    if (weight == 0) continue;
    chosen = i;
    left -= weight;
    if (left < 0) break;
  }
  return chosen;
}

/**
 * The nearest centre of each record, of equals the first. `upper` and `lower` bound its distances to that one
 * and to the next; records that cannot have changed by them, or by half the distance from their centre to the
 * next (`halfway`), are passed over. `room` is a factor a little above 1 that keeps rounding on the safe side.
 */
export function assign(
  records: usize, n: i32, stride: i32, centres: usize, k: i32, halfway: usize, room: f64,
  membership: usize, upper: usize, lower: usize,
): void {
  for (let i = 0; i < n; i++) {
    const own = i32At(membership, i);
    const bound = max(f64At(halfway, own), f64At(lower, i));
    if (f64At(upper, i) * room < bound) continue;
    const record = rowAt(records, i, stride);
    if (f64At(upper, i) < Infinity) {
      const tight = sqrt(square(record, rowAt(centres, own, stride), stride));
      setF64(upper, i, tight);
      if (tight * room < bound) continue;
    }
    let first: f64 = Infinity;
    let second: f64 = Infinity;
    let nearest = 0;
    for (let centre = 0; centre < k; centre++) {
      const distance = square(record, rowAt(centres, centre, stride), stride);
      if (distance < first) {
        second = first;
        first = distance;
        nearest = centre;
      } else if (distance < second) second = distance;
    }
    setI32(membership, i, nearest);
    setF64(upper, i, sqrt(first));
    setF64(lower, i, sqrt(second));
  }
}

/** Adds every record to the sums of its group and counts it. */
export function addUp(records: usize, n: i32, stride: i32, membership: usize, sums: usize, sizes: usize): void {
  const width = (<usize>stride) << 3;
  for (let i = 0; i < n; i++) {
    const group = i32At(membership, i);
    setI32(sizes, group, i32At(sizes, group) + 1);
    const record = rowAt(records, i, stride);
    const total = rowAt(sums, group, stride);
    for (let c: usize = 0; c < width; c += 16) {
      v128.store(total + c, f64x2.add(v128.load(total + c), v128.load(record + c)));
    }
  }
}

/** Bounds move with the centres: `moved` is the distance that each has gone, `most` the greatest of them. */
export function loosen(n: i32, membership: usize, upper: usize, lower: usize, moved: usize, most: f64): void {
  for (let i = 0; i < n; i++) {
    setF64(upper, i, f64At(upper, i) + f64At(moved, i32At(membership, i)));
    setF64(lower, i, f64At(lower, i) - most);
  }
}

/** Sum of the squared distances of all records to their own centres. */
export function withinSquares(records: usize, n: i32, stride: i32, centres: usize, membership: usize): f64 {
  let total: f64 = 0;
  for (let i = 0; i < n; i++) {
    total += square(rowAt(records, i, stride), rowAt(centres, i32At(membership, i), stride), stride);
  }
  return total;
}

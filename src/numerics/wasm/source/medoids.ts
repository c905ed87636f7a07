import { f64At, i32At } from './memory';

/**
 * The sums of k-medoids over a full matrix of dissimilarities, whose rows hold `stride` numbers, an even count; what stands
 * in a column too many is of no account. Every candidate adds up the records in their order, two candidates at a time.
 */

// @ts-expect-error: the compiler knows decorators of functions
@inline
function addTo(sums: usize, term: v128): void {
  v128.store(sums, f64x2.add(v128.load(sums), term));
}

/** What each candidate would save as a further medoid: sums of what it is nearer than the nearest medoid so far. */
export function addGains(matrix: usize, n: i32, stride: i32, nearest: usize, gains: usize): void {
  const width = (<usize>stride) << 3;
  const nothing = f64x2.splat(0);
  for (let record = 0; record < n; record++) {
    const row = matrix + <usize>record * width;
    const before = f64x2.splat(f64At(nearest, record));
    for (let at: usize = 0; at < width; at += 16) {
      addTo(gains + at, f64x2.pmax(nothing, f64x2.sub(before, v128.load(row + at))));
    }
  }
}

/**
 * What a swap for each candidate changes: `shared` whichever medoid leaves, and in row m of `extra` what is added when it is
 * medoid m. `first` and `second` are the dissimilarities to the nearest and the second medoid, `place` which is the nearest.
 */
export function addSwaps(
  matrix: usize, n: i32, stride: i32, place: usize, first: usize, second: usize, shared: usize, extra: usize,
): void {
  const width = (<usize>stride) << 3;
  for (let record = 0; record < n; record++) {
    const row = matrix + <usize>record * width;
    const own = extra + <usize>i32At(place, record) * width;
    const near = f64x2.splat(f64At(first, record));
    const next = f64x2.splat(f64At(second, record));
    for (let at: usize = 0; at < width; at += 16) {
      const distance = v128.load(row + at);
      addTo(shared + at, f64x2.sub(f64x2.pmin(near, distance), near));
      addTo(own + at, f64x2.sub(f64x2.pmin(next, f64x2.pmax(near, distance)), next));
    }
  }
}

import { ln } from '../foundation/elementary.ts';

/** What a mixed model with random intercepts is made of. */
export interface MixedData {
  readonly y: ArrayLike<number>;
  /** Columns of the fixed part, the constant among them. */
  readonly fixed: readonly ArrayLike<number>[];
  /** Grouping factors, crossed or nested: level 0 … count - 1 of each reading. */
  readonly groups: readonly { readonly codes: ArrayLike<number>; readonly count: number }[];
}

/**
 * Sums of products from which the model is solved at any size of its random parts. The factor with most levels
 * (items) stands first and is eliminated by hand, for its own block is diagonal; the others, the fixed part and the
 * readings stay as one small dense matrix.
 */
export interface MixedSystem {
  readonly n: number;
  /** Levels of the factors, most first, and which factor of the data each one is. */
  readonly levels: readonly number[];
  readonly factors: readonly number[];
  readonly fixedCount: number;
  /** Columns of the dense part: levels of the further factors, fixed columns, readings. */
  readonly width: number;
  /** Readings of each level of the first factor. */
  readonly counts: Float64Array;
  /** First factor by dense columns. */
  readonly across: Float64Array;
  /** Dense columns by dense columns. */
  readonly dense: Float64Array;
}

export function mixedSystem({ y, fixed, groups }: MixedData): MixedSystem {
  const n = y.length;
  const factors = groups.map((_, at) => at).sort((a, b) => groups[b].count - groups[a].count || a - b);
  const [first, ...rest] = factors.map((at) => groups[at]);
  const random = rest.reduce((sum, { count }) => sum + count, 0);
  const width = random + fixed.length + 1;
  const counts = new Float64Array(first.count);
  const across = new Float64Array(first.count * width);
  const dense = new Float64Array(width * width);
  const at = new Int32Array(rest.length + fixed.length + 1);
  const value = new Float64Array(at.length).fill(1);
  for (let row = 0; row < n; row++) {
    let start = 0;
    rest.forEach(({ codes, count }, k) => {
      at[k] = start + codes[row];
      start += count;
    });
    fixed.forEach((column, j) => {
      at[rest.length + j] = random + j;
      value[rest.length + j] = column[row];
    });
    at[at.length - 1] = width - 1;
    value[at.length - 1] = y[row];
    const level = first.codes[row];
    counts[level]++;
    for (let a = 0; a < at.length; a++) {
      across[level * width + at[a]] += value[a];
      for (let b = 0; b < at.length; b++) dense[at[a] * width + at[b]] += value[a] * value[b];
    }
  }
  return {
    n,
    levels: [first.count, ...rest.map(({ count }) => count)],
    factors,
    fixedCount: fixed.length,
    width,
    counts,
    across,
    dense,
  };
}

/** The model solved at given sizes of its random parts. */
export interface MixedSolution {
  /** Relative standard deviations of the random parts, as in the system's order of factors. */
  readonly theta: readonly number[];
  /** Cholesky factor of what is left of the dense part. */
  readonly lower: Float64Array;
  /** 1 + theta² times the readings, of each level of the first factor. */
  readonly diagonal: Float64Array;
  readonly scale: Float64Array;
  readonly logRandom: number;
  readonly logFixed: number;
  /** Penalised sum of squares. */
  readonly squares: number;
  /** Solution of the dense part: spherical random parts of the further factors, then the fixed part. */
  readonly solved: Float64Array;
  /** Spherical random parts, factor by factor. */
  readonly spherical: readonly Float64Array[];
}

/**
 * Solves the penalised least squares of Bates, Mächler, Bolker & Walker 2015, J. Stat. Softw. 67(1), section 3, at
 * one set of relative standard deviations. Null where the fixed columns depend on each other.
 */
export function solveMixed(system: MixedSystem, theta: readonly number[]): MixedSolution | null {
  const { levels, width, counts, across, dense, fixedCount } = system;
  const random = width - 1 - fixedCount;
  const scale = new Float64Array(width).fill(1);
  let start = 0;
  for (let k = 1; k < levels.length; k++) {
    scale.fill(theta[k], start, start + levels[k]);
    start += levels[k];
  }
  const square = theta[0] * theta[0];
  const diagonal = counts.map((count) => 1 + square * count);
  const lower = new Float64Array(width * width);
  for (let a = 0; a < width; a++)
    for (let b = 0; b <= a; b++) {
      let taken = 0;
      for (let j = 0; j < counts.length; j++)
        taken += (across[j * width + a] * across[j * width + b]) / diagonal[j];
      lower[a * width + b] = scale[a] * scale[b] * (dense[a * width + b] - square * taken);
    }
  for (let a = 0; a < random; a++) lower[a * width + a] += 1;
  const scaleOfY = dense[width * width - 1];
  let logRandom = diagonal.reduce((sum, value) => sum + ln(value), 0);
  let logFixed = 0;
  for (let a = 0; a < width; a++) {
    const whole = lower[a * width + a];
    for (let b = 0; b <= a; b++) {
      let sum = lower[a * width + b];
      for (let k = 0; k < b; k++) sum -= lower[a * width + k] * lower[b * width + k];
      if (b < a) lower[a * width + b] = sum / lower[b * width + b];
      else if (a === width - 1) lower[a * width + a] = Math.sqrt(Math.max(0, sum));
      else if (sum > 1e-11 * whole) lower[a * width + a] = Math.sqrt(sum);
      else return null;
    }
    if (a < random) logRandom += 2 * ln(lower[a * width + a]);
    else if (a < width - 1) logFixed += 2 * ln(lower[a * width + a]);
  }
  const last = lower[width * width - 1];
  const squares = last * last;
  if (!(squares > 1e-14 * scaleOfY)) return null;
  const solved = backward(lower, width, lower.subarray((width - 1) * width, width * width - 1));
  const own = new Float64Array(counts.length);
  for (let j = 0; j < counts.length; j++) {
    let left = across[j * width + width - 1];
    for (let a = 0; a < width - 1; a++) left -= across[j * width + a] * scale[a] * solved[a];
    own[j] = (theta[0] * left) / diagonal[j];
  }
  const spherical = [own];
  start = 0;
  for (let k = 1; k < levels.length; k++) {
    spherical.push(solved.slice(start, start + levels[k]));
    start += levels[k];
  }
  return { theta, lower, diagonal, scale, logRandom, logFixed, squares, solved, spherical };
}

/** Solves L' x = b for the first b.length rows of a lower triangle. */
export function backward(lower: Float64Array, width: number, b: Float64Array): Float64Array {
  const x = b.slice();
  for (let a = x.length - 1; a >= 0; a--) {
    for (let k = a + 1; k < x.length; k++) x[a] -= lower[k * width + a] * x[k];
    x[a] /= lower[a * width + a];
  }
  return x;
}

/** Solves L x = b for the first b.length rows of a lower triangle. */
export function forward(lower: Float64Array, width: number, b: Float64Array): Float64Array {
  const x = b.slice();
  for (let a = 0; a < x.length; a++) {
    for (let k = 0; k < a; k++) x[a] -= lower[a * width + k] * x[k];
    x[a] /= lower[a * width + a];
  }
  return x;
}

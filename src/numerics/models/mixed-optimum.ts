import { exp, ln } from '../foundation/elementary.ts';
import { solveSymmetric } from '../foundation/solve.ts';
import { forward, type MixedSolution, type MixedSystem, solveMixed } from './mixed-system.ts';

export type MixedMethod = 'REML' | 'ML';

/** Relative standard deviations from which the search starts. */
const STARTS = [0, 0.03, 0.1, 0.3, 1, 3, 10, 30];
/** Below this a random part is nothing. */
const NOTHING = 1e-4;
const ROUNDS = 60;

/** -2 log likelihood, restricted or not, with the residual variance at its best (Bates et al. 2015, 34 and 41). */
export function mixedDeviance(system: MixedSystem, solution: MixedSolution, method: MixedMethod): number {
  const free = method === 'REML' ? system.n - system.fixedCount : system.n;
  return (
    solution.logRandom +
    (method === 'REML' ? solution.logFixed : 0) +
    free * (1 + ln((2 * Math.PI * solution.squares) / free))
  );
}

/** The sizes of the random parts at which the likelihood is greatest; null where nothing can be solved. */
export function mixedOptimum(system: MixedSystem, method: MixedMethod): MixedSolution | null {
  const { levels } = system;
  const deviance = (theta: readonly number[]) => {
    const solution = solveMixed(system, theta);
    return solution === null ? Number.POSITIVE_INFINITY : mixedDeviance(system, solution, method);
  };
  let best: readonly number[] = levels.map(() => 0);
  let least = deviance(best);
  for (const theta of grid(levels.length)) {
    const value = deviance(theta);
    if (value < least) [best, least] = [theta, value];
  }
  for (let round = 0; round < levels.length + 1; round++) {
    best = climb(system, method, best, deviance);
    // A part set to nothing comes back where a little of it would do better.
    const kept = best;
    const wanting = kept.findIndex(
      (value, k) => value === 0 && deviance(kept.map((v, j) => (j === k ? 1e-3 : v))) < deviance(kept),
    );
    if (wanting < 0) break;
    best = kept.map((value, k) => (k === wanting ? 0.01 : value));
  }
  return solveMixed(system, best);
}

function grid(factors: number): number[][] {
  let points: number[][] = [[]];
  for (let k = 0; k < factors; k++)
    points = points.flatMap((point) => STARTS.map((start) => [...point, start]));
  return points;
}

/**
 * Newton's method on the likelihood equations, in logarithms of the sizes, halved while it does not improve; a part
 * that runs to nothing is set to nothing.
 */
function climb(
  system: MixedSystem,
  method: MixedMethod,
  from: readonly number[],
  deviance: (theta: readonly number[]) => number,
): readonly number[] {
  let theta = from;
  for (let round = 0; round < ROUNDS; round++) {
    const open = theta.flatMap((value, k) => (value > 0 ? [k] : []));
    if (open.length === 0) return theta;
    const here = theta;
    const moved = (step: (k: number) => number) =>
      here.map((value, k) => (value > 0 ? value * exp(step(k)) : 0));
    const slope = scores(system, method, theta, open);
    if (slope === null) return theta;
    const h = 1e-4;
    const curve = new Float64Array(open.length * open.length);
    for (const [b, k] of open.entries()) {
      const [up, down] = [h, -h].map((step) =>
        scores(
          system,
          method,
          moved((j) => (j === k ? step : 0)),
          open,
        ),
      );
      if (up === null || down === null) return theta;
      for (let a = 0; a < open.length; a++) curve[a * open.length + b] = (up[a] - down[a]) / (2 * h);
    }
    // Scores are half the slope of the deviance: at its least the curve is positive definite.
    for (let a = 0; a < open.length; a++)
      for (let b = 0; b < a; b++) {
        const mean = (curve[a * open.length + b] + curve[b * open.length + a]) / 2;
        curve[a * open.length + b] = curve[b * open.length + a] = mean;
      }
    const newton = solveSymmetric(
      curve,
      slope.map((value) => -value),
    );
    const direction = newton ?? slope.map((value) => -value / (1 + Math.abs(value)));
    const longest = direction.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    const least = deviance(theta);
    let share = Math.min(1, 2 / longest);
    let next = theta;
    for (let half = 0; half < 30; half++, share /= 2) {
      next = moved((k) => share * direction[open.indexOf(k)]);
      if (deviance(next) <= least + 1e-10 * Math.abs(least)) break;
    }
    theta = next.map((value) => (value < NOTHING ? 0 : value));
    if (longest < 1e-9) return theta;
  }
  return theta;
}

/** Half the slopes of the deviance by the logarithms of the sizes. */
function scores(
  system: MixedSystem,
  method: MixedMethod,
  theta: readonly number[],
  open: readonly number[],
): Float64Array | null {
  const solution = solveMixed(system, theta);
  if (solution === null) return null;
  const { n, fixedCount, levels } = system;
  const variance = solution.squares / (method === 'REML' ? n - fixedCount : n);
  const traces = inverseTraces(system, solution, method);
  return Float64Array.from(open, (k) => {
    const sum = solution.spherical[k].reduce((total, value) => total + value * value, 0);
    return levels[k] - traces[k] - sum / variance;
  });
}

/** Traces of the blocks of the inverse of the mixed model equations, factor by factor. */
function inverseTraces(system: MixedSystem, solution: MixedSolution, method: MixedMethod): number[] {
  const { levels, width, across, fixedCount, counts } = system;
  const { lower, diagonal, scale, theta } = solution;
  const size = method === 'REML' ? width - 1 : width - 1 - fixedCount;
  let first = 0;
  const part = new Float64Array(size);
  for (let j = 0; j < counts.length; j++) {
    for (let a = 0; a < size; a++) part[a] = (theta[0] * across[j * width + a] * scale[a]) / diagonal[j];
    const half = forward(lower, width, part);
    first += 1 / diagonal[j] + half.reduce((sum, value) => sum + value * value, 0);
  }
  const traces = [first];
  let start = 0;
  for (let k = 1; k < levels.length; k++) {
    let trace = 0;
    for (let a = start; a < start + levels[k]; a++) {
      const unit = new Float64Array(size);
      unit[a] = 1;
      trace += forward(lower, width, unit).reduce((sum, value) => sum + value * value, 0);
    }
    traces.push(trace);
    start += levels[k];
  }
  return traces;
}

import type { Unavailable } from '../foundation/unavailable.ts';
import { type MixedMethod, mixedDeviance, mixedOptimum } from './mixed-optimum.ts';
import {
  backward,
  forward,
  type MixedData,
  type MixedSolution,
  type MixedSystem,
  mixedSystem,
  solveMixed,
} from './mixed-system.ts';

export interface MixedEstimate {
  readonly estimate: number;
  readonly se: number;
}

/** A linear mixed model with random intercepts. */
export interface MixedModel {
  /** One of each fixed column. */
  readonly fixed: readonly MixedEstimate[];
  /** Covariances of the fixed estimates, row by row. */
  readonly covariance: Float64Array;
  /** Variance of each grouping factor's intercepts, in the order given. */
  readonly variances: readonly number[];
  readonly residual: number;
  /** Of the method: restricted or not. */
  readonly logLikelihood: number;
  readonly n: number;
  /** Predicted intercepts (BLUPs) of each factor's levels. */
  readonly intercepts: readonly Float64Array[];
  /**
   * Predicted mean of one level at given fixed values, and the standard error of that prediction, the
   * variances taken as known (Henderson 1975, Biometrics 31:423).
   */
  readonly predict: (factor: number, level: number, fixed: readonly number[]) => MixedEstimate;
}

/**
 * Fits y = fixed part + one random intercept for each grouping factor + rest, by restricted (REML) or full maximum
 * likelihood (Laird & Ware 1982, Biometrics 38:963; computed as Bates, Mächler, Bolker & Walker 2015, J. Stat. Softw.
 * 67(1)); without grouping factors that is least squares. Unavailable where fixed columns depend on each other, or a factor has a level for each reading, which then
 * cannot be told from the rest.
 */
export function mixedModel(data: MixedData, method: MixedMethod = 'REML'): MixedModel | Unavailable {
  const { y, fixed, groups } = data;
  if (groups.some(({ count }) => count >= y.length))
    return { why: 'each reading is a group of its own, so groups cannot be told from the rest' };
  if (groups.some(({ count }) => count < 2)) return { why: 'a grouping has a single group' };
  if (y.length <= fixed.length) return { why: 'there are no more readings than effects' };
  const alone = groups.length === 0;
  const system = mixedSystem(
    alone ? { ...data, groups: [{ codes: new Int32Array(y.length), count: 1 }] } : data,
  );
  const solution = alone ? solveMixed(system, [0]) : mixedOptimum(system, method);
  if (solution === null)
    return { why: 'the effects cannot be told from each other, or nothing is left to vary' };
  const residual = solution.squares / (method === 'REML' ? system.n - system.fixedCount : system.n);
  const random = system.width - 1 - system.fixedCount;
  const placeOf = (factor: number) => system.factors.indexOf(factor);
  const size = fixed.length;
  const covariance = new Float64Array(size * size);
  for (let j = 0; j < size; j++) {
    const unit = new Float64Array(system.width - 1);
    unit[random + j] = 1;
    const column = backward(solution.lower, system.width, forward(solution.lower, system.width, unit));
    for (let i = 0; i < size; i++) covariance[i * size + j] = residual * column[random + i];
  }
  return {
    fixed: fixed.map((_, j) => ({
      estimate: solution.solved[random + j],
      se: Math.sqrt(covariance[j * size + j]),
    })),
    covariance,
    variances: groups.map((_, factor) => residual * solution.theta[placeOf(factor)] ** 2),
    residual,
    logLikelihood: -mixedDeviance(system, solution, method) / 2,
    n: system.n,
    intercepts: groups.map((_, factor) => {
      const place = placeOf(factor);
      return solution.spherical[place].map((value) => value * solution.theta[place]);
    }),
    predict: (factor, level, values) =>
      prediction(system, solution, residual, placeOf(factor), level, values),
  };
}

function prediction(
  system: MixedSystem,
  solution: MixedSolution,
  residual: number,
  place: number,
  level: number,
  values: readonly number[],
): MixedEstimate {
  const { width, fixedCount, levels, across } = system;
  const { theta, diagonal, scale, lower, solved, spherical } = solution;
  const random = width - 1 - fixedCount;
  const weights = new Float64Array(width - 1);
  values.forEach((value, j) => {
    weights[random + j] = value;
  });
  let own = 0;
  if (place === 0) {
    // The eliminated factor enters by itself and through what it takes from the dense part.
    own = (theta[0] * theta[0]) / diagonal[level];
    for (let a = 0; a < width - 1; a++)
      weights[a] -= (theta[0] * theta[0] * across[level * width + a] * scale[a]) / diagonal[level];
  } else {
    const start = levels.slice(1, place).reduce((sum, count) => sum + count, 0);
    weights[start + level] = theta[place];
  }
  const half = forward(lower, width, weights);
  const spread = own + half.reduce((sum, value) => sum + value * value, 0);
  const estimate =
    values.reduce((sum, value, j) => sum + value * solved[random + j], 0) +
    theta[place] * spherical[place][level];
  return { estimate, se: Math.sqrt(residual * spread) };
}

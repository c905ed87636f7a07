import type { Unavailable } from '../foundation/unavailable.ts';

export interface PooledShares {
  /** How alike the groups are: as many records as the common shares count for in each. Infinity where they do not differ. */
  readonly concentration: number;
  /** Shares that the groups vary about. */
  readonly common: readonly number[];
  /** Expected share of each kind in each group, given its counts: group by kind. */
  readonly shares: readonly (readonly number[])[];
}

/** Beyond so many records the common shares are all that counts. */
const ALIKE = 1e5;
const ROUNDS = 20_000;

/**
 * Shares of kinds in many small groups, each drawn towards what they have in common: the Dirichlet-multinomial
 * distribution by maximum likelihood (Mosimann 1962, Biometrika 49:65; fixed point of Minka 2000, Estimating a
 * Dirichlet distribution, eq. 55), and the expected shares given it, (count + parameter) / (n + concentration).
 *
 * @param counts group by kind, whole numbers; each kind must occur.
 */
export function pooledShares(counts: readonly (readonly number[])[]): PooledShares | Unavailable {
  const kinds = counts[0]?.length ?? 0;
  const groups = counts.map((line) => line.reduce((sum, count) => sum + count, 0));
  const all = groups.reduce((sum, n) => sum + n, 0);
  if (groups.filter((n) => n > 0).length < 3) return { why: 'pooling needs three groups with records' };
  const totals = Array.from({ length: kinds }, (_, kind) =>
    counts.reduce((sum, line) => sum + line[kind], 0),
  );
  if (kinds < 2 || totals.includes(0)) return { why: 'pooling needs two kinds that occur' };
  if (!varies(counts, totals, all)) return alike(counts, totals, all);
  let parameters = totals.map((total) => (total / all) * Math.max(1, all / groups.length));
  for (let round = 0; round < ROUNDS; round++) {
    const sum = parameters.reduce((total, value) => total + value, 0);
    if (sum > ALIKE) return alike(counts, totals, all);
    const below = groups.reduce((total, n) => total + harmonic(sum, n), 0);
    const next = parameters.map(
      (value, kind) =>
        (value * counts.reduce((total, line) => total + harmonic(value, line[kind]), 0)) / below,
    );
    const moved = next.reduce(
      (most, value, kind) => Math.max(most, Math.abs(value / parameters[kind] - 1)),
      0,
    );
    parameters = next;
    if (moved < 1e-11) break;
  }
  const concentration = parameters.reduce((total, value) => total + value, 0);
  return {
    concentration,
    common: parameters.map((value) => value / concentration),
    shares: counts.map((line, group) =>
      line.map((count, kind) => (count + parameters[kind]) / (groups[group] + concentration)),
    ),
  };
}

/**
 * Whether groups vary more than chance makes groups of one set of shares vary: slope of the likelihood where they do
 * not (Tarone 1979, Biometrika 66:585; for kinds, Paul, Liang & Self 1989, Biometrics 45:231; both from memory).
 */
function varies(counts: readonly (readonly number[])[], totals: readonly number[], all: number): boolean {
  const slope = counts.reduce((sum, line) => {
    const n = line.reduce((total, count) => total + count, 0);
    const pairs = line.reduce((total, count, kind) => total + (count * (count - 1) * all) / totals[kind], 0);
    return sum + pairs - n * (n - 1);
  }, 0);
  return slope > 0;
}

/** Groups that vary no more than chance would make them have one set of shares. */
function alike(counts: readonly (readonly number[])[], totals: readonly number[], all: number): PooledShares {
  const common = totals.map((total) => total / all);
  return { concentration: Infinity, common, shares: counts.map(() => common) };
}

/** Digamma(start + count) less digamma(start), as the sum that it is for whole counts. */
function harmonic(start: number, count: number): number {
  let sum = 0;
  for (let i = 0; i < count; i++) sum += 1 / (start + i);
  return sum;
}

import { normalQuantileUpper } from '../foundation/distributions.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

export interface UnseenChance {
  /** Chance that the next record is of a kind not met so far. */
  readonly chance: number;
  /** Upper limit of it at the stated confidence. */
  readonly high: number;
  readonly kinds: number;
  readonly singletons: number;
  readonly n: number;
}

/**
 * The chance that one more record is of an unseen kind: the share of records whose kind was met only
 * once (Good 1953, Biometrika 40:237, after Turing), with the one-sided normal limit of Esty 1983, Ann.
 * Stat. 11:905: n1/n + z sqrt(n1 (1 - n1/n) + 2 n2) / n. With no singleton the estimate is 0 and the limit
 * rests on the pairs alone; it says nothing about kinds that the sampling could not reach.
 *
 * @param counts records of each kind; kinds without any are passed over.
 */
export function chanceOfUnseen(counts: readonly number[], confidence = 0.95): UnseenChance | Unavailable {
  const seen = counts.filter((count) => count > 0);
  const n = seen.reduce((sum, count) => sum + count, 0);
  if (n < 2) return { why: `needs 2 records of known kind, not ${n}` };
  const singletons = seen.filter((count) => count === 1).length;
  const pairs = seen.filter((count) => count === 2).length;
  const chance = singletons / n;
  const spread = Math.sqrt(singletons * (1 - chance) + 2 * pairs) / n;
  const high = Math.min(1, chance + normalQuantileUpper(1 - confidence) * spread);
  return { chance, high, kinds: seen.length, singletons, n };
}

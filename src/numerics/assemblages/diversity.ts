import gammaln from '@stdlib/math-base-special-gammaln';
import { exp, ln } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

export interface Diversity {
  readonly n: number;
  /** Kinds seen. */
  readonly richness: number;
  /** Shannon's entropy in natural units. */
  readonly shannon: number;
  /** Simpson's 1 - sum p^2: chance that two draws, with replacement, are of different kinds. */
  readonly simpson: number;
  /** Pielou's evenness, Shannon over its largest value; unavailable for a single kind. */
  readonly evenness: number | Unavailable;
  /** Kinds that may exist, unseen ones included. */
  readonly chao1: number;
}

/**
 * How many kinds an assemblage holds and how evenly (Shannon 1948; Simpson 1949, Nature 163:688;
 * Pielou 1966, J. Theor. Biol. 13:131; Chao 1984, Scand. J. Stat. 11:265, in its bias-corrected form).
 *
 * @param counts items of each kind; kinds with none are allowed.
 */
export function diversity(counts: ArrayLike<number>): Diversity | Unavailable {
  const present = Array.from(counts).filter((count) => count > 0);
  const n = present.reduce((sum, count) => sum + count, 0);
  if (n === 0) return { why: 'no item to count' };
  let shannon = 0;
  let squares = 0;
  let once = 0;
  let twice = 0;
  for (const count of present) {
    const share = count / n;
    shannon -= share * ln(share);
    squares += share * share;
    if (count === 1) once++;
    if (count === 2) twice++;
  }
  const richness = present.length;
  return {
    n,
    richness,
    shannon: Math.max(0, shannon),
    simpson: 1 - squares,
    evenness: richness === 1 ? { why: 'evenness needs two kinds' } : shannon / ln(richness),
    chao1: richness + (once * (once - 1)) / (2 * (twice + 1)),
  };
}

/**
 * Kinds expected in a random draw of `size` items from the assemblage, so that large and small ones
 * can be compared (Hurlbert 1971, Ecology 52:577).
 */
export function rarefiedRichness(counts: ArrayLike<number>, size: number): number | Unavailable {
  const present = Array.from(counts).filter((count) => count > 0);
  const n = present.reduce((sum, count) => sum + count, 0);
  if (size > n) return { why: `a draw of ${size} cannot be made from ${n} items` };
  const logDraws = logChoose(n, size);
  return present.reduce(
    (sum, count) => sum + (n - count < size ? 1 : 1 - exp(logChoose(n - count, size) - logDraws)),
    0,
  );
}

/** Logarithm of the number of ways to choose k of n. */
export function logChoose(n: number, k: number): number {
  return gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1);
}

import type { Random } from '../foundation/random.ts';
import { drawsWithinReach } from './within-reach.ts';

export interface PermutationTest {
  readonly observed: number;
  readonly p: number;
  readonly method: 'exact' | 'resampled';
  /** Relabellings tried: all of them when exact. */
  readonly relabellings: number;
}

export interface PermutationOptions {
  readonly random: Random;
  /** Random relabellings when all cannot be tried, default 9999; fewer of very many blocks (`drawsWithinReach`). */
  readonly relabellings?: number;
  /** All relabellings are tried when there are no more than this many, default 300,000. */
  readonly exactLimit?: number;
}

/**
 * Could chance alone have dealt the labels so that the statistic is as large? The label of a block (an
 * item with all its fragments) moves as one, which keeps dependent fragments together. The statistic
 * must grow with the effect; for a two-sided question give it an absolute value.
 * p is exact over all relabellings, or (b + 1) / (m + 1) over m random ones, never 0
 * (Phipson & Smyth 2010, Stat. Appl. Genet. Mol. Biol. 9:39).
 *
 * @param labels label 0 … k-1 of each block.
 * @param statistic computes the statistic from the labels of the blocks; must not keep its argument.
 */
export function permutationTest(
  labels: ArrayLike<number>,
  statistic: (labels: Int32Array) => number,
  { random, relabellings = 9999, exactLimit = 300_000 }: PermutationOptions,
): PermutationTest {
  const dealt = Int32Array.from(labels);
  const observed = statistic(dealt);
  // Relabellings that should tie with the observed one may differ in the last bits.
  const threshold = observed - 1e-9 * Math.max(1, Math.abs(observed));
  const count = countRelabellings(dealt);
  if (count <= exactLimit) {
    const current = dealt.slice().sort();
    let reached = 0;
    let tried = 0;
    do {
      tried++;
      if (statistic(current) >= threshold) reached++;
    } while (nextRelabelling(current));
    return { observed, p: reached / tried, method: 'exact', relabellings: tried };
  }
  const draws = drawsWithinReach(relabellings, dealt.length);
  let reached = 0;
  for (let i = 0; i < draws; i++) {
    shuffle(dealt, random);
    if (statistic(dealt) >= threshold) reached++;
  }
  return { observed, p: (reached + 1) / (draws + 1), method: 'resampled', relabellings: draws };
}

/** Fisher-Yates shuffle in place (Knuth 1997, The Art of Computer Programming 2, algorithm 3.4.2P). */
export function shuffle(values: Int32Array, random: Random): void {
  for (let last = values.length - 1; last > 0; last--) {
    const other = random.integer(last + 1);
    const kept = values[last];
    values[last] = values[other];
    values[other] = kept;
  }
}

/** Number of different ways to deal these labels: a multinomial coefficient, Infinity when huge. */
export function countRelabellings(labels: Int32Array): number {
  const sizes = new Map<number, number>();
  let count = 1;
  let dealt = 0;
  for (const label of labels) {
    const size = (sizes.get(label) ?? 0) + 1;
    sizes.set(label, size);
    dealt++;
    // The running value is a multinomial coefficient after each step, so the quotient is whole.
    count = (count * dealt) / size;
    if (count > 1e15) return Infinity;
  }
  return Math.round(count);
}

/** Next arrangement in lexicographic order, in place; false after the last (Knuth, algorithm 7.2.1.2L). */
export function nextRelabelling(labels: Int32Array): boolean {
  let head = labels.length - 2;
  while (head >= 0 && labels[head] >= labels[head + 1]) head--;
  if (head < 0) return false;
  let next = labels.length - 1;
  while (labels[next] <= labels[head]) next--;
  const kept = labels[head];
  labels[head] = labels[next];
  labels[next] = kept;
  labels.subarray(head + 1).reverse();
  return true;
}

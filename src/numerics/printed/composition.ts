import { ln } from '../foundation/elementary.ts';
import { greatest, least } from '../foundation/lists.ts';
import { exactly, minus, over, type Range, size, square, times, total } from './range.ts';

/**
 * Likeness and diversity from printed percentages, each known only to its print: every value that the true
 * shares allow lies within the range returned.
 */

/** 200 less the summed differences of percentages (Robinson 1951), from shares of one in the same order. */
export function brainerdRobinsonRange(a: readonly Range[], b: readonly Range[]): Range {
  const apart = total(a.map((share, kind) => size(minus(share, b[kind]))));
  return minus(exactly(200), times(exactly(100), apart));
}

/** Simpson's 1 - sum p^2. */
export function simpsonRange(shares: readonly Range[]): Range {
  return minus(exactly(1), total(shares.map((share) => square(within01(share)))));
}

/** Shannon's entropy in natural units; each term peaks at a share of 1/e. */
export function shannonRange(shares: readonly Range[]): Range {
  return total(
    shares.map((share) => {
      const { low, high } = within01(share);
      const ends = [term(low), term(high)];
      const peak = low <= PEAK && high >= PEAK ? [term(PEAK)] : [];
      return { low: least(ends), high: Math.max(greatest(ends), greatest(peak)) };
    }),
  );
}

/** Entropy over the logarithm of the number of kinds seen. */
export function evennessRange(shares: readonly Range[], kinds: number): Range {
  return over(shannonRange(shares), exactly(ln(kinds)));
}

const PEAK = 1 / Math.E;

function term(share: number): number {
  return share <= 0 ? 0 : -share * ln(share);
}

function within01({ low, high }: Range): Range {
  return { low: Math.min(1, Math.max(0, low)), high: Math.min(1, Math.max(0, high)) };
}

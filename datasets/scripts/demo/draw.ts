import type { Random } from '../../../src/numerics/foundation/random.ts';

/** About normal with mean 0 and standard deviation 1: the sum of twelve uniforms, exact on every machine. */
export function bell(random: Random): number {
  let sum = -6;
  for (let i = 0; i < 12; i++) sum += random.next();
  return sum;
}

/** A positive value about `typical`, as likely to be a given ratio above it as below it. */
export function around(random: Random, typical: number, spread: number): number {
  const step = spread * bell(random);
  return step >= 0 ? typical * (1 + step) : typical / (1 - step);
}

export function chance(random: Random, share: number): boolean {
  return random.next() < share;
}

/** One of several values by their shares, which sum to 1. */
export function byShare<T>(random: Random, shares: readonly (readonly [T, number])[]): T {
  let left = random.next();
  for (const [value, share] of shares) {
    left -= share;
    if (left < 0) return value;
  }
  return shares[shares.length - 1]![0];
}

/** The values laid out in their exact shares and shuffled, so that small assemblages keep their mixture. */
export function dealt<T>(random: Random, shares: readonly (readonly [T, number])[], count: number): T[] {
  const hand: T[] = [];
  let owed = 0;
  for (const [value, share] of shares) {
    owed += share * count;
    while (hand.length < Math.round(owed)) hand.push(value);
  }
  return shuffled(random, hand);
}

export function shuffled<T>(random: Random, values: readonly T[]): T[] {
  const deck = [...values];
  for (let i = deck.length - 1; i > 0; i--) {
    const j = random.integer(i + 1);
    [deck[i], deck[j]] = [deck[j]!, deck[i]!];
  }
  return deck;
}

/** `count` different positions out of 0 … size - 1, ascending. */
export function picked(random: Random, size: number, count: number): number[] {
  const positions = Array.from({ length: size }, (_, i) => i);
  return shuffled(random, positions)
    .slice(0, count)
    .sort((a, b) => a - b);
}

import { ln } from '../foundation/elementary.ts';
import type { Random } from '../foundation/random.ts';

export interface GaussianPart {
  readonly share: number;
  readonly mean: number;
  readonly sd: number;
}

/** Value between two neighbouring parts at which membership passes from one to the other. */
export function crossing(first: GaussianPart, second: GaussianPart): number {
  const log = ({ share, mean, sd }: GaussianPart, x: number) =>
    ln(share) - ln(sd) - ((x - mean) * (x - mean)) / (2 * sd * sd);
  let low = first.mean;
  let high = second.mean;
  for (let i = 0; i < 60 && low < high; i++) {
    const middle = (low + high) / 2;
    if (log(first, middle) > log(second, middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** A sample of n values from a mixture. */
export function sampleMixture(parts: readonly GaussianPart[], n: number, random: Random): Float64Array {
  return Float64Array.from({ length: n }, () => {
    let pick = random.next();
    const part =
      parts.find(({ share }) => {
        pick -= share;
        return pick < 0;
      }) ?? parts[parts.length - 1];
    return part.mean + part.sd * standardNormal(random);
  });
}

/** One draw from the standard normal distribution, by Box & Muller's method in Marsaglia's polar form. */
export function standardNormal(random: Random): number {
  for (;;) {
    const a = 2 * random.next() - 1;
    const b = 2 * random.next() - 1;
    const square = a * a + b * b;
    if (square > 0 && square < 1) return a * Math.sqrt((-2 * ln(square)) / square);
  }
}

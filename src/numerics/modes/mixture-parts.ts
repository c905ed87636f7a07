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

/**
 * The other value at which membership passes between two parts of different spread: the wider one surrounds the
 * narrower and takes over again on its far side. Null for parts of one spread, and where they never cross.
 */
export function otherCrossing(first: GaussianPart, second: GaussianPart): number | null {
  const square = 1 / (2 * second.sd * second.sd) - 1 / (2 * first.sd * first.sd);
  const linear = first.mean / (first.sd * first.sd) - second.mean / (second.sd * second.sd);
  const height = ({ share, mean, sd }: GaussianPart) => ln(share / sd) - (mean * mean) / (2 * sd * sd);
  const constant = height(first) - height(second);
  const inside = linear * linear - 4 * square * constant;
  if (Math.abs(square) * first.sd * second.sd < 1e-6 || inside < 0) return null;
  const roots = [1, -1].map((way) => (-linear + way * Math.sqrt(inside)) / (2 * square));
  const between = crossing(first, second);
  return Math.abs(roots[0] - between) > Math.abs(roots[1] - between) ? roots[0] : roots[1];
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

import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * Why samples cannot be compared at all: fewer than two of them, one too small, or no two different
 * values anywhere. Undefined when they can.
 *
 * @param least fewest values that each sample must have.
 */
export function whyNotCompared(samples: readonly ArrayLike<number>[], least = 1): Unavailable | undefined {
  if (samples.length < 2) return { why: 'a comparison needs two groups' };
  const small = samples.findIndex((sample) => sample.length < least);
  if (small >= 0) {
    const have = samples[small].length;
    return { why: `group ${small + 1} has ${have === 0 ? 'no value' : `only ${have}`}; ${least} needed` };
  }
  const first = samples[0][0];
  const equal = samples.every((sample) => Array.from(sample).every((value) => value === first));
  return equal ? { why: 'all values are equal' } : undefined;
}

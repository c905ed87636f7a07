import type { Random } from '../../numerics/foundation/random.ts';
import { type Intervals, intervalMixture } from '../../numerics/modes/interval-mixture.ts';
import { sampleMixture } from '../../numerics/modes/mixture-parts.ts';
import { type Rounded, roundLike } from '../../numerics/modes/rounded-tests.ts';
import type { Unavailable } from '../contract.ts';

/** Looser than a single fit needs: the sampling error is larger by far. */
const QUICK = 1e-6;
const SAMPLES = 199;

/**
 * Two parts against one: likelihood ratio against samples from the single part (McLachlan 1987, Appl. Stat. 36:318),
 * rounded as the readings are.
 */
export function twoAgainstOne(
  readings: Rounded,
  random: Random,
): { statistic: number; p: number } | Unavailable {
  const single = intervalMixture(readings, 1, { spread: 'equal' });
  if ('why' in single) return single;
  const statistic = ratioOf(readings);
  if (statistic === undefined) return { why: 'two parts could not be fitted' };
  let reached = 0;
  for (let i = 0; i < SAMPLES; i++) {
    const drawn = sampleMixture(single.parts, readings.low.length, random);
    const ratio = ratioOf(roundLike(drawn, readings), QUICK);
    if (ratio !== undefined && ratio >= statistic) reached++;
  }
  return { statistic, p: (reached + 1) / (SAMPLES + 1) };
}

function ratioOf(readings: Intervals, tolerance = 1e-8): number | undefined {
  const one = intervalMixture(readings, 1, { spread: 'equal', tolerance });
  const two = intervalMixture(readings, 2, { spread: 'equal', tolerance });
  return 'why' in one || 'why' in two ? undefined : 2 * (two.logLikelihood - one.logLikelihood);
}

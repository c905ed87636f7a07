import { standardDeviation } from '../../numerics/describing/moments.ts';
import { exp, ln } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { type BlockedSample, blockMedians, sharesBlocks } from '../../numerics/tests/blocked-sample.ts';
import { normalShiftOfDelta, smallestDetectableDelta } from '../../numerics/tests/equivalence.ts';
import { dunnPairs } from '../../numerics/tests/kruskal-wallis.ts';
import type { Unavailable } from '../contract.ts';
import type { AttributeSamples, PairContrast } from './found.ts';
import type { ContrastOptions } from './options.ts';
import { exactCouldTell, pairEffects } from './pair-effects.ts';
import { placeTest } from './tests.ts';

/** Draws for the intervals of all pairs together; each pair gets its part, at least LEAST_RESAMPLES. */
const ALL_RESAMPLES = 15_000;
const LEAST_RESAMPLES = 499;

/** Every pair of tested groups: which differ, by how much, which are alike, and what could have been missed. */
export function pairContrasts(
  samples: AttributeSamples,
  options: ContrastOptions,
  random: Random,
  main: number | Unavailable,
  onProgress: (share: number) => void,
): PairContrast[] {
  const points = samples.tested.map((group) => group.points);
  const places = points.flatMap((_, first) =>
    points.slice(first + 1).map((__, rest) => [first, first + 1 + rest] as const),
  );
  const dunn = dunnPairs(points.map((sample) => sample.values));
  const resamples = Math.min(
    options.resamples,
    Math.max(LEAST_RESAMPLES, Math.floor(ALL_RESAMPLES / places.length)),
  );
  return places.map(([first, second], place): PairContrast => {
    const pair = [points[first], points[second]] as const;
    const stream = random.stream(`${first} against ${second}`);
    onProgress(place / places.length);
    return {
      first,
      second,
      ...pairTest(
        pair,
        places.length === 1 ? main : null,
        'why' in dunn ? dunn : dunn[place],
        options,
        stream,
      ),
      ...pairEffects(pair, samples, options, resamples, stream),
      ...power(pair, samples, options, places.length),
    };
  });
}

function pairTest(
  pair: readonly [BlockedSample, BlockedSample],
  main: number | Unavailable | null,
  dunn: { readonly statistic: number; readonly p: number } | Unavailable,
  options: ContrastOptions,
  random: Random,
): Pick<PairContrast, 'z' | 'p' | 'method'> {
  if (main !== null) return { z: null, p: main, method: 'as the test of place' };
  if ('why' in dunn) return { z: null, p: dunn, method: 'Dunn' };
  if (!pair.some(sharesBlocks)) return { z: dunn.statistic, p: dunn.p, method: 'Dunn, normal approximation' };
  const dealt = placeTest(pair, { random, relabellings: options.relabellings });
  return 'why' in dealt
    ? { z: dunn.statistic, p: dealt, method: 'items of the pair dealt' }
    : { z: dunn.statistic, p: dealt.p, method: `ranks of the pair, ${dealt.method}` };
}

/** Items count as n, since fragments of one item tell little more than one; alpha is shared among the pairs. */
function power(
  pair: readonly [BlockedSample, BlockedSample],
  { graded, logarithmic }: AttributeSamples,
  options: ContrastOptions,
  pairs: number,
): Pick<PairContrast, 'detectableDelta' | 'detectable'> {
  const alpha = (1 - options.confidence) / pairs;
  const detectableDelta = smallestDetectableDelta(pair[0].count, pair[1].count, {
    alpha,
    power: options.power,
  });
  if (typeof detectableDelta !== 'number') {
    const why = exactCouldTell(pair, alpha)
      ? { why: 'only groups that are wholly apart would be found that surely' }
      : detectableDelta;
    return { detectableDelta: why, detectable: why };
  }
  if (graded) return { detectableDelta, detectable: { why: 'grades have an order but no distances' } };
  const scale = logarithmic ? ln : (value: number) => value;
  const [a, b] = pair.map((sample) => standardDeviation(blockMedians(sample).map(scale)));
  if (typeof a !== 'number' || typeof b !== 'number')
    return { detectableDelta, detectable: { why: 'a group has a single item' } };
  const df = [pair[0].count - 1, pair[1].count - 1];
  const sd = Math.sqrt((df[0] * a * a + df[1] * b * b) / (df[0] + df[1]));
  const shift = normalShiftOfDelta(detectableDelta) * sd;
  return { detectableDelta, detectable: logarithmic ? exp(shift) : shift };
}

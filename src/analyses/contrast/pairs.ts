import { standardDeviation } from '../../numerics/describing/moments.ts';
import { quantileSorted } from '../../numerics/describing/quantile.ts';
import { exp, ln } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { bootstrapInterval, type ResampledInterval } from '../../numerics/resampling/bootstrap.ts';
import { countRelabellings } from '../../numerics/resampling/permutation.ts';
import { drawnDelta, drawnMedian, drawnMedianDifference } from '../../numerics/resampling/resampled-ranks.ts';
import {
  type BlockedSample,
  blockMedians,
  blockMembers,
  gatherBlocks,
  sharesBlocks,
} from '../../numerics/tests/blocked-sample.ts';
import {
  equivalentMeans,
  normalShiftOfDelta,
  smallestDetectableDelta,
} from '../../numerics/tests/equivalence.ts';
import { dunnPairs } from '../../numerics/tests/kruskal-wallis.ts';
import { cliffsDelta } from '../../numerics/tests/mann-whitney.ts';
import { medianDifference } from '../../numerics/tests/pairwise-median.ts';
import { shiftLimits, tooFew } from '../../numerics/tests/shift-limits.ts';
import type { Unavailable } from '../contract.ts';
import type { AttributeSamples, Effect, PairContrast } from './found.ts';
import type { ContrastOptions } from './options.ts';
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
      ...effects(pair, samples, options, resamples, stream),
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

function effects(
  pair: readonly [BlockedSample, BlockedSample],
  { graded, attribute, logarithmic }: AttributeSamples,
  options: ContrastOptions,
  resamples: number,
  random: Random,
): Pick<PairContrast, 'delta' | 'shift' | 'ratio' | 'equivalence'> {
  const members = pair.map(blockMembers);
  const effect = (
    name: string,
    statistic: (first: Float64Array, second: Float64Array) => number | Unavailable,
    drawn: ((draws: readonly Int32Array[]) => number) | null,
  ): Effect | Unavailable => {
    const estimate = statistic(pair[0].values, pair[1].values);
    if (typeof estimate !== 'number') return estimate;
    if (!exactCouldTell(pair, 1 - options.confidence))
      return { estimate, interval: { why: tooFew(pair[0].count, pair[1].count, options.confidence) } };
    if (name === 'shift' && isExact(pair)) {
      const limits = shiftLimits(pair[0].values, pair[1].values, options.confidence);
      return { estimate, interval: 'why' in limits ? limits : { ...limits, level: options.confidence } };
    }
    const interval = bootstrapInterval(
      pair.map((sample) => sample.count),
      drawn ??
        ((choice) => {
          const value = statistic(gatherBlocks(members[0], choice[0]), gatherBlocks(members[1], choice[1]));
          return typeof value === 'number' ? value : Number.NaN;
        }),
      { random: random.stream(name), resamples, level: options.confidence },
    );
    return { estimate, interval: 'why' in interval ? interval : around(estimate, interval) };
  };
  const grades = { why: 'grades have an order but no distances' };
  const positive = pair.every((sample) => sample.values.every((value) => value > 0));
  const ratios = graded
    ? grades
    : attribute.scale !== 'ratio'
      ? { why: 'ratios need a scale with a true zero' }
      : positive
        ? null
        : { why: 'ratios need values above 0' };
  return {
    delta: effect('delta', cliffsDelta, drawnDelta(members[0], members[1])),
    shift: graded ? grades : effect('shift', medianDifference, drawnMedianDifference(members[0], members[1])),
    ratio:
      ratios ??
      (logarithmic
        ? effect('ratio', medianRatio, drawnRatio(members))
        : { why: 'given where ratios matter' }),
    equivalence:
      ratios ??
      equivalentMeans(
        blockMedians(pair[0]).map(ln),
        blockMedians(pair[1]).map(ln),
        ln(1 + options.within),
        1 - options.confidence,
      ),
  };
}

/** Most values in a group for which the limits of a shift are computed exactly. */
const MOST_EXACT = 60;

const isExact = (pair: readonly [BlockedSample, BlockedSample]) =>
  pair.every((sample) => !sharesBlocks(sample) && sample.count <= MOST_EXACT);

/** Limits that hold the estimate and have a width, or none. */
function around(estimate: number, interval: ResampledInterval): ResampledInterval | Unavailable {
  const [low, high] = [Math.min(interval.low, estimate), Math.max(interval.high, estimate)];
  return low < high
    ? { ...interval, low, high }
    : { why: 'the readings are too coarse to give limits a width' };
}

function medianRatio(first: Float64Array, second: Float64Array): number {
  return quantileSorted(first.slice().sort(), 0.5) / quantileSorted(second.slice().sort(), 0.5);
}

function drawnRatio(members: readonly (readonly Float64Array[])[]) {
  const [first, second] = members.map(drawnMedian);
  return (draws: readonly Int32Array[]) => first(draws[0]) / second(draws[1]);
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

/** Whether the exact test passes the level for groups that are wholly apart: two of all ways to deal the items. */
function exactCouldTell([first, second]: readonly [BlockedSample, BlockedSample], alpha: number): boolean {
  const labels = [first, second].flatMap(({ count }, group) => new Array<number>(count).fill(group));
  return 2 / countRelabellings(Int32Array.from(labels)) <= alpha;
}

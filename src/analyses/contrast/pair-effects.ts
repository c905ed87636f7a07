import { quantileSorted } from '../../numerics/describing/quantile.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { bootstrapInterval, type ResampledInterval } from '../../numerics/resampling/bootstrap.ts';
import { countedInterval, kindsOfBlocks } from '../../numerics/resampling/counted-bootstrap.ts';
import { MANY_THINGS } from '../../numerics/resampling/drawn-counts.ts';
import { countRelabellings } from '../../numerics/resampling/permutation.ts';
import {
  type Blocks,
  type Drawn,
  drawnDelta,
  drawnMedian,
  drawnMedianDifference,
} from '../../numerics/resampling/resampled-ranks.ts';
import {
  type BlockedSample,
  blockMedians,
  blockMembers,
  gatherBlocks,
  sharesBlocks,
} from '../../numerics/tests/blocked-sample.ts';
import { apartDeltaLimit } from '../../numerics/tests/delta-limits.ts';
import { equivalentMeans } from '../../numerics/tests/equivalence.ts';
import { cliffsDelta } from '../../numerics/tests/mann-whitney.ts';
import { medianDifference } from '../../numerics/tests/pairwise-median.ts';
import { shiftLimits, tooFew } from '../../numerics/tests/shift-limits.ts';
import type { Unavailable } from '../contract.ts';
import type { AttributeSamples, Effect, PairContrast } from './found.ts';
import type { ContrastOptions } from './options.ts';

type Limits = Pick<ResampledInterval, 'low' | 'high' | 'level'>;
type EffectName = 'delta' | 'shift' | 'ratio';

/** The effects of one pair, each with its limits: by drawing items again, or without where that can be had. */
export function pairEffects(
  pair: readonly [BlockedSample, BlockedSample],
  { graded, attribute, logarithmic }: Pick<AttributeSamples, 'graded' | 'attribute' | 'logarithmic'>,
  options: Pick<ContrastOptions, 'confidence' | 'within'>,
  resamples: number,
  random: Random,
): Pick<PairContrast, 'delta' | 'shift' | 'ratio' | 'equivalence'> {
  const members = pair.map(blockMembers);
  const many = pair[0].count + pair[1].count > MANY_THINGS;
  const kinds = many ? members.map(kindsOfBlocks) : null;
  const held = kinds === null ? members : kinds.map((own) => own.kinds);
  const how = many ? 'times' : 'blocks';
  const effect = (
    name: EffectName,
    statistic: (first: Float64Array, second: Float64Array) => number | Unavailable,
    drawn: ((draws: readonly ArrayLike<number>[]) => number) | null,
  ): Effect | Unavailable => {
    const estimate = statistic(pair[0].values, pair[1].values);
    if (typeof estimate !== 'number') return estimate;
    if (!exactCouldTell(pair, 1 - options.confidence))
      return { estimate, interval: { why: tooFew(pair[0].count, pair[1].count, options.confidence) } };
    const computed = computedLimits(name, estimate, pair, options.confidence);
    if (computed !== null) return { estimate, interval: computed };
    const settings = { random: random.stream(name), resamples, level: options.confidence };
    const plainly = (choice: readonly ArrayLike<number>[]) => {
      const value = statistic(gatherBlocks(members[0], choice[0]), gatherBlocks(members[1], choice[1]));
      return typeof value === 'number' ? value : Number.NaN;
    };
    const interval =
      kinds !== null && drawn !== null
        ? countedInterval(
            kinds.map(({ counts }) => counts),
            drawn,
            settings,
          )
        : bootstrapInterval(
            pair.map((sample) => sample.count),
            drawn ?? plainly,
            settings,
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
    delta: effect('delta', cliffsDelta, drawnDelta(held[0], held[1], how)),
    shift: graded ? grades : effect('shift', medianDifference, drawnMedianDifference(held[0], held[1], how)),
    ratio:
      ratios ??
      (logarithmic
        ? effect('ratio', medianRatio, drawnRatio(held, how))
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

/** Limits that need no drawing: of a delta of groups wholly apart, and of a shift where each item has one value. */
function computedLimits(
  name: EffectName,
  estimate: number,
  pair: readonly [BlockedSample, BlockedSample],
  level: number,
): Limits | Unavailable | null {
  if (name === 'delta' && Math.abs(estimate) === 1) {
    const nearest = apartDeltaLimit(pair[0].count, pair[1].count, level);
    return estimate > 0 ? { low: nearest, high: 1, level } : { low: -1, high: -nearest, level };
  }
  if (name !== 'shift' || !isExact(pair)) return null;
  const limits = shiftLimits(pair[0].values, pair[1].values, level);
  return 'why' in limits ? limits : { ...limits, level };
}

/** Limits that hold the estimate and have a width, or none. */
function around<Ends extends Limits>(estimate: number, interval: Ends): Ends | Unavailable {
  const [low, high] = [Math.min(interval.low, estimate), Math.max(interval.high, estimate)];
  return low < high
    ? { ...interval, low, high }
    : { why: 'the readings are too coarse to give limits a width' };
}

function medianRatio(first: Float64Array, second: Float64Array): number {
  return quantileSorted(first.slice().sort(), 0.5) / quantileSorted(second.slice().sort(), 0.5);
}

function drawnRatio(held: readonly Blocks[], how: Drawn) {
  const [first, second] = held.map((own) => drawnMedian(own, how));
  return (draws: readonly ArrayLike<number>[]) => first(draws[0]) / second(draws[1]);
}

/** Whether the exact test passes the level for groups that are wholly apart: two of all ways to deal the items. */
export function exactCouldTell(
  [first, second]: readonly [BlockedSample, BlockedSample],
  alpha: number,
): boolean {
  const labels = [first, second].flatMap(({ count }, group) => new Array<number>(count).fill(group));
  return 2 / countRelabellings(Int32Array.from(labels)) <= alpha;
}

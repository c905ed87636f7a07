import { countBehind } from '../../fragments/behind.ts';
import type { Grouping } from '../../fragments/groups.ts';
import type { Column } from '../../fragments/table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import {
  bootstrapInterval,
  expandedLevel,
  type ResampledInterval,
} from '../../numerics/resampling/bootstrap.ts';
import { countedInterval, kindsOfBlocks } from '../../numerics/resampling/counted-bootstrap.ts';
import { MANY_THINGS } from '../../numerics/resampling/drawn-counts.ts';
import { countRelabellings } from '../../numerics/resampling/permutation.ts';
import { drawnMedian } from '../../numerics/resampling/resampled-ranks.ts';
import {
  type BlockedSample,
  blockMedians,
  blockMembers,
  sharesBlocks,
} from '../../numerics/tests/blocked-sample.ts';
import { epsilonSquaredLimits } from '../../numerics/tests/epsilon-limits.ts';
import { kruskalWallis } from '../../numerics/tests/kruskal-wallis.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { isMentioned } from '../shared/mentioned.ts';
import { pooledMeans } from '../shared/pooled/means.ts';
import { toldAt } from '../verdicts.ts';
import { askedOtherwise } from './asked-otherwise.ts';
import type {
  AttributeContrast,
  AttributeSamples,
  ContrastGroup,
  Effect,
  FurtherTest,
  PairContrast,
  TestAnswer,
} from './found.ts';
import type { ContrastOptions } from './options.ts';
import { pairContrasts } from './pairs.ts';
import { attributeSamples } from './samples.ts';
import { furtherTests, placeTest } from './tests.ts';
import { trendOf } from './trend.ts';
import type { Trend } from './trend-found.ts';

/** One attribute before its p values are set among those of the others. */
export interface Computed
  extends Omit<
    AttributeContrast,
    'pairs' | 'further' | 'pAdjusted' | 'told' | 'hangsOn' | 'missingShifts' | 'guard'
  > {
  readonly pairs: readonly PairContrast[];
  readonly further: readonly Pick<FurtherTest, 'question' | 'name' | 'answer'>[];
}

export function contrastAttribute(
  input: AnalysisInput,
  column: Column,
  grouping: Grouping,
  options: ContrastOptions,
  onProgress: (share: number) => void,
): Computed {
  const samples = attributeSamples(
    input.records,
    column,
    grouping,
    (rows) => countBehind(input.fragments, input.records, input.unit, rows).fragments,
  );
  const random = input.random.stream(samples.attribute.id);
  const points = samples.tested.map((group) => group.points);
  const settings = { random, relabellings: options.relabellings };
  const place = testedOr(samples, () => placeTest(points, settings));
  const further = 'why' in place ? [] : furtherTests(samples, options.means, settings);
  onProgress(0.3);
  return {
    samples,
    medians: samples.tested.map((group) =>
      medianInterval(group, options, random.stream(`median ${group.label}`)),
    ),
    place,
    further,
    pooled: samples.graded
      ? null
      : pooledMeans(
          samples.groups.map(({ label, rows, points }) => ({
            label,
            values: points.values,
            items: rows.map((row) => input.records.item[row]),
          })),
          samples.logarithmic,
        ),
    epsilonSquared: epsilon(points, options),
    pairs:
      'why' in place
        ? []
        : pairContrasts(samples, options, random.stream('pairs'), place.p, (share) =>
            onProgress(0.3 + 0.6 * share),
          ),
    otherwise: 'why' in place ? [] : askedOtherwise(samples, options, random.stream('otherwise')),
    trend: options.trend ? trendFor(input, samples, options, random.stream('trend')) : null,
    shared: points.some(sharesBlocks),
    tied: tieShare(samples),
    leastP: leastP(samples, options.confidence),
  };
}

/** Share of values that equal another one, where it is mentioned. */
function tieShare({ tested }: AttributeSamples): number | null {
  const values = tested.flatMap((group) => Array.from(group.points.values));
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const tied = values.filter((value) => (counts.get(value) ?? 0) > 1).length;
  const share = values.length === 0 ? 0 : tied / values.length;
  return isMentioned(share, 'ties') ? share : null;
}

/** Two of all ways to deal the items are as extreme as groups wholly apart: no p can be below that. */
function leastP({ tested }: AttributeSamples, confidence: number): number | null {
  if (tested.length !== 2) return null;
  const labels = tested.flatMap(({ points }, group) => new Array<number>(points.count).fill(group));
  const least = 2 / countRelabellings(Int32Array.from(labels));
  return toldAt(least, confidence) === 'told apart' ? null : least;
}

function testedOr(samples: AttributeSamples, test: () => TestAnswer | Unavailable): TestAnswer | Unavailable {
  if (samples.tested.length >= 2) return test();
  const [only] = samples.groups;
  if (samples.groups.length < 2)
    return { why: only === undefined ? 'no group has a value' : `only "${only.label}" has a value` };
  const single = samples.groups
    .filter((group) => !samples.tested.includes(group))
    .map((group) => `"${group.label}"`);
  return {
    why: `fewer than two groups have values of two items or more (single ones: ${single.join(', ')})`,
  };
}

function medianInterval(
  { points }: ContrastGroup,
  options: ContrastOptions,
  random: Random,
): ResampledInterval | Unavailable {
  const settings = {
    random,
    resamples: options.resamples,
    level: expandedLevel(options.confidence, points.count),
  };
  const members = blockMembers(points);
  if (points.count > MANY_THINGS) {
    const { kinds, counts } = kindsOfBlocks(members);
    const median = drawnMedian(kinds, 'times');
    return countedInterval([counts], ([times]) => median(times), settings);
  }
  const median = drawnMedian(members);
  return bootstrapInterval([points.count], ([choice]) => median(choice), settings);
}

/** The effect of all readings; its limits by one value an item, which alone are independent. */
function epsilon(points: readonly BlockedSample[], options: ContrastOptions): Effect | Unavailable {
  if (points.length < 3) return { why: 'given from three groups on; two have Cliff’s delta' };
  const observed = kruskalWallis(points.map((sample) => sample.values));
  if ('why' in observed) return observed;
  const { epsilonSquared } = observed;
  const limits = epsilonSquaredLimits(points.map(blockMedians), options.confidence);
  return {
    estimate: epsilonSquared,
    interval:
      'why' in limits
        ? limits
        : {
            low: Math.min(limits.low, epsilonSquared),
            high: Math.max(limits.high, epsilonSquared),
            level: options.confidence,
          },
  };
}

function trendFor(
  input: AnalysisInput,
  samples: AttributeSamples,
  options: ContrastOptions,
  random: Random,
): Trend | Unavailable {
  const dates = input.records.columns.get('date');
  if (dates === undefined || dates.kind !== 'numeric') return { why: 'no source records dates' };
  if (samples.tested.length < 2) return { why: 'a trend needs two groups with values' };
  return trendOf(samples, input.records, dates, options, random);
}

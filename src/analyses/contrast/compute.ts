import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { type Grouping, groupRows } from '../../fragments/groups.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import type { Column } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import {
  bootstrapInterval,
  expandedLevel,
  type ResampledInterval,
} from '../../numerics/resampling/bootstrap.ts';
import { drawnEpsilonSquared, drawnMedian } from '../../numerics/resampling/resampled-ranks.ts';
import { type BlockedSample, blockMembers, sharesBlocks } from '../../numerics/tests/blocked-sample.ts';
import { kruskalWallis } from '../../numerics/tests/kruskal-wallis.ts';
import type { FindingsWithTables } from '../before-answers.ts';
import type { AnalysisInput, SetAside, Unavailable } from '../contract.ts';
import type { ContrastOptions } from './options.ts';
import { type Effect, type PairContrast, pairContrasts } from './pairs.ts';
import {
  type AttributeSamples,
  attributeSamples,
  type ContrastGroup,
  canBeContrasted,
  hasIntervals,
} from './samples.ts';
import { contrastTables } from './tables.ts';
import { furtherTests, placeTest, type Question, type TestAnswer } from './tests.ts';
import { contrastTogether, type Together } from './together.ts';
import { type Trend, trendOf } from './trend.ts';

/** One attribute across the groups. */
export interface AttributeContrast {
  readonly samples: AttributeSamples;
  /** Median of each tested group with its interval. */
  readonly medians: readonly (ResampledInterval | Unavailable)[];
  readonly place: TestAnswer | Unavailable;
  readonly further: readonly (
    | TestAnswer
    | (Unavailable & { readonly question: Question; readonly name: string })
  )[];
  /** Share of the variance of ranks between the groups; given from three groups on. */
  readonly epsilonSquared: Effect | Unavailable;
  readonly pairs: readonly PairContrast[];
  /** The test of place with every reading at one end; null where no reading is a range. */
  readonly sensitivity: readonly { readonly at: string; readonly answer: TestAnswer | Unavailable }[] | null;
  readonly trend: Trend | Unavailable | null;
  /** Whether some item has several fragments here, so that whole items are dealt and drawn. */
  readonly shared: boolean;
}

export interface ContrastFound extends FindingsWithTables {
  readonly options: ContrastOptions;
  readonly unit: 'fragment' | 'item';
  readonly by: string;
  readonly attributes: readonly AttributeContrast[];
  readonly together: Together | Unavailable | null;
  /** Labels of attributes of kinds, compared only together with the others. */
  readonly kinds: readonly string[];
}

/**
 * Do these groups differ, by how much, and what could have been missed? Numbers and grades one by one
 * (place, spread, shape, every pair, ends of ranges, trend), several attributes together as well.
 *
 * @throws InputError for kinds alone (that is a crosstab), for text, and when fewer than two groups
 * have values.
 */
export function computeContrast(input: AnalysisInput, options: ContrastOptions): ContrastFound {
  const { records, register, unit } = input;
  const columns = [...new Set(options.of)].map((id) =>
    contrastable(requireColumn(records, id, register), id),
  );
  const single = columns.filter(canBeContrasted);
  if (single.length === 0 && columns.length === 1) {
    const { id, label } = columns[0].attribute;
    throw new InputError(
      `"${label}" (${id}) is an attribute of kinds, whose counts a contrast of numbers cannot compare`,
      { path: 'of' },
      `ask for a crosstab with "rows": "${options.by}" and "columns": "${id}"`,
    );
  }
  const grouping = groupRows(records, [options.by], register);
  const by = register.attributes.get(options.by)?.label ?? options.by;
  const steps = single.length + (columns.length > 1 ? 1 : 0);
  const attributes = single.map((column, place) =>
    contrastAttribute(input, column, grouping, options, (share) =>
      input.onProgress?.((place + share) / steps, `contrasting ${column.attribute.label}`),
    ),
  );
  refuseWithoutGroups(attributes, by);
  const compared = {
    options,
    unit,
    by,
    attributes,
    together: columns.length > 1 ? contrastTogether(input, options, input.random.stream('together')) : null,
    kinds: columns.filter((column) => !canBeContrasted(column)).map((column) => column.attribute.label),
  };
  input.onProgress?.(1, 'contrasted');
  const used = new Set(attributes.flatMap(({ samples }) => samples.tested.flatMap((group) => group.rows)));
  const rows = attributes.length > 0 ? [...used] : grouping.groups.flatMap((group) => group.rows);
  return {
    ...compared,
    n: {
      ...countBehind(input.fragments, records, unit, rows),
      setAside: setAside(input, grouping, by, attributes),
    },
    tables: contrastTables(input, compared),
  };
}

/** One attribute that only one group records leaves the others their answer; where all are so there is none. */
function refuseWithoutGroups(attributes: readonly AttributeContrast[], by: string): void {
  if (attributes.length === 0 || attributes.some(({ samples }) => samples.groups.length >= 2)) return;
  const [{ attribute, groups }] = attributes.map(({ samples }) => samples);
  const has = groups.length === 0 ? 'no group of' : `only one group ("${groups[0].label}") of`;
  throw new InputError(
    `${has} "${by}" has a value of "${attribute.label}" (${attribute.id}), and a contrast needs two`,
    {},
    'choose another grouping or attribute, or select more fragments',
  );
}

function contrastable(column: Column, id: string): Column {
  if (column.kind !== 'text') return column;
  throw new InputError(
    `"${column.attribute.label}" (${id}) is free text, which cannot be contrasted`,
    { path: 'of' },
    'name attributes that are numbers or grades',
  );
}

function contrastAttribute(
  input: AnalysisInput,
  column: Column,
  grouping: Grouping,
  options: ContrastOptions,
  onProgress: (share: number) => void,
): AttributeContrast {
  const samples = attributeSamples(input.records, column, grouping);
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
    epsilonSquared: epsilon(points, options, random.stream('epsilon squared')),
    pairs:
      'why' in place
        ? []
        : pairContrasts(samples, options, random.stream('pairs'), place.p, (share) =>
            onProgress(0.3 + 0.6 * share),
          ),
    sensitivity: hasIntervals(samples) ? sensitivity(samples.tested, settings) : null,
    trend: options.trend ? trendFor(input, samples, options, random.stream('trend')) : null,
    shared: points.some(sharesBlocks),
  };
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
  const median = drawnMedian(blockMembers(points));
  return bootstrapInterval([points.count], ([choice]) => median(choice), {
    random,
    resamples: options.resamples,
    level: expandedLevel(options.confidence, points.count),
  });
}

function epsilon(
  points: readonly BlockedSample[],
  options: ContrastOptions,
  random: Random,
): Effect | Unavailable {
  if (points.length < 3) return { why: 'given from three groups on; two have Cliff’s delta' };
  const observed = kruskalWallis(points.map((sample) => sample.values));
  if ('why' in observed) return observed;
  const interval = bootstrapInterval(
    points.map((sample) => sample.count),
    drawnEpsilonSquared(points.map(blockMembers)),
    { random, resamples: options.resamples, level: options.confidence },
  );
  return { estimate: observed.epsilonSquared, interval };
}

/** The test of place at the ends of the readings; for two groups also with the ends drawn together and apart. */
function sensitivity(tested: readonly ContrastGroup[], settings: { random: Random; relabellings: number }) {
  const ways: { at: string; samples: BlockedSample[] }[] = [
    { at: 'all readings at their low ends', samples: tested.map((group) => group.low) },
    { at: 'all readings at their high ends', samples: tested.map((group) => group.high) },
  ];
  if (tested.length === 2) {
    const [first, second] = tested;
    ways.push(
      { at: `${first.label} at low ends, ${second.label} at high ends`, samples: [first.low, second.high] },
      { at: `${first.label} at high ends, ${second.label} at low ends`, samples: [first.high, second.low] },
    );
  }
  return ways.map(({ at, samples }) => ({
    at,
    answer: placeTest(samples, { ...settings, random: settings.random.stream(at) }),
  }));
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

function setAside(
  input: AnalysisInput,
  grouping: Grouping,
  by: string,
  attributes: readonly AttributeContrast[],
): SetAside[] {
  const behind = (rows: readonly number[]) =>
    countBehind(input.fragments, input.records, input.unit, rows).fragments;
  const asides = grouping.ungrouped.map(({ rows }) => ({
    reason: `${by} not recorded`,
    fragments: behind(rows),
  }));
  for (const { samples } of attributes) {
    const { label } = samples.attribute;
    const lacking = new Set(samples.groups.flatMap((group) => group.rows));
    const without = grouping.groups.flatMap((group) => group.rows).filter((row) => !lacking.has(row));
    if (without.length > 0) asides.push({ reason: `${label} without a value`, fragments: behind(without) });
    const single = samples.groups.filter((group) => !samples.tested.includes(group));
    for (const group of single) {
      asides.push({
        reason: `${label}: group "${group.label}" has a single item and is shown but not tested`,
        fragments: behind(group.rows),
      });
    }
  }
  return asides;
}

/** Lower quartile, median, upper quartile (type 7) of a group. */
export function quartilesOf({ points }: ContrastGroup): readonly [q1: number, median: number, q3: number] {
  const sorted = sortedValues(points.values);
  return [quantileSorted(sorted, 0.25), quantileSorted(sorted, 0.5), quantileSorted(sorted, 0.75)];
}

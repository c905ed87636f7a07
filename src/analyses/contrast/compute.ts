import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { type Grouping, groupRows } from '../../fragments/groups.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import type { Column } from '../../fragments/table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import {
  bootstrapInterval,
  expandedLevel,
  type ResampledInterval,
} from '../../numerics/resampling/bootstrap.ts';
import { countRelabellings } from '../../numerics/resampling/permutation.ts';
import { drawnMedian } from '../../numerics/resampling/resampled-ranks.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import {
  type BlockedSample,
  blockMedians,
  blockMembers,
  sharesBlocks,
} from '../../numerics/tests/blocked-sample.ts';
import { epsilonSquaredLimits } from '../../numerics/tests/epsilon-limits.ts';
import { kruskalWallis } from '../../numerics/tests/kruskal-wallis.ts';
import type { AnalysisInput, SetAside, Unavailable } from '../contract.ts';
import { pooledMeans } from '../pooled.ts';
import { toldAt } from '../verdicts.ts';
import { askedOtherwise } from './asked-otherwise.ts';
import type {
  AskedOtherwise,
  AttributeContrast,
  AttributeSamples,
  ContrastFound,
  ContrastGroup,
  Effect,
  FurtherTest,
  PairContrast,
  TestAnswer,
  Trend,
} from './found.ts';
import { guarded } from './guarded.ts';
import { missingShifts } from './missing-shift.ts';
import type { ContrastOptions } from './options.ts';
import { pairContrasts } from './pairs.ts';
import { attributeSamples, canBeContrasted } from './samples.ts';
import { furtherTests, placeTest } from './tests.ts';
import { contrastTogether } from './together.ts';
import { trendOf } from './trend.ts';
import { judgePairs } from './verdicts-of-pairs.ts';

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
  const computed = single.map((column, place) =>
    contrastAttribute(input, column, grouping, options, (share) =>
      input.onProgress?.((place + share) / steps, `contrasting ${column.attribute.label}`),
    ),
  );
  refuseWithoutGroups(computed, by);
  const attributes = judged(computed, options).map((one) => ({
    ...one,
    guard: guarded(input, one, options),
  }));
  const compared = {
    options,
    unit,
    by,
    attributes,
    tests: attributes.length + attributes.reduce((sum, { pairs }) => sum + pairs.length, 0),
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
      setAside: setAside(input, grouping, by, computed),
    },
  };
}

/** One attribute that only one group records leaves the others their answer; where all are so there is none. */
function refuseWithoutGroups(attributes: readonly Computed[], by: string): void {
  if (attributes.length === 0 || attributes.some(({ samples }) => samples.groups.length >= 2)) return;
  const [{ attribute, groups }] = attributes.map(({ samples }) => samples);
  const has = groups.length === 0 ? 'no group of' : `only one group ("${groups[0].label}") of`;
  throw new InputError(
    `${has} "${by}" has a value of "${attribute.label}" (${attribute.id}), and a contrast needs two`,
    {},
    'choose another grouping or attribute, or select more fragments',
  );
}

/** One attribute before its p values are set among those of the others. */
interface Computed
  extends Omit<
    AttributeContrast,
    'pairs' | 'further' | 'pAdjusted' | 'told' | 'hangsOn' | 'missingShifts' | 'guard'
  > {
  readonly pairs: readonly PairContrast[];
  readonly further: readonly Pick<FurtherTest, 'question' | 'name' | 'answer'>[];
}

/** Verdicts: p of one question is adjusted over the attributes asked, p of pairs over all pairs. */
function judged(
  computed: readonly Computed[],
  options: ContrastOptions,
): readonly Omit<AttributeContrast, 'guard'>[] {
  const pairs = judgePairs(computed, options);
  const plain = computed.map((one) => ('why' in one.place ? { why: one.place.why } : one.place.p));
  const place = adjustKnown(plain, options.adjust);
  const questions = new Set(computed.flatMap(({ further }) => further.map(({ question }) => question)));
  const further = new Map<Computed['further'][number], FurtherTest>();
  for (const question of questions) {
    const family = computed.flatMap((one) => one.further.filter((test) => test.question === question));
    const p = adjustKnown(
      family.map(({ answer }) => ('why' in answer ? { why: answer.why } : answer.p)),
      options.adjust,
    );
    family.forEach((test, at) => {
      further.set(test, { ...test, pAdjusted: p[at], told: toldAt(p[at], options.confidence) });
    });
  }
  return computed.map((one, at) => {
    const told = toldAt(place[at], options.confidence);
    return {
      ...one,
      pAdjusted: place[at],
      told,
      pairs: pairs[at],
      further: one.further.flatMap((test) => further.get(test) ?? []),
      missingShifts: missingShifts(one.samples, told, (p) =>
        toldAt(adjustKnown(plain.with(at, p), options.adjust)[at], options.confidence),
      ),
      hangsOn: one.otherwise.filter((other) => turns(told, other)),
    };
  });
}

/** A trial without an answer changes no verdict; one with another answer does. */
function turns(told: AttributeContrast['told'], other: AskedOtherwise): boolean {
  return told !== 'cannot be told' && other.told !== 'cannot be told' && other.told !== told;
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

/** Share of values that equal another one. */
function tieShare({ tested }: AttributeSamples): number {
  const values = tested.flatMap((group) => Array.from(group.points.values));
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const tied = values.filter((value) => (counts.get(value) ?? 0) > 1).length;
  return values.length === 0 ? 0 : tied / values.length;
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
  const median = drawnMedian(blockMembers(points));
  return bootstrapInterval([points.count], ([choice]) => median(choice), {
    random,
    resamples: options.resamples,
    level: expandedLevel(options.confidence, points.count),
  });
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

function setAside(
  input: AnalysisInput,
  grouping: Grouping,
  by: string,
  attributes: readonly Computed[],
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

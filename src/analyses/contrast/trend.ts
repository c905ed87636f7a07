import { midpoint } from '../../fragments/accessors.ts';
import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { permutationTest } from '../../numerics/resampling/permutation.ts';
import { blockedSample } from '../../numerics/tests/blocked-sample.ts';
import { blockedTrendTest } from '../../numerics/tests/blocked-trend.ts';
import { jonckheereTerpstra, spearman } from '../../numerics/tests/trend.ts';
import type { Unavailable } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import { dealtBy } from './dealt.ts';
import type { AttributeSamples } from './found.ts';
import type { ContrastOptions } from './options.ts';
import type { Trend, TrendTest } from './trend-found.ts';

const DRAWS = 499;

/**
 * Do values rise or fall with time? Spearman's rho of value and date, p by dealing the dates among
 * items; Jonckheere-Terpstra over the groups in the order of their median dates. Both again with
 * years drawn evenly within the spans, one draw for all records of an assemblage with the same span.
 */
export function trendOf(
  samples: AttributeSamples,
  records: FragmentTable,
  dates: NumericColumn,
  options: ContrastOptions,
  random: Random,
): Trend | Unavailable {
  const all = samples.tested.flatMap((group, place) =>
    group.rows.map((row, i) => ({
      id: records.id[row],
      group: place,
      item: records.item[row],
      assemblage: records.assemblage[row],
      value: group.points.values[i],
      from: dates.low[row],
      to: dates.high[row],
      middle: midpoint(dates, row),
    })),
  );
  const values = all.filter(({ from, to }) => Number.isFinite(from) && Number.isFinite(to));
  if (values.length < 3) return { why: `only ${values.length} values have a closed span of years` };
  const keyOf = (value: (typeof values)[number]) =>
    `${value.assemblage === '' ? value.item : value.assemblage} ${value.from} ${value.to}`;
  const keys = [...new Set(values.map(keyOf))];
  const spans = new Set(values.map(({ from, to }) => `${from} ${to}`)).size;
  if (spans < 2) return { why: 'all values are dated alike' };
  const middles = values.map(({ middle }) => middle);
  const measured = values.map(({ value }) => value);
  const groupsBy = (years: readonly number[]) => groupOrder(values, years, samples.tested.length);
  const ordered = (years: readonly number[]) =>
    jonckheereTerpstra(groupsBy(years).map((group) => measured.filter((_, i) => values[i].group === group)));
  const draws = Array.from({ length: DRAWS }, () => {
    const share = new Map(keys.map((key) => [key, random.next()]));
    return values.map((value) => value.from + (share.get(keyOf(value)) ?? 0) * (value.to - value.from));
  });
  const rho = spearman(measured, middles);
  const jonckheere = ordered(middles);
  const drawn = (statistic: (years: readonly number[]) => number) =>
    spreadOf(draws.map(statistic), options.confidence);
  return {
    values,
    undated: all.length - values.length,
    spans,
    order: groupsBy(middles).map((group) => samples.tested[group].label),
    tests: [
      'why' in rho
        ? { ...rho, name: 'Spearman' }
        : {
            name: 'Spearman',
            statistic: rho.statistic,
            ...judged(rho.statistic, dealtDates(values, middles, options, random.stream('dates')), options),
            drawn: drawn((years) => numberOr(spearman(measured, years), 'statistic')),
          },
      'why' in jonckheere
        ? { ...jonckheere, name: 'Jonckheere-Terpstra' }
        : {
            name: 'Jonckheere-Terpstra',
            statistic: jonckheere.z,
            ...judged(
              jonckheere.z,
              dealtItems(values, groupsBy(middles), options, random.stream('groups')),
              options,
            ),
            drawn: drawn((years) => numberOr(ordered(years), 'z')),
          },
    ],
  };
}

function judged(
  statistic: number,
  tested: { readonly p: number; readonly method: string },
  { confidence }: ContrastOptions,
): Pick<TrendTest, 'p' | 'method' | 'told' | 'direction'> {
  return { ...tested, told: toldAt(tested.p, confidence), direction: statistic > 0 ? 'rises' : 'falls' };
}

function numberOr<Key extends string>(
  found: { readonly [K in Key]: number } | Unavailable,
  key: Key,
): number {
  return 'why' in found ? Number.NaN : found[key];
}

/** Two-sided p of the ordered groups by dealing whole items among them. */
function dealtItems(
  values: readonly { readonly item: string; readonly group: number; readonly value: number }[],
  order: readonly number[],
  options: ContrastOptions,
  random: Random,
): { p: number; method: string } {
  const samples = order.map((group) => {
    const own = values.filter((value) => value.group === group);
    return blockedSample(
      own.map(({ value }) => value),
      own.map(({ item }) => item),
    );
  });
  const test = blockedTrendTest(samples, {
    random,
    relabellings: Math.min(options.relabellings, 9999),
    exactLimit: 20_000,
  });
  if ('why' in test) throw new RangeError(`trendOf: ${test.why}`);
  return { p: test.p, method: dealtBy(test) };
}

/** Two-sided p of Spearman's rho by dealing the dates among the items. */
function dealtDates(
  values: readonly { readonly item: string; readonly value: number }[],
  middles: readonly number[],
  options: ContrastOptions,
  random: Random,
): { p: number; method: string } {
  const items = [...new Set(values.map(({ item }) => item))];
  const placeOf = new Map(items.map((item, place) => [item, place]));
  const blocks = values.map(({ item }) => placeOf.get(item) ?? 0);
  const dateOf = items.map((_, place) =>
    quantileSorted(sortedValues(middles.filter((__, i) => blocks[i] === place)), 0.5),
  );
  const measured = values.map(({ value }) => value);
  const distinct = [...new Set(dateOf)];
  const test = permutationTest(
    dateOf.map((date) => distinct.indexOf(date)),
    (labels) =>
      Math.abs(
        numberOr(
          spearman(
            measured,
            blocks.map((block) => distinct[labels[block]]),
          ),
          'statistic',
        ),
      ),
    { random, relabellings: Math.min(options.relabellings, 1999), exactLimit: 5000 },
  );
  return {
    p: test.p,
    method:
      test.method === 'exact'
        ? `exact, all ${test.relabellings} ways to deal the dates`
        : `${test.relabellings} random ways to deal the dates among items`,
  };
}

/** Groups by the median of their years, earliest first; of equals in their own order. */
function groupOrder(
  values: readonly { readonly group: number }[],
  years: readonly number[],
  count: number,
): number[] {
  const medians = Array.from({ length: count }, (_, group) => {
    const own = sortedValues(years.filter((__, i) => values[i].group === group));
    return own.length === 0 ? Number.NaN : quantileSorted(own, 0.5);
  });
  return medians
    .map((median, group) => ({ median, group }))
    .filter(({ median }) => !Number.isNaN(median))
    .sort((a, b) => a.median - b.median || a.group - b.group)
    .map(({ group }) => group);
}

function spreadOf(statistics: readonly number[], share: number): TrendTest['drawn'] {
  const sorted = sortedValues(statistics);
  if (sorted.length === 0) return { why: 'no draw gave a value' };
  return {
    median: quantileSorted(sorted, 0.5),
    low: quantileSorted(sorted, (1 - share) / 2),
    high: quantileSorted(sorted, (1 + share) / 2),
    draws: sorted.length,
  };
}

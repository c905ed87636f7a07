import { grouping } from '../../src/analyses/grouping/index.ts';
import { type GroupingMethod, groupingOptions } from '../../src/analyses/grouping/options.ts';
import { exp } from '../../src/numerics/foundation/elementary.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { attribute, type MadeColumn, madeInput } from '../analyses/grouping/made-table.ts';
import { runsAsked } from './parts/runs.ts';

/**
 * How often does the grouping analysis claim groups where there are none, and how often where there are?
 *
 *   npm run simulate -- noise-groups [tables a scenario, default 200] [part of a scenario's name and method]
 *
 * The result is stated in docs/methods/grouping.md.
 */

const RECORDS = 60;
const TABLES = runsAsked(200, 'tables a scenario');
const WANTED = process.argv[3] ?? '';
const METHODS: readonly GroupingMethod[] = ['medoids', 'average'];

/** Sum of twelve uniforms less six: near enough to normal. */
function normal(random: Random): number {
  let sum = -6;
  for (let i = 0; i < 12; i++) sum += random.next();
  return sum;
}

const number = (id: string) => attribute(id, 'spacing', 'ratio', { unit: 'mm', transform: 'log' });
const kind = (id: string, block: 'structure' | 'fibre') => attribute(id, block, 'nominal');
const rows = <T>(make: () => T): T[] => Array.from({ length: RECORDS }, make);
const gappy = (random: Random, value: number | string) => (random.next() < 0.1 ? null : value);

/** Three independent lognormal numbers whose definitions do not say that they go by logarithms. */
const cloud = (random: Random) =>
  ['rowSpacing', 'density1', 'diameter1'].map((id) => ({
    attribute: attribute(id, 'spacing', 'ratio'),
    values: rows(() => exp(normal(random))),
  }));

const scenarios: Readonly<Record<string, (random: Random) => MadeColumn[]>> = {
  'independent attributes, 10 % gaps': (random) => [
    ...['rowSpacing', 'density1', 'diameter1'].map((id) => ({
      attribute: number(id),
      values: rows(() => gappy(random, exp(normal(random)))),
    })),
    {
      attribute: kind('structure', 'structure'),
      values: rows(() => gappy(random, 'abcd'[random.integer(4)])),
    },
    { attribute: kind('fibre', 'fibre'), values: rows(() => gappy(random, 'xyz'[random.integer(3)])) },
  ],
  'numbers alone, independent': (random) =>
    ['rowSpacing', 'density1', 'diameter1', 'diameter2'].map((id) => ({
      attribute: number(id),
      values: rows(() => exp(normal(random))),
    })),
  'one gradient through four numbers': (random) => {
    const along = rows(() => normal(random));
    return ['rowSpacing', 'density1', 'diameter1', 'diameter2'].map((id) => ({
      attribute: number(id),
      values: along.map((at) => exp(at + 0.4 * normal(random))),
    }));
  },
  'one even gradient through three numbers': (random) => {
    const along = rows(() => random.next());
    return ['rowSpacing', 'density1', 'diameter1'].map((id) => ({
      attribute: attribute(id, 'spacing', 'ratio'),
      values: along.map((at) => 10 * at + random.next()),
    }));
  },
  'one skewed cloud, no scale named': cloud,
  'one skewed cloud, taken plain': cloud,
  'one cloud skewed down to nought': (random) =>
    ['rowSpacing', 'density1', 'diameter1'].map((id) => ({
      attribute: attribute(id, 'spacing', 'ratio'),
      values: rows(() => Math.floor(2 * exp(normal(random)))),
    })),
  'three planted groups (power)': (random) => {
    const group = rows(() => random.integer(3));
    return [
      ...['rowSpacing', 'density1', 'diameter1'].map((id) => ({
        attribute: number(id),
        values: group.map((g) => gappy(random, exp(2 * g + 0.5 * normal(random)))),
      })),
      {
        attribute: kind('structure', 'structure'),
        values: group.map((g) => gappy(random, random.next() < 0.85 ? 'abc'[g] : 'abc'[random.integer(3)])),
      },
    ];
  },
};

for (const [name, make] of Object.entries(scenarios)) {
  for (const method of METHODS) {
    if (!`${name}; ${method}`.includes(WANTED)) continue;
    const tally = { shuffled: 0, even: 0, heap: 0, all: 0, gap: 0, unbacked: 0 };
    for (let table = 0; table < TABLES; table++) {
      const random = createRandom(1000 + table).stream(name);
      const options = groupingOptions.parse({
        ...{ method, mostGroups: 6, resamples: 0, permutations: 39, variants: false },
        skewed: name.includes('plain') ? 'plain' : 'log',
      });
      const { trust, verdict, structure } = grouping.compute(
        madeInput(make(random), { seed: table }),
        options,
      );
      if ('why' in trust.shuffled || 'why' in trust.even || 'why' in trust.heap) continue;
      const beyond = [trust.shuffled, trust.even, trust.heap].map(({ p }) => p <= 0.05);
      if (beyond[0]) tally.shuffled++;
      if (beyond[1]) tally.even++;
      if (beyond[2]) tally.heap++;
      if (!beyond.includes(false)) tally.all++;
      if (structure === 'strong' && verdict !== 'groups' && verdict !== 'one attribute') tally.unbacked++;
      if (typeof trust.groupsByGap === 'number' && trust.groupsByGap > 1) tally.gap++;
    }
    const share = (count: number) => `${((100 * count) / TABLES).toFixed(1)} %`;
    console.log(
      `${name}; ${method}: groups claimed ${share(tally.all)} (beyond shuffled ${share(tally.shuffled)}, ` +
        `beyond an even cloud ${share(tally.even)}, beyond a single heap ${share(tally.heap)}; gap above 1 group ${share(tally.gap)}; a strong width without consent ${share(tally.unbacked)}), ${TABLES} tables of ${RECORDS}`,
    );
  }
}

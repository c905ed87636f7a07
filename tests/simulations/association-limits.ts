/**
 * Do the limits of Cramér's V hold where kinds do go with places? Places of equal size; each draws its kinds from what all have in
 * common, mixed with one kind of its own, so much that V in the whole population is as said. Records alone, and fragments that
 * come by items (1 to 8 each, each like its item with the chance given).
 *
 *   npm run simulate -- association-limits [runs] [part of a line's name], some minutes for 1000 runs.
 */

import { crosstabOptions } from '../../src/analyses/crosstab/options.ts';
import { cramersInterval } from '../../src/analyses/crosstab/strength-limits.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { association } from '../../src/numerics/tests/contingency.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(1000);
const ONLY = process.argv[3] ?? '';
const root = createRandom(29);
const options = crosstabOptions.parse({ rows: 'site', columns: 'kind', resamples: 199 });

/** What the places have in common: kinds alike frequent, or the first of them half of all and the last rare. */
const COMMON = {
  even: (kinds: number) => Array.from({ length: kinds }, () => 1 / kinds),
  uneven: (kinds: number) => {
    const weights = Array.from({ length: kinds }, (_, kind) => 0.4 ** kind);
    const sum = weights.reduce((total, weight) => total + weight, 0);
    return weights.map((weight) => weight / sum);
  },
};

/** Chances of the kinds at each place, `own` of them of the place's own kind. */
const chancesOf = (places: number, common: readonly number[], own: number) =>
  Array.from({ length: places }, (_, place) =>
    common.map((chance, kind) => (1 - own) * chance + (kind === place % common.length ? own : 0)),
  );

function strengthOf(chances: readonly (readonly number[])[]): number {
  const places = chances.length;
  let phi = 0;
  for (let kind = 0; kind < chances[0].length; kind++) {
    const mean = chances.reduce((sum, row) => sum + row[kind], 0) / places;
    for (const row of chances) phi += (row[kind] - mean) ** 2 / mean / places;
  }
  return Math.sqrt(phi / (Math.min(places, chances[0].length) - 1));
}

function withStrength(places: number, common: readonly number[], strength: number) {
  let [low, high] = [0, 1];
  for (let step = 0; step < 60; step++) {
    const own = (low + high) / 2;
    if (strengthOf(chancesOf(places, common, own)) < strength) low = own;
    else high = own;
  }
  return chancesOf(places, common, low);
}

function drawKind(chances: readonly number[], random: Random): number {
  let left = random.next();
  for (let kind = 0; kind < chances.length - 1; kind++) {
    left -= chances[kind];
    if (left < 0) return kind;
  }
  return chances.length - 1;
}

interface Drawn {
  readonly row: number;
  readonly column: number;
  readonly item: string;
}

function drawn(
  chances: readonly (readonly number[])[],
  items: number,
  likeness: number | null,
  random: Random,
) {
  const entries: Drawn[] = [];
  for (let item = 0; item < items; item++) {
    const row = item % chances.length;
    const own = drawKind(chances[row], random);
    const fragments = likeness === null ? 1 : 1 + random.integer(8);
    for (let fragment = 0; fragment < fragments; fragment++)
      entries.push({
        row,
        item: `i${item}`,
        column: likeness === null || random.next() < likeness ? own : drawKind(chances[row], random),
      });
  }
  return entries;
}

/** The table as the analysis counts it: without kinds that nobody drew. */
function counted(entries: readonly Drawn[], places: number) {
  const kinds = [...new Set(entries.map(({ column }) => column))].sort();
  const counts = Array.from({ length: places }, () => kinds.map(() => 0));
  const kept = entries.map((entry, record) => ({ ...entry, record, column: kinds.indexOf(entry.column) }));
  for (const { row, column } of kept) counts[row][column]++;
  const names = (letter: string, count: number) =>
    Array.from({ length: count }, (_, place) => `${letter}${place}`);
  return {
    rows: names('s', places),
    columns: names('k', kinds.length),
    counts,
    items: counts,
    entries: kept,
    nested: [],
    lacking: [],
  };
}

const share = (count: number, of: number) => (of === 0 ? '–' : `${((100 * count) / of).toFixed(1)} %`);
process.stdout.write('| table | given | held | V below them | V above them |\n|---|---|---|---|---|\n');
for (const [places, kinds] of [
  [2, 2],
  [3, 4],
  [6, 5],
] as const)
  for (const spread of ['even', 'uneven'] as const)
    for (const strength of [0, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9])
      for (const [items, likeness] of [
        [30, null],
        [100, null],
        [300, null],
        [20, 0.5],
        [20, 0.9],
        [60, 0.5],
        [60, 0.9],
      ] as const) {
        const name = `V ${strength}, ${places} x ${kinds}, kinds ${spread}, ${items} ${likeness === null ? 'records' : `items, likeness ${likeness}`}`;
        if (!new RegExp(ONLY).test(name)) continue;
        const chances = withStrength(places, COMMON[spread](kinds), strength);
        const [counts, given] = [{ below: 0, above: 0 }, { limits: 0 }];
        for (let run = 0; run < runs; run++) {
          const random = root.stream(`${name} ${run}`);
          const table = counted(drawn(chances, items, likeness, random), places);
          const found = association(table.counts);
          if ('why' in found) continue;
          const limits = cramersInterval(table, found, options, random);
          if ('why' in limits) continue;
          given.limits++;
          if (strength < limits.low) counts.below++;
          else if (strength > limits.high) counts.above++;
        }
        const held = given.limits - counts.below - counts.above;
        process.stdout.write(
          `| ${name} | ${share(given.limits, runs)} | ${share(held, given.limits)} | ${share(counts.below, given.limits)} | ${share(counts.above, given.limits)} |\n`,
        );
      }

/**
 * Do limits of few values hold? Medians by order statistics, shifts by the inverted Mann-Whitney test, and Cramér's V of
 * fragments that come by items where rows and columns have nothing to do with each other.
 *
 *   npm run simulate -- limits-of-few [runs] [part of a line's name], some minutes for 1000 runs.
 */
import { pairEffects } from '../../src/analyses/contrast/pair-effects.ts';
import { computeCrosstab } from '../../src/analyses/crosstab/compute.ts';
import { crosstabOptions } from '../../src/analyses/crosstab/options.ts';
import { normalQuantileUpper } from '../../src/numerics/foundation/distributions.ts';
import { exp } from '../../src/numerics/foundation/elementary.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { blockedSample } from '../../src/numerics/tests/blocked-sample.ts';
import { epsilonSquaredLimits } from '../../src/numerics/tests/epsilon-limits.ts';
import { kruskalWallis } from '../../src/numerics/tests/kruskal-wallis.ts';
import { meanLimits } from '../../src/numerics/tests/mean-limits.ts';
import { medianLimits } from '../../src/numerics/tests/median-limits.ts';
import { shiftLimits } from '../../src/numerics/tests/shift-limits.ts';
import { attribute, madeInput } from '../analyses/grouping/made-table.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(1000);
const ONLY = process.argv[3] ?? '';
const root = createRandom(23);
const normal = (random: Random) => normalQuantileUpper(1 - Math.max(random.next(), 1e-15));
const sample = (n: number, random: Random, skewed: boolean) =>
  Array.from({ length: n }, () => (skewed ? exp(normal(random)) : normal(random)));
const share = (count: number, of: number) => (of === 0 ? '–' : `${((100 * count) / of).toFixed(1)} %`);
type Limits = { readonly low: number; readonly high: number } | { readonly why: string };

function coverage(name: string, truth: number, limits: (run: number) => Limits) {
  if (!name.includes(ONLY)) return;
  let given = 0;
  let held = 0;
  for (let run = 0; run < runs; run++) {
    const found = limits(run);
    if ('why' in found) continue;
    given++;
    if (found.low <= truth && truth <= found.high) held++;
  }
  process.stdout.write(`| ${name} | ${share(given, runs)} | ${share(held, given)} |\n`);
}

process.stdout.write(`| limits at 95 % | given | hold the truth |\n|---|---|---|\n`);
for (const skewed of [false, true])
  for (const n of [3, 6, 7, 10, 20, 40])
    coverage(`median of ${n}, ${skewed ? 'lognormal' : 'normal'}`, skewed ? 1 : 0, (run) =>
      medianLimits(sample(n, root.stream(`median ${skewed} ${n} ${run}`), skewed), 0.95),
    );
for (const n of [3, 6])
  coverage(`mean of ${n}, normal`, 0, (run) =>
    meanLimits(sample(n, root.stream(`mean ${n} ${run}`), false), 0.95),
  );
for (const n of [3, 4, 5, 8, 15])
  coverage(`shift of ${n} and ${n}, normal`, 0, (run) => {
    const random = root.stream(`shift ${n} ${run}`);
    return shiftLimits(sample(n, random, false), sample(n, random, false), 0.95);
  });

/** Of three groups moved so far from one another; the truth from groups so large that it stands still. */
const threeGroups = (n: number, apart: number, random: Random) =>
  [0, 1, 2].map((group) => Float64Array.from(sample(n, random, false), (value) => value + group * apart));
for (const apart of [0, 0.25, 0.5, 1, 1.5, 2, 4]) {
  const whole = kruskalWallis(threeGroups(20_000, apart, root.stream('whole')));
  const truth = 'why' in whole || apart === 0 ? 0 : whole.epsilonSquared;
  for (const n of [5, 10, 30])
    coverage(`epsilon squared ${truth.toFixed(2)}, three groups of ${n}, normal`, truth, (run) =>
      epsilonSquaredLimits(threeGroups(n, apart, root.stream(`epsilon ${apart} ${n} ${run}`)), 0.95),
    );
}

/** Two normal groups, the first so far above the second that one of its values is larger with the chance given. */
const graded = { graded: true, attribute: attribute('grade', 'spacing', 'ordinal'), logarithmic: false };
for (const chance of [0.5, 0.75, 0.9, 0.97])
  for (const spread of [1, 3])
    for (const n of [5, 8, 15, 30]) {
      const apart = normalQuantileUpper(1 - chance) * Math.sqrt(1 + spread * spread);
      const delta = 2 * chance - 1;
      coverage(`delta ${delta.toFixed(2)}, ${n} and ${n}, spreads 1 to ${spread}`, delta, (run) => {
        const random = root.stream(`delta ${chance} ${spread} ${n} ${run}`);
        const group = (from: number, sd: number) => {
          const values = sample(n, random, false).map((value) => from + sd * value);
          return blockedSample(
            values,
            values.map((_, place) => `${place}`),
          );
        };
        const pair = [group(apart, 1), group(0, spread)] as const;
        const found = pairEffects(pair, graded, { confidence: 0.95, within: 0.2 }, 499, random).delta;
        return 'why' in found ? found : found.interval;
      });
    }

if ('V = 0'.includes(ONLY))
  process.stdout.write('\n| V = 0 | low end above 0 | high end, median |\n|---|---|---|\n');
for (const [items, likeness] of [
  [20, 0.9],
  [60, 0.5],
  [60, 0.9],
] as const) {
  if (!'V = 0'.includes(ONLY)) break;
  const options = crosstabOptions.parse({ rows: 'site', columns: 'kind', relabellings: 99, resamples: 199 });
  const highs: number[] = [];
  let above = 0;
  const tables = Math.min(runs, 1000);
  for (let run = 0; run < tables; run++) {
    const random = root.stream(`v ${items} ${likeness} ${run}`);
    const rows = Array.from({ length: items }, (_, item) => {
      const own = random.integer(4);
      return Array.from({ length: 1 + random.integer(8) }, () => ({
        item: `i${item}`,
        site: `s${item % 3}`,
        kind: `k${random.next() < likeness ? own : random.integer(4)}`,
      }));
    }).flat();
    const input = madeInput(
      [
        { attribute: attribute('site', 'context', 'nominal'), values: rows.map(({ site }) => site) },
        { attribute: attribute('kind', 'structure', 'nominal'), values: rows.map(({ kind }) => kind) },
      ],
      { items: rows.map(({ item }) => item), seed: run + 1 },
    );
    const { interval } = computeCrosstab(input, options);
    if ('why' in interval) continue;
    if (interval.low > 0) above++;
    highs.push(interval.high);
  }
  highs.sort((a, b) => a - b);
  process.stdout.write(
    `| ${items} items of 1 to 8 fragments, likeness ${likeness} | ${share(above, highs.length)} | ${(highs[highs.length >> 1] ?? 0).toFixed(2)} |\n`,
  );
}

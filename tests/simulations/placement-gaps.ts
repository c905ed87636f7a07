/**
 * Does the 90 % set hold the true label where the comparanda have gaps and the find has none, or the other way round?
 * Five sites of 40 records, three measurements; a gap comes at random, or the likelier the larger the value is.
 *
 *   npm run simulate -- placement-gaps [runs], some minutes for 1000 runs: each is a find drawn anew, five to a table.
 */
import { computePlacement } from '../../src/analyses/placement/compute.ts';
import { placementOptions } from '../../src/analyses/placement/options.ts';
import { normalQuantileUpper } from '../../src/numerics/foundation/distributions.ts';
import { exp } from '../../src/numerics/foundation/elementary.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { attribute, madeInput } from '../analyses/grouping/made-table.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(1000);
const SITES = [0, 1, 2, 3, 4];
const RECORDS = 40;
const MEASURES = ['length', 'width', 'depth'];
const normal = (random: Random) => normalQuantileUpper(1 - Math.max(random.next(), 1e-15));

/** Chance that a value of so many standard deviations above its site's middle is not recorded. */
type Gaps = (value: number) => number;
const with20: Gaps = (value) => 1 / (1 + exp(2 - 2 * value));
const with40: Gaps = (value) => 1 / (1 + exp(0.6 - 2 * value));
const GAPS: Readonly<Record<string, { comparanda: Gaps; find: Gaps }>> = {
  'no gaps': { comparanda: () => 0, find: () => 0 },
  'comparanda 20 % at random, finds complete': { comparanda: () => 0.2, find: () => 0 },
  'comparanda 40 % at random, finds complete': { comparanda: () => 0.4, find: () => 0 },
  'comparanda 40 % at random, finds too': { comparanda: () => 0.4, find: () => 0.4 },
  'comparanda 22 %, larger ones likelier, finds complete': { comparanda: with20, find: () => 0 },
  'comparanda 41 %, larger ones likelier, finds complete': { comparanda: with40, find: () => 0 },
  'comparanda 41 %, larger ones likelier, finds too': { comparanda: with40, find: with40 },
};

const share = (count: number, of: number) => `${((100 * count) / of).toFixed(1)} %`;
console.log('| gaps | true label in the 90 % set | worst site | labels in the set |\n|---|---|---|---|');
for (const [name, { comparanda, find }] of Object.entries(GAPS)) {
  const held = SITES.map(() => 0);
  const finds = SITES.map(() => 0);
  let size = 0;
  for (let run = 0; run < runs / SITES.length; run++) {
    const random = createRandom(31).stream(`${name} ${run}`);
    const draw = (gaps: Gaps) =>
      MEASURES.map(() => {
        const value = normal(random);
        return random.next() < gaps(value) ? null : value;
      });
    const moved = (values: readonly (number | null)[], site: number) =>
      values.map((value, at) => (value === null ? null : value + 2.5 * ((site * (at + 1)) % SITES.length)));
    const made = SITES.flatMap((site) =>
      Array.from({ length: RECORDS }, () => ({ site, values: moved(draw(comparanda), site) })),
    );
    const input = madeInput(
      [
        { attribute: attribute('site', 'context', 'nominal'), values: made.map(({ site }) => `s${site}`) },
        ...MEASURES.map((id, at) => ({
          attribute: attribute(id, 'spacing', 'interval'),
          values: made.map(({ values }) => values[at]),
        })),
      ],
      { seed: run + 1 },
    );
    for (const site of SITES) {
      const values = moved(draw(find), site);
      const given = MEASURES.flatMap((id, at) => {
        const value = values[at];
        return value === null ? [] : [[id, value.toFixed(9)]];
      });
      if (given.length === 0) continue;
      const { sets } = computePlacement(
        input,
        placementOptions.parse({
          of: MEASURES,
          find: Object.fromEntries(given),
          labels: ['site'],
          moves: false,
          next: false,
          map: false,
          draws: 0,
          nearest: 1,
        }),
      );
      const set = sets.find(({ asked }) => asked);
      const left = [...(set?.kept ?? []), ...(set?.tooFew ?? [])];
      finds[site]++;
      size += left.length;
      if (left.includes(`s${site}`)) held[site]++;
    }
  }
  const all = finds.reduce((sum, count) => sum + count, 0);
  const worst = Math.min(...held.map((count, site) => count / finds[site]));
  console.log(
    `| ${name} | ${share(
      held.reduce((sum, count) => sum + count, 0),
      all,
    )} | ${share(worst, 1)} | ${(size / all).toFixed(2)} |`,
  );
}

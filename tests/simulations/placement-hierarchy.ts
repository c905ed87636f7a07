/**
 * Does the 90 % set of a placement hold the true label when fragments come from items and items from sites?
 * Everything goes through the analysis as a study asks it; the find is drawn anew each run.
 *
 *   npm run simulate -- placement-hierarchy [runs] [1 or 2: that part alone], some minutes for 1000 runs.
 *
 * Part 1: five sites of 40 items of 1 to 6 fragments; the find is one fragment of a further item of the first site.
 * Part 2: two regions of so many sites of 6 items; the find is of a further site of the first region. Values are
 * normal in two measurements; likeness is the correlation of two fragments of an item, or of two items of a site.
 */
import type { AnalysisInput } from '../../src/analyses/contract.ts';
import { computePlacement } from '../../src/analyses/placement/compute.ts';
import { type PlacementOptions, placementOptions } from '../../src/analyses/placement/options.ts';
import { collapseItems } from '../../src/fragments/items/items.ts';
import { normalQuantileUpper } from '../../src/numerics/foundation/distributions.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { attribute, madeInput } from '../analyses/grouping/made-table.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(1000);
const part = process.argv[3] ?? 'both';
const normal = (random: Random) => normalQuantileUpper(1 - Math.max(random.next(), 1e-15));
const MEASURES = ['size', 'width'] as const;
const QUICK = { of: [...MEASURES], moves: false, next: false, map: false, draws: 0, nearest: 1 };

interface Piece {
  readonly region: string;
  readonly site: string;
  readonly item: string;
  readonly values: readonly number[];
}

/** Fragments of an item about the item's own values, these about the centre given. */
function pieces(
  where: { readonly region: string; readonly site: string; readonly item: string },
  centre: readonly number[],
  likeness: number,
  count: number,
  random: Random,
): Piece[] {
  const own = centre.map((value) => value + Math.sqrt(likeness) * normal(random));
  return Array.from({ length: count }, () => ({
    ...where,
    values: own.map((value) => value + Math.sqrt(1 - likeness) * normal(random)),
  }));
}

function inputOf(made: readonly Piece[], seed: number): AnalysisInput {
  const input = madeInput(
    [
      { attribute: attribute('site', 'context', 'nominal'), values: made.map(({ site }) => site) },
      { attribute: attribute('region', 'context', 'nominal'), values: made.map(({ region }) => region) },
      ...MEASURES.map((id, at) => ({
        attribute: attribute(id, 'spacing', 'interval'),
        values: made.map(({ values }) => values[at]),
      })),
    ],
    { items: made.map(({ item }) => item), unit: 'item', seed },
  );
  return { ...input, records: collapseItems(input.fragments, input.register).table };
}

const findOf = (values: readonly number[]) =>
  Object.fromEntries(MEASURES.map((id, at) => [id, values[at].toFixed(9)]));

function verdictOn(
  input: AnalysisInput,
  find: Piece,
  by: 'site' | 'region',
  more: Partial<PlacementOptions>,
) {
  const options = placementOptions.parse({ ...QUICK, labels: [by], find: findOf(find.values), ...more });
  const found = computePlacement(input, options);
  return found.judged.find(({ label }) => label === find[by])?.verdict;
}

const share = (count: number, of: number) => (of === 0 ? '–' : `${((100 * count) / of).toFixed(1)} %`);
process.stdout.write(
  '| find | likeness | set by | true label in the 90 % set | too few to judge |\n|---|---|---|---|---|\n',
);
const root = createRandom(11);

function line(name: string, verdicts: readonly (string | undefined)[]) {
  const kept = verdicts.filter((verdict) => verdict !== 'excluded').length;
  const few = verdicts.filter((verdict) => verdict === 'too few to judge').length;
  process.stdout.write(`| ${name} | ${share(kept, verdicts.length)} | ${share(few, verdicts.length)} |\n`);
}

for (const likeness of part === '2' ? [] : [0.5, 0.3])
  for (const findIs of ['fragment', 'item'] as const) {
    const verdicts = Array.from({ length: runs }, (_, run) => {
      const random = root.stream(`fragments ${likeness} ${run}`);
      const made = [0, 1, 2, 3, 4].flatMap((site) =>
        Array.from({ length: 40 }, (__, item) =>
          pieces(
            { region: 'all', site: `s${site}`, item: `s${site} i${item}` },
            [3 * site, (site * 2) % 5],
            likeness,
            1 + random.integer(6),
            random,
          ),
        ).flat(),
      );
      const [find] = pieces({ region: 'all', site: 's0', item: 'find' }, [0, 0], likeness, 1, random);
      return verdictOn(inputOf(made, run + 1), find, 'site', { findIs });
    });
    line(`one fragment | items ${likeness} | fragments, find as ${findIs}`, verdicts);
  }

for (const sites of part === '1' ? [] : [4, 12, 25])
  for (const effect of [0.3, 0.6])
    for (const findFrom of ['another site', 'a site of the study'] as const) {
      const verdicts = Array.from({ length: runs }, (_, run) => {
        const random = root.stream(`sites ${sites} ${effect} ${run}`);
        const centreOf = (region: number) =>
          MEASURES.map(() => 2 * region + Math.sqrt(effect) * normal(random));
        const spread = Math.sqrt(1 - effect);
        const item = (centre: readonly number[]) => centre.map((value) => value + spread * normal(random));
        const made = [0, 1].flatMap((region) =>
          Array.from({ length: sites }, (__, site) => {
            const centre = centreOf(region);
            return Array.from(
              { length: 6 },
              (___, place): Piece => ({
                region: `r${region}`,
                site: `r${region} s${site}`,
                item: `r${region} s${site} i${place}`,
                values: item(centre),
              }),
            );
          }).flat(),
        );
        const find = { region: 'r0', site: 'new', item: 'find', values: item(centreOf(0)) };
        return verdictOn(inputOf(made, run + 1), find, 'region', { findFrom });
      });
      line(`of a new site, ${sites} a region | sites ${effect} | ${findFrom}`, verdicts);
    }

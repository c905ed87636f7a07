/**
 * How often do sets of labels hold the true one, over what the find is, how many labels of how many items there are,
 * what is not recorded, and readings that are ranges?
 *
 *   npm run simulate -- placement-sets [finds a cell, default 1000] [part of a design's name], some ten minutes.
 *
 * Seven designs x 4 sizes of label (5 to 200 items) x gaps of 0, 20 and 40 %; 3, 5 or 8 labels, and exact readings or
 * ranges half a standard deviation wide, take turns. 80 finds share a table. The results go to
 * src/analyses/shared/simulated/placement-sets.ts, which the answers and docs/methods/placement.md show.
 */
import { computePlacement } from '../../src/analyses/placement/compute.ts';
import { type PlacementOptions, placementOptions } from '../../src/analyses/placement/options.ts';
import { type SetCell, type SetDesign, SIMULATED_LEVELS } from '../../src/analyses/shared/simulated/cells.ts';
import { exp } from '../../src/numerics/foundation/elementary.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../src/numerics/modes/mixture-parts.ts';
import { inputOfPieces, MEASURES, type Piece, piecesOf, textsOf } from './parts/pieces.ts';
import { runsAsked } from './parts/runs.ts';
import { writeResults } from './parts/write-results.ts';

const runs = runsAsked(1000, 'finds a cell');
const ONLY = process.argv[3] ?? '';
const SHARING = 80;
/** Items of one site of a region. */
const OF_A_SITE = 5;

interface Asked {
  readonly labels: number;
  readonly items: number;
  readonly gaps: number;
  readonly step: number;
}

/** Far enough above 0 that no reading is below it. */
const centreOf = (label: number) => MEASURES.map((_, at) => 20 + 2 * ((label * (at + 1)) % 8));
const label = (at: number) => `label ${at}`;

/** A measurement that is not recorded: at random, or the likelier the larger it is beside its label's. */
function withGaps(
  piece: Piece,
  centre: readonly number[],
  gaps: number,
  byValue: boolean,
  random: Random,
): Piece {
  const chance = (value: number, at: number) =>
    byValue ? (gaps === 0 ? 0 : 1 / (1 + exp((gaps < 0.3 ? 2 : 0.6) - 2 * (value - centre[at])))) : gaps;
  return {
    ...piece,
    values: piece.values.map((value, at) => (random.next() < chance(value, at) ? Number.NaN : value)),
  };
}

interface Drawn {
  readonly made: readonly Piece[];
  readonly find: () => Piece;
}

/** Sites as labels, items of one to three fragments. `sizes` in items. */
function bySite(
  asked: Asked,
  likeness: number,
  byValue: boolean,
  sizes: readonly number[],
  random: Random,
): Drawn {
  const item = (at: number, name: string, count: number) =>
    piecesOf({ region: 'all', site: label(at), item: name }, centreOf(at), likeness, count, random);
  return {
    made: sizes.flatMap((size, at) =>
      Array.from({ length: size }, (_, place) => item(at, `${at} ${place}`, 1 + random.integer(3)))
        .flat()
        .map((piece) => withGaps(piece, centreOf(at), asked.gaps, byValue, random)),
    ),
    find: () => item(random.integer(sizes.length), 'find', 1)[0],
  };
}

/** Regions as labels, sites of five items; the find is of a site of its own. */
function byRegion(asked: Asked, effect: number, random: Random): Drawn {
  const site = (at: number) =>
    centreOf(at).map((value) => value + Math.sqrt(effect) * standardNormal(random));
  const item = (at: number, name: string, centre: readonly number[]): Piece => ({
    region: label(at),
    site: `${at} ${name}`,
    item: `${at} ${name} ${random.next()}`,
    values: centre.map((value) => value + Math.sqrt(1 - effect) * standardNormal(random)),
  });
  return {
    made: Array.from({ length: asked.labels }, (_, at) =>
      Array.from({ length: asked.items / OF_A_SITE }, (__, place) => {
        const centre = site(at);
        return Array.from({ length: OF_A_SITE }, () => item(at, `site ${place}`, centre));
      }).flat(),
    )
      .flat()
      .map((piece) => withGaps(piece, piece.values, asked.gaps, false, random)),
    find: () => {
      const at = random.integer(asked.labels);
      return item(at, 'new', site(at));
    },
  };
}

const even = ({ labels, items }: Asked) => Array.from({ length: labels }, () => items);
const DESIGNS: Readonly<Record<SetDesign, (asked: Asked, random: Random) => Drawn>> = {
  'fragment, likeness 0.5': (asked, random) => bySite(asked, 0.5, false, even(asked), random),
  'fragment, likeness 0.3': (asked, random) => bySite(asked, 0.3, false, even(asked), random),
  'new site, effect 0.3': (asked, random) => byRegion(asked, 0.3, random),
  'new site, effect 0.6': (asked, random) => byRegion(asked, 0.6, random),
  'gaps by value': (asked, random) => bySite(asked, 0.5, true, even(asked), random),
  'of a label of five': (asked, random) => {
    const drawn = bySite(asked, 0.5, false, [5, ...even(asked).slice(1)], random);
    const own = () =>
      piecesOf({ region: 'all', site: label(0), item: 'find' }, centreOf(0), 0.5, 1, random)[0];
    return { ...drawn, find: own };
  },
  'ragged labels': (asked, random) => {
    const sizes = even(asked).map((most, at) => Math.max(2, Math.round(most / (at + 1))));
    return bySite(asked, 0.5, false, sizes, random);
  },
};

function cellOf(design: SetDesign, asked: Asked): SetCell {
  const held: [number, number, number] = [0, 0, 0];
  let [finds, tooFew, none, kept] = [0, 0, 0, 0];
  const by = design.startsWith('new site') ? 'region' : 'site';
  for (let table = 0; finds < runs; table++) {
    const random = createRandom(71 + table).stream(`${design} ${JSON.stringify(asked)}`);
    const { made, find } = DESIGNS[design](asked, random);
    const input = inputOfPieces(made, asked.step, table + 1);
    for (let shared = 0; shared < SHARING && finds < runs; shared++, finds++) {
      const own = find();
      const options: PlacementOptions = placementOptions.parse({
        ...{ of: [...MEASURES], moves: false, next: false, map: false, draws: 0, nearest: 1 },
        labels: [by],
        find: textsOf(own.values, asked.step),
      });
      const { sets, novelty } = computePlacement(input, options);
      SIMULATED_LEVELS.forEach((level, at) => {
        const set = sets.find((one) => one.level === level);
        if (set?.kept.includes(own[by]) || set?.tooFew.includes(own[by])) held[at]++;
        if (level !== 0.9 || set === undefined) return;
        if (set.tooFew.includes(own[by])) tooFew++;
        kept += set.kept.length + set.tooFew.length;
      });
      if (novelty[0]?.verdict === 'none of these') none++;
    }
  }
  const { labels, items, gaps, step } = asked;
  return { design, labels, items, gaps, ranges: step > 0, finds, held, tooFew, none, kept };
}

const LABELS: readonly number[] = [3, 5, 8];
const cells: SetCell[] = [];
console.log(
  '| design | labels | items | gaps | ranges | in the 80, 90, 95 % set | too few | none of these |',
);
for (const design of (Object.keys(DESIGNS) as SetDesign[]).filter((name) => name.includes(ONLY)))
  for (const [size, items] of [5, 20, 60, 200].entries())
    for (const [gap, gaps] of [0, 0.2, 0.4].entries()) {
      const step = (size + gap) % 2 === 0 ? 0 : 0.5;
      const cell = cellOf(design, { labels: LABELS[(size + gap) % 3], items, gaps, step });
      cells.push(cell);
      const share = (count: number) => (100 * count) / cell.finds;
      const held = cell.held.map((count) => share(count).toFixed(1)).join(', ');
      console.log(
        `| ${design} | ${cell.labels} | ${items} | ${gaps} | ${cell.ranges} | ${held} | ${share(cell.tooFew).toFixed(1)} | ${share(cell.none).toFixed(1)} |`,
      );
    }
if (ONLY === '') writeResults('placement-sets', { name: 'PLACEMENT_SETS', type: 'SetCell' }, cells);

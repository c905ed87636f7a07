/**
 * Do the limits of counts in slices of time hold the true counts, when finds have dates of their own, when those of a
 * place and span were made together, and when dates crowd; and how often is a change told where there is none?
 *
 *   npm run simulate -- time-slices [runs], some minutes for 1000 runs.
 */
import { changesOf } from '../../src/analyses/chronology/change.ts';
import type { Entry } from '../../src/analyses/chronology/entries.ts';
import { chronologyOptions } from '../../src/analyses/chronology/options.ts';
import { sharesOf, sliceCounts } from '../../src/analyses/chronology/slices.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(1000);
const root = createRandom(41);
const share = (count: number, of: number) => (of === 0 ? '–' : `${((100 * count) / of).toFixed(1)} %`);
const EDGES = [1, 101, 201, 301, 401];
/** Spans as catalogues have them: phases that share edges, and single finds dated more closely. */
const SPANS: readonly (readonly [number, number])[] = [
  [1, 151],
  [101, 251],
  [151, 401],
  [201, 401],
];

/** Finds at places, each with one of the spans; a third of them dated to eighty years within it. */
function finds(n: number, random: Random): Entry[] {
  return Array.from({ length: n }, (_, row): Entry => {
    const [from, to] = SPANS[random.integer(SPANS.length)];
    const close = random.next() < 1 / 3;
    const low = close ? from + random.next() * (to - from - 80) : from;
    return {
      row,
      item: `i${row}`,
      low,
      high: close ? low + 80 : to,
      kind: 'one',
      place: `place ${random.integer(5)}`,
      phase: null,
    };
  });
}

type Truth = 'each its own' | 'made together' | 'crowded late' | 'crowded early';

function trueDates(entries: readonly Entry[], truth: Truth, random: Random): number[] {
  const shared = new Map<string, number>();
  return entries.map(({ place, low, high }) => {
    const key = `${place} ${low} ${high}`;
    const drawn = truth === 'made together' ? (shared.get(key) ?? random.next()) : random.next();
    shared.set(key, drawn);
    const at =
      truth === 'crowded late' ? Math.sqrt(drawn) : truth === 'crowded early' ? 1 - Math.sqrt(drawn) : drawn;
    return low + at * (high - low);
  });
}

console.log(
  '| finds | dates within the spans | limits, each its own | limits, made together | wholly within to possible |\n|---|---|---|---|---|',
);
for (const n of [20, 60, 200])
  for (const truth of ['each its own', 'made together', 'crowded late', 'crowded early'] as const) {
    const held = { apart: 0, together: 0, bounds: 0 };
    let of = 0;
    for (let run = 0; run < runs; run++) {
      const random = root.stream(`${n} ${truth} ${run}`);
      const entries = finds(n, random);
      const shares = new Map(entries.map((entry) => [entry, sharesOf(entry, EDGES)] as const));
      const slices = sliceCounts(entries, shares, EDGES.length - 1, 0.95);
      const dates = trueDates(entries, truth, random);
      slices.forEach(({ apart, together, sure, possible }, slice) => {
        const count = dates.filter((date) => date >= EDGES[slice] && date < EDGES[slice + 1]).length;
        of++;
        if (apart.low <= count && count <= apart.high) held.apart++;
        if (together.low <= count && count <= together.high) held.together++;
        if (sure <= count && count <= possible) held.bounds++;
      });
    }
    console.log(
      `| ${n} | ${truth} | ${share(held.apart, of)} | ${share(held.together, of)} | ${share(held.bounds, of)} |`,
    );
  }

console.log(
  '\n| finds | kinds and places | any change told | any change told within places |\n|---|---|---|---|',
);
const options = chronologyOptions.parse({ draws: 0, relabellings: 199 });
const KINDS = ['a', 'b', 'c', 'd'];
for (const n of [40, 120])
  for (const made of ['nothing changes', 'places differ in kinds and dates', 'kind a comes late'] as const) {
    let told = 0;
    let within = 0;
    for (let run = 0; run < runs; run++) {
      const random = root.stream(`change ${n} ${made} ${run}`);
      const entries = Array.from({ length: n }, (_, row): Entry => {
        const place = random.integer(4);
        const late = made === 'places differ in kinds and dates' ? place >= 2 : random.next() < 0.5;
        const [low, high] = late ? [201, 401] : [1, 201];
        const leans =
          (made === 'places differ in kinds and dates' && late) || (made === 'kind a comes late' && late);
        const kind = leans && random.next() < 0.4 ? 'a' : KINDS[random.integer(KINDS.length)];
        // Dates differ within a place as well, so that a change there could be told.
        const shift = 60 * random.next();
        return {
          row,
          item: `i${row}`,
          low: low + shift,
          high: high + shift,
          kind,
          place: String(place),
          phase: null,
        };
      });
      const kinds = KINDS.map((label) => ({
        label,
        mark: null,
        n: entries.filter(({ kind }) => kind === label).length,
      }));
      const places = { attribute: 'site', label: 'Site', of: ({ place }: Entry) => place };
      const found = changesOf(entries, kinds, [places], options, random.stream('test'));
      if (found.some((one) => one.told === 'told apart')) told++;
      if (
        found.some(
          ({ verdict }) => verdict === 'later' || verdict === 'earlier' || verdict.endsWith('within places'),
        )
      )
        within++;
    }
    console.log(`| ${n} | ${made} | ${share(told, runs)} | ${share(within, runs)} |`);
  }

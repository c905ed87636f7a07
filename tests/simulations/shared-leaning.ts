/**
 * How many lines between places are of chance, where all are draws of one source and where some lean together?
 *
 *   npm run simulate -- shared-leaning [runs], some minutes for 1000 runs.
 */
import { toldAt } from '../../src/analyses/verdicts.ts';
import { sharedLeanings } from '../../src/numerics/assemblages/shared-leaning.ts';
import { condensedIndex } from '../../src/numerics/dissimilarity/condensed.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { adjustP } from '../../src/numerics/tests/adjust.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(1000);
const root = createRandom(37);
const COMMON = [0.35, 0.25, 0.2, 0.12, 0.08];
const SHELF = [0.6, 0.2, 0.1, 0.05, 0.05];
const STRAND = [0.15, 0.2, 0.35, 0.2, 0.1];

function sample(shares: readonly number[], n: number, random: Random): Float64Array[] {
  return Array.from({ length: n }, () => {
    let left = random.next();
    const kind = shares.findIndex((share) => {
      left -= share;
      return left < 0;
    });
    return Float64Array.from(shares, (_, place) => (place === (kind < 0 ? shares.length - 1 : kind) ? 1 : 0));
  });
}

interface Scene {
  readonly name: string;
  readonly sizes: readonly number[];
  /** Source of each place; places of the common source lean nowhere. */
  readonly of: (place: number) => readonly number[];
}

const many = (n: number, of: (place: number) => number) => Array.from({ length: n }, (_, place) => of(place));
const SCENES: readonly Scene[] = [
  { name: '6 places of 20, one source', sizes: many(6, () => 20), of: () => COMMON },
  { name: '12 places of 5 to 60, one source', sizes: many(12, (i) => 5 + 5 * i), of: () => COMMON },
  {
    name: '9 places of 25: three lean one way, three the other, three nowhere',
    sizes: many(9, () => 25),
    of: (place) => [SHELF, STRAND, COMMON][place % 3],
  },
  {
    name: '8 places of 8 to 50: two lean together, six nowhere',
    sizes: many(8, (i) => 8 + 6 * i),
    of: (place) => (place % 4 === 1 ? SHELF : COMMON),
  },
];

console.log(
  '| places | runs with a false line | false among the lines drawn | true lines drawn |\n|---|---|---|---|',
);
for (const { name, sizes, of } of SCENES) {
  let withFalse = 0;
  let falseShare = 0;
  let drawnTrue = 0;
  let allTrue = 0;
  for (let run = 0; run < runs; run++) {
    const random = root.stream(`${name} ${run}`);
    const items = sizes.map((n, place) => sample(of(place), n, random));
    const { p, leaning } = sharedLeanings(
      items,
      COMMON.length,
      sizes.map(() => true),
      {
        random: random.stream('deals'),
        deals: 999,
      },
    );
    const adjusted = adjustP(Array.from(p.values), 'benjamini-hochberg');
    let right = 0;
    let wrong = 0;
    for (let first = 0; first < sizes.length; first++)
      for (let second = first + 1; second < sizes.length; second++) {
        const at = condensedIndex(sizes.length, first, second);
        const together = of(first) === of(second) && of(first) !== COMMON;
        if (together) allTrue++;
        if (toldAt(adjusted[at], 0.95) !== 'told apart' || leaning.values[at] <= 0) continue;
        if (together) right++;
        else wrong++;
      }
    if (wrong > 0) withFalse++;
    falseShare += wrong / Math.max(1, wrong + right);
    drawnTrue += right;
  }
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
  console.log(
    `| ${name} | ${percent(withFalse / runs)} | ${percent(falseShare / runs)} | ${allTrue === 0 ? '–' : percent(drawnTrue / allTrue)} |`,
  );
}

/**
 * What do the limits around the likeness of two assemblages hold? Both are drawn from populations whose likeness is
 * known; printed: how often the limits at 95 % hold that of the populations, and how far the value found lies from it on
 * average. Items of one record; the limits are those of the similarity analysis (spread of the draws about the value).
 *
 * npm run simulate -- likeness-intervals [runs]
 */
import { type ItemKinds, likenessInterval } from '../../src/numerics/assemblages/draws.ts';
import {
  assemblageSimilarity,
  type SimilarityCoefficient,
} from '../../src/numerics/assemblages/similarity.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(500);
const RESAMPLES = 399;

const POPULATIONS: Readonly<Record<string, readonly (readonly number[])[]>> = {
  equal: [
    [0.35, 0.25, 0.15, 0.12, 0.08, 0.05],
    [0.35, 0.25, 0.15, 0.12, 0.08, 0.05],
  ],
  'somewhat alike': [
    [0.35, 0.25, 0.15, 0.12, 0.08, 0.05],
    [0.2, 0.2, 0.3, 0.1, 0.15, 0.05],
  ],
  unlike: [
    [0.6, 0.25, 0.1, 0.05, 0, 0],
    [0.05, 0.1, 0.15, 0.1, 0.35, 0.25],
  ],
};
const COEFFICIENTS: readonly SimilarityCoefficient[] = ['brainerd-robinson', 'morisita-horn'];

function draw(shares: readonly number[], n: number, random: Random): ItemKinds {
  return Array.from({ length: n }, () => {
    let left = random.next();
    let kind = 0;
    while (kind < shares.length - 1 && left >= shares[kind]) left -= shares[kind++];
    return Float64Array.from(shares, (_, at) => (at === kind ? 1 : 0));
  });
}

const sum = (items: ItemKinds, columns: number) =>
  Float64Array.from({ length: columns }, (_, column) =>
    items.reduce((total, item) => total + item[column], 0),
  );

console.log(
  '| coefficient | populations | likeness of the populations | items each | limits hold it | found on average |',
);
console.log('|---|---|---|---|---|---|');
for (const coefficient of COEFFICIENTS) {
  for (const [name, [a, b]] of Object.entries(POPULATIONS)) {
    const truth = assemblageSimilarity([a, b], coefficient).values[0];
    for (const n of [15, 40, 120]) {
      const random = createRandom(11).stream(`${coefficient} ${name} ${n}`);
      let held = 0;
      let found = 0;
      for (let run = 0; run < runs; run++) {
        const [first, second] = [draw(a, n, random), draw(b, n, random)];
        found += assemblageSimilarity([sum(first, 6), sum(second, 6)], coefficient).values[0] / runs;
        const interval = likenessInterval(first, second, new Float64Array(6), {
          coefficient,
          resamples: RESAMPLES,
          confidence: 0.95,
          random,
        });
        if (!('why' in interval) && interval.low <= truth + 1e-9 && truth - 1e-9 <= interval.high) held++;
      }
      console.log(
        `| ${coefficient} | ${name} | ${Number(truth.toPrecision(3))} | ${n} | ${((100 * held) / runs).toFixed(1)} % | ${Number(found.toPrecision(3))} |`,
      );
    }
  }
}

/**
 * Should strangeness be the distance to a label's own records, or that over the distance to the records of other
 * labels? Each record of two open data sets in turn is a find among the others, once with all labels and once with
 * its own label withheld. Printed at 90 %: how often the true label is kept and how many labels are; and how often
 * a find whose label is withheld is "none of these" at 95 %.
 *
 * npm run simulate -- ratio-strangeness
 */
import { dissimilarityAt } from '../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../src/numerics/dissimilarity/dissimilarity.ts';
import { openRecords } from './parts/open-records.ts';

const NEIGHBOURS = 3;
type Strangeness = (own: number, others: number) => number;
const MEASURES: Readonly<Record<string, Strangeness>> = {
  'own distance': (own) => own,
  'ratio to others': (own, others) => own / Math.max(others, 1e-9),
};

function nearestMean(values: readonly number[]): number {
  const near = values
    .filter((value) => !Number.isNaN(value))
    .sort((a, b) => a - b)
    .slice(0, NEIGHBOURS);
  return near.length === 0 ? Number.NaN : near.reduce((sum, value) => sum + value, 0) / near.length;
}

function conformal(
  at: (a: number, b: number) => number,
  members: readonly number[],
  others: readonly number[],
  find: number,
  strangeness: Strangeness,
): number {
  const score = (one: number, fellows: readonly number[]) =>
    strangeness(
      nearestMean(fellows.filter((other) => other !== one).map((other) => at(one, other))),
      nearestMean(others.map((other) => at(one, other))),
    );
  const own = score(find, members);
  const as = members.filter((one) => score(one, [...members, find]) >= own - 1e-12).length;
  return (as + 1) / (members.length + 1);
}

console.log(
  '| data | n | strangeness | true label kept at 90 % | labels kept | withheld: none of these at 95 % | own label there: none of these |',
);
console.log('|---|---|---|---|---|---|---|');
for (const [name, of] of [
  ['iris', ['sepalLength', 'sepalWidth', 'petalLength', 'petalWidth']],
  ['penguins', ['beakLength', 'beakDepth', 'flipperLength', 'bodyMass', 'sex']],
] as const) {
  const { spec, groups: labelled } = openRecords(name, of, 'species');
  const matrix = dissimilarities(spec);
  const at = (a: number, b: number) => dissimilarityAt(matrix, a, b);
  const groups = labelled.map(({ rows }) => rows);
  for (const [measure, strangeness] of Object.entries(MEASURES)) {
    let [finds, kept, size, none, seenNone] = [0, 0, 0, 0, 0];
    groups.forEach((rows, truth) => {
      for (const find of rows) {
        const p = (label: number, withheld: boolean) => {
          const others = groups.flatMap((other, place) =>
            place === label || (withheld && place === truth) ? [] : other.filter((row) => row !== find),
          );
          return conformal(
            at,
            groups[label].filter((row) => row !== find),
            others,
            find,
            strangeness,
          );
        };
        const all = groups.map((_, label) => p(label, false));
        if (all.some(Number.isNaN)) continue;
        finds++;
        if (all[truth] > 0.1) kept++;
        size += all.filter((value) => value > 0.1).length;
        if (all.every((value) => value <= 0.05)) seenNone++;
        const rest = groups.flatMap((_, label) => (label === truth ? [] : [p(label, true)]));
        if (rest.every((value) => value <= 0.05)) none++;
      }
    });
    const share = (value: number) => `${((100 * value) / finds).toFixed(1)} %`;
    console.log(
      `| ${name} | ${finds} | ${measure} | ${share(kept)} | ${(size / finds).toFixed(2)} | ${share(none)} | ${share(seenNone)} |`,
    );
  }
}

/**
 * How often are places told apart that are draws of one source, where there are many, and how near to the chance is the curve that goes on where random deals end?
 * Sixteen invented places, 120 pairs, with as many items each of six kinds, all from one bag; told apart is any pair with p
 * adjusted after Holm of at most 0.05. Then pairs of places that differ, of three or four kinds, whose chance is known
 * exactly: what the curve says (ten times its tail), divided by that chance; below 1 it promises too much.
 *
 * npm run simulate -- many-places [runs], some 8 minutes of one core for 300.
 */
import { sameSource } from '../../src/numerics/assemblages/same-source.ts';
import { assemblageSimilarity, isDistance } from '../../src/numerics/assemblages/similarity.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { chanceBeyond } from '../../src/numerics/resampling/beyond-draws.ts';
import { shuffle } from '../../src/numerics/resampling/permutation.ts';
import { adjustP } from '../../src/numerics/tests/adjust.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(300, 'regions of each row');
const PLACES = 16;
const DEALS = 1999;
const SHARES = [0.3, 0.25, 0.2, 0.1, 0.1, 0.05];
const random = createRandom(20261201);

const itemOf = (kind: number, kinds: number) =>
  Float64Array.from({ length: kinds }, (_, at) => (at === kind ? 1 : 0));

function drawnKind(): number {
  let left = random.next();
  const kind = SHARES.findIndex((share) => {
    left -= share;
    return left < 0;
  });
  return kind < 0 ? SHARES.length - 1 : kind;
}

console.log('| places | items each | regions | any pair told apart |');
console.log('|---|---|---|---|');
for (const size of [12, 40]) {
  let told = 0;
  for (let run = 0; run < runs; run++) {
    const places = Array.from({ length: PLACES }, () =>
      Array.from({ length: size }, () => itemOf(drawnKind(), SHARES.length)),
    );
    const p = places.flatMap((first, at) =>
      places.slice(at + 1).map(
        (second, rest) =>
          sameSource(first, second, SHARES.length, 'brainerd-robinson', {
            random: random.stream(`${size} ${run} ${at} ${rest}`),
            relabellings: DEALS,
          }).p,
      ),
    );
    if (adjustP(p, 'holm').some((one) => one <= 0.05)) told++;
  }
  console.log(`| ${PLACES} | ${size} | ${runs} | ${((100 * told) / runs).toFixed(1)} % |`);
}

console.log('\n| coefficient | pairs | least | 1 in 100 | middle | below 1 |');
console.log('|---|---|---|---|---|---|');
for (const coefficient of ['brainerd-robinson', 'morisita-horn', 'chi-square'] as const) {
  const beside: number[] = [];
  for (let pair = 0; pair < 5 * runs; pair++) {
    const kinds = 3 + random.integer(2);
    const drawn = (usual: number) =>
      Array.from({ length: 6 + random.integer(30) }, () =>
        itemOf(random.next() < 0.75 ? usual : random.integer(kinds), kinds),
      );
    const [first, second] = [drawn(0), drawn(1)];
    const settings = { random: random.stream(`exact ${pair}`), relabellings: DEALS };
    const exact = sameSource(first, second, kinds, coefficient, settings);
    if (exact.method !== 'exact' || exact.p > 5e-4 || exact.p < 1e-9) continue;
    const both = [...first, ...second];
    const labels = Int32Array.from(both, (_, item) => (item < first.length ? 0 : 1));
    const unlike = () => {
      const counts = [new Float64Array(kinds), new Float64Array(kinds)];
      for (const [at, item] of both.entries())
        for (let kind = 0; kind < kinds; kind++) counts[labels[at]!]![kind]! += item[kind]!;
      return (isDistance(coefficient) ? 1 : -1) * assemblageSimilarity(counts, coefficient).values[0]!;
    };
    const observed = unlike();
    const draws = Float64Array.from({ length: DEALS }, () => {
      shuffle(labels, random);
      return unlike();
    });
    // The curve is asked only where no deal reached what was found.
    if (draws.some((value) => value >= observed - 1e-9)) continue;
    const beyond = chanceBeyond(observed, draws);
    if (beyond !== null) beside.push(beyond / exact.p);
  }
  beside.sort((a, b) => a - b);
  const at = (share: number) => beside[Math.floor(share * beside.length)]!.toPrecision(2);
  const below = beside.filter((ratio) => ratio < 1).length;
  console.log(
    `| ${coefficient} | ${beside.length} | ${at(0)} | ${at(0.01)} | ${at(0.5)} | ${below} (${((100 * below) / beside.length).toFixed(1)} %) |`,
  );
}

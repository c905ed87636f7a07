/**
 * How often do the limits of diversity hold what they are limits of? Samples are drawn from wholes whose diversity is
 * known; printed: the share of samples whose limits at 95 % hold it, and how far the estimate lies from it on average.
 *
 * npm run simulate -- diversity-limits [runs] [part of a measure's name]
 */
import { rarefiedRichness } from '../../src/numerics/assemblages/diversity.ts';
import { diversityLimits } from '../../src/numerics/assemblages/diversity-limits.ts';
import { sameKind, shannonEstimate } from '../../src/numerics/assemblages/hill.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(1000);
const ONLY = process.argv[3] ?? '';
const RESAMPLES = 199;
const KINDS = 8;

const normed = (values: readonly number[]) => {
  const sum = values.reduce((total, value) => total + value, 0);
  return values.map((value) => value / sum);
};
const WHOLES: Readonly<Record<string, readonly number[]>> = {
  even: normed(Array.from({ length: KINDS }, () => 1)),
  'falling by a third': normed(Array.from({ length: KINDS }, (_, i) => (2 / 3) ** i)),
  'falling by half': normed(Array.from({ length: KINDS }, (_, i) => 0.5 ** i)),
};

function draw(shares: readonly number[], n: number, random: Random): Float64Array {
  const counts = new Float64Array(shares.length);
  for (let i = 0; i < n; i++) {
    let left = random.next();
    let kind = 0;
    while (kind < shares.length - 1 && left >= shares[kind]) left -= shares[kind++];
    counts[kind]++;
  }
  return counts;
}

const known = (value: ReturnType<typeof sameKind>) => (typeof value === 'number' ? value : Number.NaN);

console.log(
  `| whole of ${KINDS} kinds | items | measure | truth | estimate on average | limits hold it | none given |`,
);
console.log('|---|---|---|---|---|---|---|');
for (const [name, shares] of Object.entries(WHOLES)) {
  for (const n of [10, 20, 50]) {
    const size = n / 2;
    const measures = [
      {
        label: 'Shannon',
        truth: -shares.reduce((sum, p) => sum + p * Math.log(p), 0),
        of: (c: ArrayLike<number>) => known(shannonEstimate(c)),
        bounds: [0, Number.POSITIVE_INFINITY],
      },
      {
        label: 'Simpson',
        truth: 1 - shares.reduce((sum, p) => sum + p * p, 0),
        of: (c: ArrayLike<number>) => 1 - known(sameKind(c)),
        bounds: [0, 1],
      },
      {
        label: 'dominant kinds, as a logarithm',
        truth: -Math.log(shares.reduce((sum, p) => sum + p * p, 0)),
        of: (c: ArrayLike<number>) => -Math.log(known(sameKind(c)) || Number.NaN),
        bounds: [0, Number.POSITIVE_INFINITY],
      },
      {
        label: 'rarefied to half',
        truth: shares.reduce((sum, p) => sum + 1 - (1 - p) ** size, 0),
        of: (c: ArrayLike<number>) => known(rarefiedRichness(c, size)),
        bounds: [1, Number.POSITIVE_INFINITY],
      },
      {
        label: 'rarefied to all',
        truth: shares.reduce((sum, p) => sum + 1 - (1 - p) ** n, 0),
        of: (c: ArrayLike<number>) => known(rarefiedRichness(c, n)),
        bounds: [1, Number.POSITIVE_INFINITY],
      },
    ].filter(({ label }) => label.includes(ONLY));
    const random = createRandom(16).stream(`${name} ${n}`);
    const held = measures.map(() => 0);
    const none = measures.map(() => 0);
    const mean = measures.map(() => 0);
    for (let run = 0; run < runs; run++) {
      const counts = draw(shares, n, random);
      const items = Array.from({ length: n }, () => new Float64Array(KINDS));
      const limits = diversityLimits(
        counts,
        items,
        measures.map(({ of }) => of),
        measures.map(({ bounds: [least, most] }) => [least, most] as const),
        { random, resamples: RESAMPLES, confidence: 0.95 },
      );
      limits.forEach((limit, which) => {
        const { truth, of } = measures[which];
        // Where no two items are of one kind there is no number of dominant kinds.
        mean[which] += (Number.isNaN(of(counts)) ? 0 : of(counts)) / runs;
        if ('why' in limit) none[which]++;
        else if (limit.low - 1e-9 <= truth && truth <= limit.high + 1e-9) held[which]++;
      });
    }
    measures.forEach(({ label, truth }, which) => {
      const share = (100 * held[which]) / (runs - none[which]);
      console.log(
        `| ${name} | ${n} | ${label} | ${Number(truth.toPrecision(3))} | ${Number(mean[which].toPrecision(3))} | ${share.toFixed(1)} % | ${none[which]} |`,
      );
    });
  }
}

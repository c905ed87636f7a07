/**
 * Do limits of a rank correlation hold the truth, of all pairs and pooled within groups, and how often is a relation
 * told where there is none?
 *
 *   npm run simulate -- rank-correlation-limits [runs], some minutes for 2000 runs.
 */
import { relationOf } from '../../src/analyses/threadcount/relation.ts';
import { toldAt } from '../../src/analyses/verdicts.ts';
import { normalQuantileUpper } from '../../src/numerics/foundation/distributions.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { pooledCorrelation } from '../../src/numerics/tests/rank-correlation-limits.ts';
import { spearman } from '../../src/numerics/tests/trend.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(2000);
const root = createRandom(31);
const normal = (random: Random) => normalQuantileUpper(1 - Math.max(random.next(), 1e-15));
/** Spearman's rho of a bivariate normal of this correlation (Pearson 1907, from memory): 6 / pi arcsin(r / 2). */
const truth = (r: number) => (6 / Math.PI) * Math.asin(r / 2);
const share = (count: number, of: number) => (of === 0 ? '–' : `${((100 * count) / of).toFixed(1)} %`);

/** Pairs of a normal of correlation r, counted to whole threads where `step` says so: ties as in real tables. */
function pairs(n: number, r: number, random: Random, step: number) {
  const x: number[] = [];
  const y: number[] = [];
  const rest = Math.sqrt(1 - r * r);
  const rounded = (value: number) => (step === 0 ? value : Math.round(value / step) * step);
  for (let i = 0; i < n; i++) {
    const a = normal(random);
    x.push(rounded(a));
    y.push(rounded(r * a + rest * normal(random)));
  }
  return { x, y };
}

console.log('| pairs | correlation | readings | limits at 95 % hold rho | told |\n|---|---|---|---|---|');
for (const r of [0, 0.5, 0.8])
  for (const n of [10, 20, 60])
    for (const step of [0, 0.5]) {
      let held = 0;
      let given = 0;
      let told = 0;
      for (let run = 0; run < runs; run++) {
        const { x, y } = pairs(n, r, root.stream(`one ${r} ${n} ${step} ${run}`), step);
        const found = relationOf(
          x.map((value, i) => ({ x: value, y: y[i], ratioLow: 1, ratioHigh: 1 })),
          { confidence: 0.95, random: root.stream(`orders ${r} ${n} ${step} ${run}`) },
        );
        if (found.told === 'told apart') told++;
        const { limits } = found;
        if ('why' in limits) continue;
        given++;
        if (limits.low <= truth(r) && truth(r) <= limits.high) held++;
      }
      console.log(
        `| ${n} | ${r} | ${step === 0 ? 'exact' : 'to half a deviation'} | ${share(held, given)} | ${share(told, runs)} |`,
      );
    }

console.log('\n| groups | correlation within | limits at 95 % hold rho | told |\n|---|---|---|---|');
for (const r of [0, 0.5])
  for (const sizes of [
    [6, 6, 6],
    [5, 12, 40],
    [20, 20, 20, 20],
  ]) {
    let held = 0;
    let told = 0;
    for (let run = 0; run < runs; run++) {
      const random = root.stream(`pooled ${r} ${sizes.join(' ')} ${run}`);
      const parts = sizes.flatMap((n) => {
        const { x, y } = pairs(n, r, random, 0.5);
        const found = spearman(x, y);
        return 'why' in found ? [] : [{ rho: found.statistic, n }];
      });
      const pooled = pooledCorrelation(parts, 0.95);
      if ('why' in pooled) continue;
      if (pooled.low <= truth(r) && truth(r) <= pooled.high) held++;
      if (toldAt(pooled.p, 0.95) === 'told apart') told++;
    }
    console.log(`| ${sizes.join(', ')} | ${r} | ${share(held, runs)} | ${share(told, runs)} |`);
  }

/**
 * Does the item-aware contrast keep its word? Two groups of items without any true difference; each item has 1
 * to 12 fragments (evenly), values are normal with an intra-item correlation of 0.7. Printed: how often the
 * item-aware test and the naive one (fragments as if independent) reject at 5 %, for two and for three groups,
 * and how often the 95 % interval of the median by drawing items (BCa, widened for few items) covers the true median.
 *
 * npm run simulate -- item-aware-contrast [runs] > results, some minutes for 2000 runs.
 */

import { quantileSorted } from '../../src/numerics/describing/quantile.ts';
import { normalQuantileUpper } from '../../src/numerics/foundation/distributions.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { bootstrapInterval, expandedLevel } from '../../src/numerics/resampling/bootstrap.ts';
import {
  type BlockedSample,
  blockedSample,
  blockMembers,
  gatherBlocks,
} from '../../src/numerics/tests/blocked-sample.ts';
import { blockedRankTest } from '../../src/numerics/tests/blocked-tests.ts';
import { kruskalWallis } from '../../src/numerics/tests/kruskal-wallis.ts';
import { mannWhitney } from '../../src/numerics/tests/mann-whitney.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(2000);
const CORRELATION = 0.7;
const MOST_FRAGMENTS = 12;

const normal = (random: Random) => normalQuantileUpper(1 - Math.max(random.next(), 1e-15));

function group(items: number, random: Random): BlockedSample {
  const values: number[] = [];
  const names: string[] = [];
  for (let item = 0; item < items; item++) {
    const own = Math.sqrt(CORRELATION) * normal(random);
    const fragments = 1 + random.integer(MOST_FRAGMENTS);
    for (let f = 0; f < fragments; f++) {
      values.push(own + Math.sqrt(1 - CORRELATION) * normal(random));
      names.push(String(item));
    }
  }
  return blockedSample(values, names);
}

const root = createRandom(7);
const share = (count: number) => `${((100 * count) / runs).toFixed(2)} %`;

for (const sizes of [
  [10, 10],
  [8, 20],
  [12, 12, 12],
]) {
  let aware = 0;
  let naive = 0;
  for (let run = 0; run < runs; run++) {
    const random = root.stream(`${sizes} ${run}`);
    const samples = sizes.map((items) => group(items, random));
    const dealt = blockedRankTest(samples, {
      random: random.stream('deal'),
      relabellings: 499,
      exactLimit: 0,
    });
    const values = samples.map((sample) => sample.values);
    const plain = values.length === 2 ? mannWhitney(values[0], values[1]) : kruskalWallis(values);
    if ('why' in dealt || 'why' in plain) throw new Error('a run gave no value');
    if (dealt.p <= 0.05) aware++;
    if (plain.p <= 0.05) naive++;
  }
  process.stdout.write(
    `items ${sizes.join(' and ')}: rejected item-aware ${share(aware)}, naive ${share(naive)}\n`,
  );
}

for (const items of [10, 20, 40]) {
  let covered = 0;
  let naive = 0;
  for (let run = 0; run < runs; run++) {
    const random = root.stream(`median ${items} ${run}`);
    const sample = group(items, random);
    const covers = (blocks: BlockedSample, name: string) => {
      const members = blockMembers(blocks);
      const interval = bootstrapInterval(
        [blocks.count],
        ([choice]) => quantileSorted(gatherBlocks(members, choice).sort(), 0.5),
        { random: random.stream(name), resamples: 599, level: expandedLevel(0.95, blocks.count) },
      );
      return !('why' in interval) && interval.low <= 0 && interval.high >= 0;
    };
    if (covers(sample, 'items')) covered++;
    if (
      covers(
        blockedSample(
          sample.values,
          Array.from(sample.values, (_, i) => String(i)),
        ),
        'fragments',
      )
    )
      naive++;
  }
  process.stdout.write(
    `median of ${items} items: covered drawing items ${share(covered)}, drawing fragments ${share(naive)}\n`,
  );
}

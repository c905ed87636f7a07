import type { PowerCell } from '../../src/analyses/shared/simulated/cells.ts';
import { bestOf, fallsApart, heapsOf } from '../../src/analyses/typology/split.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { isUnavailable } from '../../src/numerics/foundation/unavailable.ts';
import { sampleMixture } from '../../src/numerics/modes/mixture-parts.ts';
import {
  roundedBandwidthTest,
  roundedDipTest,
  roundedReadings,
} from '../../src/numerics/modes/rounded-tests.ts';
import { runsAsked } from './parts/runs.ts';
import { writeResults } from './parts/write-results.ts';

/**
 * How far apart must two heaps lie to be found divided in 8 samples of 10, by the tests that decide together?
 *
 *   npm run simulate -- split-power [samples a cell, default 100], some ten minutes.
 *
 * Exact readings, one spread, at 95 %. The distance is looked for by halving a list of distances, since a wider gap is
 * never harder to see; the cells looked at on the way are kept. Written to src/analyses/shared/simulated/split-power.ts,
 * from where *Type rules* and docs/methods/typology.md (`npm run simulated`) take it.
 */

const SAMPLES = runsAsked(100, 'samples a cell');
const SIZES: readonly number[] = [15, 30, 60, 120, 250];
const SHARES: readonly number[] = [0.5, 0.25, 0.1];
const DISTANCES: readonly number[] = [2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8];
const CONFIDENCE = 0.95;
const WANTED = 0.8;

/** The tests of the analysis in the order of their cost; the answer is that of all. */
function divided(values: Float64Array, random: Random): boolean {
  const readings = roundedReadings(
    values,
    values.map(() => 0),
    false,
  );
  const dip = roundedDipTest(readings, random.stream('dip'), 499);
  if (isUnavailable(dip) || dip.p > 2 * (1 - CONFIDENCE) + 1e-9) return false;
  const bandwidth = roundedBandwidthTest(readings, 1, random.stream('bandwidth'), 199);
  if (isUnavailable(bandwidth) || bandwidth.p > 1 - CONFIDENCE + 1e-9) return false;
  const [one, two] = [bestOf(readings, 1), bestOf(readings, 2)];
  if (!('why' in one) && !('why' in two) && two.bic > one.bic) return true;
  return fallsApart(heapsOf(readings, random), CONFIDENCE) === true;
}

const cells: PowerCell[] = [];
for (const share of SHARES)
  for (const n of SIZES) {
    let [low, high] = [0, DISTANCES.length];
    while (low < high) {
      const middle = Math.floor((low + high) / 2);
      const distance = DISTANCES[middle];
      let found = 0;
      for (let sample = 0; sample < SAMPLES; sample++) {
        const random = createRandom(40_000 + sample).stream(`${share} ${n} ${distance}`);
        const heaps = [
          { share, mean: 0, sd: 1 },
          { share: 1 - share, mean: distance, sd: 1 },
        ];
        if (divided(sampleMixture(heaps, n, random).sort(), random.stream('tests'))) found++;
      }
      cells.push({ n, share, distance, samples: SAMPLES, found });
      if (found >= WANTED * SAMPLES) high = middle;
      else low = middle + 1;
    }
    console.log(`share ${share}, n = ${n}: from ${DISTANCES[low] ?? 'more than 8'} standard deviations on`);
  }
cells.sort((a, b) => b.share - a.share || a.n - b.n || a.distance - b.distance);
writeResults('split-power', { name: 'SPLIT_POWER', type: 'PowerCell' }, cells);

import { fallsApart, heapsOf } from '../../src/analyses/typology/split.ts';
import { thresholdOf } from '../../src/analyses/typology/threshold.ts';
import { ln } from '../../src/numerics/foundation/elementary.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { isUnavailable } from '../../src/numerics/foundation/unavailable.ts';
import { crossing, type GaussianPart, sampleMixture } from '../../src/numerics/modes/mixture-parts.ts';
import { roundedDipTest, roundedReadings } from '../../src/numerics/modes/rounded-tests.ts';
import { runsAsked } from './parts/runs.ts';

/**
 * How often does the interval of a threshold hold the true one, and how often is a split found where
 * there is one kind, and where there are two?
 *
 *   npm run simulate -- typology-splits [samples a scenario, default 300] [start of a scenario's name] [power]
 *
 * The result is stated in docs/methods/typology.md.
 */

const SAMPLES = runsAsked(300, 'samples a scenario');
const ONLY = process.argv[3] ?? '';
/** Whether the power is counted as well, which takes longer. */
const POWER = process.argv[4] === 'power';
const RESAMPLES = 199;
const part = (share: number, mean: number, sd: number): GaussianPart => ({ share, mean, sd });
const itself = (value: number) => value;
const percent = (count: number, of: number) =>
  `${((100 * count) / of).toFixed(1)} % (simulation error ${((196 * Math.sqrt((count / of) * (1 - count / of))) / Math.sqrt(of)).toFixed(1)})`;

const exact = (values: Float64Array) =>
  roundedReadings(
    values,
    values.map(() => 0),
    false,
  );

/** Heaps are fitted only where the two tests, which must speak too, have spoken; the answer is the same. */
function splitFound(values: Float64Array, random: Random): boolean {
  const readings = exact(values);
  const dip = roundedDipTest(readings, random.stream('dip'), 999);
  if (isUnavailable(dip) || dip.p > 0.05) return false;
  return fallsApart(heapsOf(readings, random), 0.95) === true;
}

/** Row spacings in mm on a log scale: heaps about 3.5 and 27 mm as in the demo, or nearer ones. */
const two: Readonly<Record<string, { n: number; parts: readonly [GaussianPart, GaussianPart] }>> = {
  'two kinds, 4 sd apart, halves, n = 100': {
    n: 100,
    parts: [part(0.5, ln(4), 0.3), part(0.5, ln(4) + 1.2, 0.3)],
  },
  'two kinds, 4 sd apart, 3 to 7, n = 100': {
    n: 100,
    parts: [part(0.3, ln(4), 0.3), part(0.7, ln(4) + 1.2, 0.3)],
  },
  'two kinds, 5 sd apart, halves, n = 60': {
    n: 60,
    parts: [part(0.5, ln(4), 0.25), part(0.5, ln(4) + 1.25, 0.25)],
  },
  'two kinds, 5 sd apart, spreads 1 to 1.5, n = 100': {
    n: 100,
    parts: [part(0.5, ln(4), 0.2), part(0.5, ln(4) + 1.25, 0.3)],
  },
  'two kinds, 5 sd apart, spreads 1 to 2, n = 100': {
    n: 100,
    parts: [part(0.5, ln(4), 0.2), part(0.5, ln(4) + 1.6, 0.4)],
  },
};

const single: Readonly<Record<string, (random: Random) => Float64Array>> = {
  'one kind, lognormal, n = 50': (random) => sampleMixture([part(1, ln(10), 0.2)], 50, random),
  'one kind, lognormal, n = 150': (random) => sampleMixture([part(1, ln(10), 0.2)], 150, random),
  'one kind, even on the log scale, n = 100': (random) =>
    Float64Array.from({ length: 100 }, () => ln(4) + 1.5 * random.next()),
  'one kind, skewed on the log scale, n = 100': (random) =>
    Float64Array.from({ length: 100 }, () => ln(5) - 0.4 * ln(1 - random.next())),
};

for (const [name, make] of Object.entries(single)) {
  if (!name.startsWith(ONLY)) continue;
  let found = 0;
  for (let sample = 0; sample < SAMPLES; sample++) {
    const random = createRandom(500 + sample).stream(name);
    if (splitFound(make(random), random.stream('test'))) found++;
  }
  console.log(`${name}: a split is found in ${percent(found, SAMPLES)}`);
}

for (const [name, { n, parts }] of Object.entries(two)) {
  if (!name.startsWith(ONLY)) continue;
  const truth = crossing(parts[0], parts[1]);
  let held = 0;
  let found = 0;
  for (let sample = 0; sample < SAMPLES; sample++) {
    const random = createRandom(900 + sample).stream(name);
    const values = sampleMixture(parts, n, random);
    const items = Int32Array.from({ length: n }, (_, i) => i);
    const threshold = thresholdOf({
      readings: exact(values),
      items,
      resamples: RESAMPLES,
      confidence: 0.95,
      random: random.stream('threshold'),
      back: itself,
    });
    if (!isUnavailable(threshold) && threshold.low <= truth && truth <= threshold.high) held++;
    if (POWER && splitFound(values, random.stream('test'))) found++;
  }
  console.log(
    `${name}: the interval holds the truth in ${percent(held, SAMPLES)}${POWER ? `; a split is found in ${percent(found, SAMPLES)}` : ''}`,
  );
}

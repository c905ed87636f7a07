import type { ErrorCell } from '../../src/analyses/shared/simulated/cells.ts';
import { fallsApart, heapsOf } from '../../src/analyses/typology/split.ts';
import { stepOf } from '../../src/numerics/describing/reading-step.ts';
import { exp, ln, pow } from '../../src/numerics/foundation/elementary.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { isUnavailable } from '../../src/numerics/foundation/unavailable.ts';
import { standardNormal } from '../../src/numerics/modes/mixture-parts.ts';
import {
  roundedBandwidthTest,
  roundedDipTest,
  roundedReadings,
} from '../../src/numerics/modes/rounded-tests.ts';
import { runsAsked } from './parts/runs.ts';
import { writeResults } from './parts/write-results.ts';

/**
 * How often are readings of one kind, recorded coarsely, taken for two? 20 shapes x 5 steps x 4 sizes, each about 4
 * of its unit, on the logarithm; steps found from the readings alone.
 *
 *   npm run simulate -- split-errors [samples a cell, default 5], some ten minutes.
 *
 * Written to src/analyses/shared/simulated/split-errors.ts, from where *Type rules* and docs/methods/typology.md
 * (`npm run simulated`) take it.
 */

const SAMPLES = runsAsked(5, 'samples of each of 400 cells');
const STEPS: readonly number[] = [0.1, 0.25, 0.5, 1, 2];
const SIZES: readonly number[] = [30, 60, 120, 300];
const CONFIDENCE = 0.95;

const exponential = (random: Random) => -ln(1 - random.next());
const gamma = (parts: number) => (random: Random) => {
  let sum = 0;
  for (let i = 0; i < parts; i++) sum += exponential(random);
  return (4 * sum) / parts;
};
const lognormal = (sd: number) => (random: Random) => 4 * exp(sd * standardNormal(random));
const about = (draw: (random: Random) => number, sd: number) => (random: Random) =>
  Math.max(0.05, 4 + sd * draw(random));
const even = (from: number, to: number) => (random: Random) => from + (to - from) * random.next();
const sumOf = (count: number, from: number, to: number) => (random: Random) => {
  let sum = 0;
  for (let i = 0; i < count; i++) sum += even(from / count, to / count)(random);
  return sum;
};
/** All have one mode, on the plain scale and on the logarithm. */
const SHAPES: Readonly<Record<string, (random: Random) => number>> = {
  'lognormal 0.1': lognormal(0.1),
  'lognormal 0.2': lognormal(0.2),
  'lognormal 0.35': lognormal(0.35),
  'lognormal 0.5': lognormal(0.5),
  'lognormal 0.8': lognormal(0.8),
  'normal 0.4': about(standardNormal, 0.4),
  'normal 0.8': about(standardNormal, 0.8),
  'normal 1.2': about(standardNormal, 1.2),
  'even 3 to 5': even(3, 5),
  'even 2 to 6': even(2, 6),
  'even 1 to 8': even(1, 8),
  'even on the log scale': (random) => 1.5 * exp(1.8 * random.next()),
  'triangle 1 to 7': sumOf(2, 1, 7),
  'sum of three': sumOf(3, 1, 7),
  exponential: gamma(1),
  'gamma 2': gamma(2),
  'gamma 4': gamma(4),
  'gamma 9': gamma(9),
  'Weibull 2': (random) => 4.5 * pow(exponential(random), 0.5),
  Laplace: about((random) => exponential(random) - exponential(random), 0.5),
};

/** The tests of the analysis in the order of their cost; the answer is that of all. */
function divided(values: Float64Array, random: Random): boolean {
  const step = stepOf(values);
  const readings = roundedReadings(
    values,
    values.map(() => step),
    true,
  );
  const dip = roundedDipTest(readings, random.stream('quick'), 99);
  if (isUnavailable(dip) || dip.p > 0.2) return false;
  const bandwidth = roundedBandwidthTest(readings, 1, random.stream('quick bandwidth'), 49);
  if (isUnavailable(bandwidth) || bandwidth.p > 0.3) return false;
  return fallsApart(heapsOf(readings, random), CONFIDENCE) === true;
}

const cells: ErrorCell[] = [];
for (const [shape, draw] of Object.entries(SHAPES))
  for (const n of SIZES) {
    let found = 0;
    for (const step of STEPS)
      for (let sample = 0; sample < SAMPLES; sample++) {
        const random = createRandom(7000 + sample).stream(`${shape} ${step} ${n}`);
        const values = Float64Array.from({ length: n }, () =>
          Math.max(step, Math.round(draw(random) / step) * step),
        );
        if (divided(values, random.stream('tests'))) found++;
      }
    cells.push({ shape, n, samples: STEPS.length * SAMPLES, found });
    console.log(`${shape}, n = ${n}: taken for two in ${found} of ${STEPS.length * SAMPLES}`);
  }
writeResults('split-errors', { name: 'SPLIT_ERRORS', type: 'ErrorCell' }, cells);

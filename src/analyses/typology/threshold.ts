import { quantileSorted } from '../../numerics/describing/quantile.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { gaussianMixture } from '../../numerics/modes/gaussian-mixture.ts';
import { crossing, sampleMixture } from '../../numerics/modes/mixture-parts.ts';
import { DRAWS_AGREE, drawsAgree, expandedTail } from '../../numerics/resampling/bootstrap.ts';
import type { Unavailable } from '../contract.ts';
import type { CutAnswer, Threshold } from './found.ts';

/** A cut that parts all but one reading in so many as the threshold does agrees with it. */
const ONE_IN = 50;
/** Looser than a single fit needs: the sampling error is larger by far. */
const QUICK = 1e-6;
const SHUFFLES = 199;

/**
 * Where two parts of one spread cross, and how far that moves when items are drawn again; each draw starts
 * from the parts of the whole. `back` leads from the scale of the fit to that of the reader.
 *
 * @param items item of each value, 0 …: values of one item are drawn together.
 */
export function thresholdOf(
  values: Float64Array,
  items: Int32Array,
  random: Random,
  resamples: number,
  back: (value: number) => number,
): Threshold | Unavailable {
  const whole = gaussianMixture(values, 2, { spread: 'equal' });
  if ('why' in whole) return whole;
  const members: number[][] = [];
  items.forEach((item, place) => {
    members[item] = [...(members[item] ?? []), values[place]];
  });
  const drawn: number[] = [];
  for (let i = 0; i < resamples; i++) {
    const sample = members.flatMap(() => members[random.integer(members.length)]);
    const fit = gaussianMixture(sample, 2, { spread: 'equal', from: whole.parts, tolerance: QUICK });
    if (!('why' in fit)) drawn.push(crossing(fit.parts[0], fit.parts[1]));
  }
  if (drawn.length === 0 || members.length < 2) return { why: 'no sample drawn again could be fitted' };
  const sorted = Float64Array.from(drawn).sort();
  if (drawsAgree(sorted)) return DRAWS_AGREE;
  const tail = expandedTail(0.95, members.length);
  return {
    estimate: back(crossing(whole.parts[0], whole.parts[1])),
    low: back(quantileSorted(sorted, tail, 6)),
    high: back(quantileSorted(sorted, 1 - tail, 6)),
    distance: (whole.parts[1].mean - whole.parts[0].mean) / whole.parts[0].sd,
  };
}

/**
 * Does each cut agree with the threshold? It does within the interval, and outside it too where at most one
 * reading in fifty lies between: an empty stretch tells nothing of where in it the limit is.
 */
export function cutAnswers(
  values: ArrayLike<number>,
  cuts: readonly number[],
  { estimate, low, high }: Threshold,
): CutAnswer[] {
  const n = values.length;
  return cuts.map((cut) => {
    const from = Math.min(cut, estimate);
    const to = Math.max(cut, estimate);
    const between = Array.from(values).filter((value) => value >= from && value < to).length;
    const within = cut >= low && cut <= high;
    return { cut, within, between, n, agrees: within || between * ONE_IN <= n };
  });
}

/** Two parts against one: likelihood ratio against samples from the single part (McLachlan 1987, Appl. Stat. 36:318). */
export function twoAgainstOne(
  values: Float64Array,
  random: Random,
): { statistic: number; p: number } | Unavailable {
  const single = gaussianMixture(values, 1, { spread: 'equal' });
  if ('why' in single) return single;
  const statistic = likelihoodRatio(values);
  if (statistic === undefined) return { why: 'two parts could not be fitted' };
  let reached = 0;
  for (let i = 0; i < SHUFFLES; i++) {
    const drawn = likelihoodRatio(sampleMixture(single.parts, values.length, random), QUICK);
    if (drawn !== undefined && drawn >= statistic) reached++;
  }
  return { statistic, p: (reached + 1) / (SHUFFLES + 1) };
}

/** Twice the gain in log-likelihood of two parts of one spread over one; undefined where none can be fitted. */
export function likelihoodRatio(sample: Float64Array, tolerance?: number): number | undefined {
  const one = gaussianMixture(sample, 1, { spread: 'equal' });
  const two = gaussianMixture(sample, 2, {
    spread: 'equal',
    ...(tolerance === undefined ? {} : { tolerance }),
  });
  return 'why' in one || 'why' in two ? undefined : 2 * (two.logLikelihood - one.logLikelihood);
}

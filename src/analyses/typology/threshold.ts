import { quantileSorted } from '../../numerics/describing/quantile.ts';
import type { Limits } from '../../numerics/foundation/limits.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { GaussianMixture } from '../../numerics/modes/gaussian-mixture.ts';
import { type Intervals, intervalMixture } from '../../numerics/modes/interval-mixture.ts';
import { crossing, type GaussianPart, otherCrossing } from '../../numerics/modes/mixture-parts.ts';
import { DRAWS_AGREE, drawsAgree, expandedTail } from '../../numerics/resampling/bootstrap.ts';
import type { Unavailable } from '../contract.ts';
import type { CutAnswer, Threshold } from './split-found.ts';

/** A cut that parts all but one reading in so many as the threshold does agrees with it. */
const ONE_IN = 50;
/** Looser than a single fit needs: the sampling error is larger by far. */
const QUICK = 1e-6;
/** A second crossing is reported when it is there in this share of the samples drawn again. */
const MOSTLY = 0.5;

export interface ThresholdRequest {
  readonly readings: Intervals;
  /** Item of each reading, 0 …: readings of one item are drawn together. */
  readonly items: Int32Array;
  readonly resamples: number;
  readonly confidence: number;
  readonly random: Random;
  /** From the scale of the fit to that of the reader. */
  readonly back: (value: number) => number;
}

/**
 * Where two parts cross, and how far that moves when items are drawn again. Parts of one spread and parts with
 * their own are both fitted, to the whole and to each sample, and the better by BIC is taken, so that the interval
 * also holds the doubt which of the two is right. Where the wider part surrounds the other it crosses it twice.
 */
export function thresholdOf(request: ThresholdRequest): Threshold | Unavailable {
  const { readings, items, resamples, confidence, random, back } = request;
  const fits = (['equal', 'own'] as const).map((spread) => intervalMixture(readings, 2, { spread }));
  const whole = betterOf(fits);
  if ('why' in whole) return whole;
  const members: number[][] = [];
  items.forEach((item, place) => {
    members[item] = [...(members[item] ?? []), place];
  });
  const first: number[] = [];
  const second: number[] = [];
  for (let draw = 0; draw < resamples; draw++) {
    const taken = members.flatMap(() => members[random.integer(members.length)]);
    const sample = { low: picked(readings.low, taken), high: picked(readings.high, taken) };
    const again = betterOf(
      fits.map((fit) =>
        'why' in fit
          ? fit
          : intervalMixture(sample, 2, { spread: fit.spread, from: fit.parts, tolerance: QUICK }),
      ),
    );
    if ('why' in again) continue;
    first.push(crossing(again.parts[0], again.parts[1]));
    const other = secondWithin(again.parts, sample);
    if (other !== null) second.push(other);
  }
  if (first.length === 0 || members.length < 2) return { why: 'no sample drawn again could be fitted' };
  const limits = limitsOf(first, members.length, confidence);
  if ('why' in limits) return limits;
  const estimate = crossing(whole.parts[0], whole.parts[1]);
  const inUnit = (at: number, { low, high }: Limits): Limits & { estimate: number } => ({
    estimate: back(at),
    low: back(low),
    high: back(high),
  });
  const other = secondWithin(whole.parts, readings);
  const otherLimits =
    other === null || second.length < MOSTLY * first.length
      ? null
      : limitsOf(second, members.length, confidence);
  const [a, b] = whole.parts;
  return {
    ...inUnit(estimate, limits),
    second:
      other === null || otherLimits === null || 'why' in otherLimits ? null : inUnit(other, otherLimits),
    spread: whole.spread,
    distance: (b.mean - a.mean) / Math.sqrt((a.sd * a.sd + b.sd * b.sd) / 2),
    gap: gapAt(readings, estimate, limits, back),
  };
}

function picked(values: Float64Array, places: readonly number[]): Float64Array {
  const taken = new Float64Array(places.length);
  for (let i = 0; i < places.length; i++) taken[i] = values[places[i]];
  return taken;
}

function betterOf(fits: readonly (GaussianMixture | Unavailable)[]): GaussianMixture | Unavailable {
  return fits.reduce((best, fit) => ('why' in fit || (!('why' in best) && best.bic >= fit.bic) ? best : fit));
}

function limitsOf(draws: readonly number[], items: number, confidence: number): Limits | Unavailable {
  const sorted = Float64Array.from(draws).sort();
  if (drawsAgree(sorted)) return DRAWS_AGREE;
  const tail = expandedTail(confidence, items);
  return { low: quantileSorted(sorted, tail, 6), high: quantileSorted(sorted, 1 - tail, 6) };
}

/** The second crossing of two parts, where a reading lies beyond it. */
function secondWithin([a, b]: readonly GaussianPart[], { low, high }: Intervals): number | null {
  const other = otherCrossing(a, b);
  if (other === null) return null;
  const beyond =
    other < a.mean
      ? low.some((value, i) => (value + high[i]) / 2 < other)
      : high.some((value, i) => (value + low[i]) / 2 > other);
  return beyond ? other : null;
}

/** The stretch without readings about a crossing, where its whole interval lies in it; null otherwise. */
function gapAt(
  { low, high }: Intervals,
  at: number,
  limits: Limits,
  back: (value: number) => number,
): Limits | null {
  let below = -Infinity;
  let above = Infinity;
  for (let i = 0; i < low.length; i++) {
    const middle = (low[i] + high[i]) / 2;
    if (middle <= at) below = Math.max(below, middle);
    else above = Math.min(above, middle);
  }
  if (!(below < limits.low && above > limits.high) || !Number.isFinite(below) || !Number.isFinite(above))
    return null;
  return { low: back(below), high: back(above) };
}

/**
 * Does each cut agree with the threshold? It does within the interval, anywhere in a stretch without readings, and
 * outside it too where at most one reading in fifty lies between.
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

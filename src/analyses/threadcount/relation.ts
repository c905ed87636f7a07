import { quantileSorted } from '../../numerics/describing/quantile.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { midranks } from '../../numerics/foundation/ranks.ts';
import { countRelabellings, permutationTest } from '../../numerics/resampling/permutation.ts';
import { medianLimits } from '../../numerics/tests/median-limits.ts';
import { correlationLimits } from '../../numerics/tests/rank-correlation-limits.ts';
import { spearman } from '../../numerics/tests/trend.ts';
import { toldAt } from '../verdicts.ts';
import type { Ratio, RecordPoint, Relation } from './found.ts';

/** From so many pairs on Student's t gives the p of Spearman's rho; below, all or many orders are tried. */
const FEWEST_FOR_T = 20;

/** One pair of values an original object: the medians of its records, so that fragments of one do not count twice. */
export interface ItemPair {
  readonly x: number;
  readonly y: number;
  /** The same by the ends of the readings; the median of their ends. */
  readonly ratioLow: number;
  readonly ratioHigh: number;
}

export function itemPairs(
  points: readonly RecordPoint[],
  itemOf: (point: RecordPoint) => string,
): ItemPair[] {
  return pointsByItem(points, itemOf).map((list) => ({
    x: middle(list.map(({ x }) => x.point)),
    y: middle(list.map(({ y }) => y.point)),
    ratioLow: middle(list.map(({ x, y }) => x.low / y.high)),
    ratioHigh: middle(list.map(({ x, y }) => x.high / y.low)),
  }));
}

/** The records of each original object, in the order in which the objects first come. */
export function pointsByItem(
  points: readonly RecordPoint[],
  itemOf: (point: RecordPoint) => string,
): readonly (readonly RecordPoint[])[] {
  const members = new Map<string, RecordPoint[]>();
  for (const point of points) {
    const item = itemOf(point);
    const list = members.get(item);
    if (list === undefined) members.set(item, [point]);
    else list.push(point);
  }
  return [...members.values()];
}

/** Type 7. */
export function middle(values: readonly number[]): number {
  return values.length === 1 ? values[0] : quantileSorted(Float64Array.from(values).sort(), 0.5);
}

export const spearmanOf = (pairs: readonly ItemPair[]) =>
  spearman(
    pairs.map(({ x }) => x),
    pairs.map(({ y }) => y),
  );

export function relationOf(
  pairs: readonly ItemPair[],
  { confidence, random }: { readonly confidence: number; readonly random: Random },
): Relation {
  const x = pairs.map((pair) => pair.x);
  const y = pairs.map((pair) => pair.y);
  const found = spearman(x, y);
  const n = pairs.length;
  if ('why' in found) return { n, rho: found, limits: found, p: found, method: '', told: 'cannot be told' };
  const { p, method } = n >= FEWEST_FOR_T ? { p: found.p, method: 'Student’s t' } : byOrders(x, y, random);
  return {
    n,
    rho: found.statistic,
    limits: correlationLimits(found.statistic, n, confidence),
    p,
    method,
    told: toldAt(p, confidence),
  };
}

function byOrders(x: readonly number[], y: readonly number[], random: Random): { p: number; method: string } {
  const places = Int32Array.from(midranks(y).ranks, (rank) => Math.round(2 * rank));
  const own = midranks(x).ranks;
  const mean = (x.length + 1) / 2;
  const test = permutationTest(
    places,
    (labels) => {
      let sum = 0;
      for (let i = 0; i < labels.length; i++) sum += (own[i] - mean) * (labels[i] / 2 - mean);
      return Math.abs(sum);
    },
    { random },
  );
  return {
    p: test.p,
    method:
      test.method === 'exact'
        ? `exact, all ${countRelabellings(places)} orders`
        : `${test.relabellings} random orders`,
  };
}

export function ratioOf(pairs: readonly ItemPair[], confidence: number): Ratio {
  const usable = pairs.filter(({ x, y }) => x > 0 && y > 0);
  const ratios = usable.map(({ x, y }) => x / y);
  if (ratios.length === 0) {
    const why = { why: 'no pair of values above 0' };
    return { n: 0, median: why, limits: why, bounds: why, greater: 'cannot be told' };
  }
  const limits = medianLimits(ratios, confidence);
  const low = middle(usable.map(({ ratioLow }) => ratioLow));
  const high = middle(usable.map(({ ratioHigh }) => ratioHigh));
  return {
    n: ratios.length,
    median: middle(ratios),
    limits,
    bounds: Number.isFinite(low) && Number.isFinite(high) ? { low, high } : { why: 'open-ended' },
    greater:
      'why' in limits ? 'cannot be told' : limits.low > 1 ? 'first' : limits.high < 1 ? 'second' : 'neither',
  };
}

import { densitySurface, heightsHolding } from '../../numerics/describing/density-surface.ts';
import { quantileSorted } from '../../numerics/describing/quantile.ts';
import { exp, ln } from '../../numerics/foundation/elementary.ts';
import { type RankCorrelation, spearman } from '../../numerics/tests/trend.ts';
import type { AnalysisInput } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import type { End, RecordPoint, Relation, ThreadcountFound } from './found.ts';
import type { ThreadcountOptions } from './options.ts';
import { middle, pointsByItem } from './relation.ts';

/** The densest parts of the plane that the contours hold. */
const HELD = [0.5, 0.9];
const GRID = 48;

export const isRange = ({ low, high }: End) => low !== high;

/** Draws in which the verdict is another one, from which on it counts as hanging on the ranges. */
const OFTEN = 0.05;

/** The relation again for values drawn evenly within the ranges of the readings. */
export function drawnWithin(
  input: AnalysisInput,
  points: readonly RecordPoint[],
  itemOf: (point: RecordPoint) => string,
  all: Relation,
  { draws, confidence }: ThreadcountOptions,
): ThreadcountFound['drawn'] {
  const closed = points.filter((point) => !point.x.openEnded && !point.y.openEnded);
  if (draws === 0) return { why: 'not asked for' };
  if (!closed.some((point) => isRange(point.x) || isRange(point.y))) return { why: 'no reading is a range' };
  const random = input.random.stream('ranges');
  const within = ({ low, high, point, openEnded }: End) =>
    openEnded || low === high ? point : low + random.next() * (high - low);
  const items = pointsByItem(points, itemOf);
  const x = new Float64Array(items.length);
  const y = new Float64Array(items.length);
  const found: RankCorrelation[] = [];
  for (let draw = 0; draw < draws; draw++) {
    for (let item = 0; item < items.length; item++) {
      const list = items[item];
      x[item] = list.length === 1 ? within(list[0].x) : middle(list.map((point) => within(point.x)));
      y[item] = list.length === 1 ? within(list[0].y) : middle(list.map((point) => within(point.y)));
    }
    const one = spearman(x, y);
    if (!('why' in one)) found.push(one);
  }
  if (found.length === 0 || typeof all.rho !== 'number') return { why: 'no draw has a rank correlation' };
  const sign = Math.sign(all.rho);
  const otherwise = found.filter(
    ({ p, statistic }) =>
      toldAt(p, confidence) !== all.told || (all.told === 'told apart' && Math.sign(statistic) !== sign),
  ).length;
  const sorted = Float64Array.from(found, ({ statistic }) => statistic).sort();
  return {
    low: quantileSorted(sorted, (1 - confidence) / 2),
    high: quantileSorted(sorted, (1 + confidence) / 2),
    otherwise,
    draws: found.length,
    overturns: otherwise > OFTEN * found.length,
  };
}

/** How densely the points lie, by the logarithms where ratios are drawn as distances. */
export function contoursOf(
  points: readonly RecordPoint[],
  logarithmic: boolean,
): ThreadcountFound['contours'] {
  const scaled = (value: number) => (logarithmic ? ln(value) : value);
  const x = points.map((point) => scaled(point.x.point));
  const y = points.map((point) => scaled(point.y.point));
  const surface = densitySurface(x, y, GRID);
  const levels = heightsHolding(surface, x, y, HELD);
  const back = (at: number) => (logarithmic ? exp(at) : at);
  return { surface: { ...surface, x: surface.x.map(back), y: surface.y.map(back) }, levels };
}

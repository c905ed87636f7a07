import { groupRows } from '../../fragments/groups.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import { addTo } from '../../numerics/foundation/lists.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { AnalysisInput } from '../contract.ts';
import type { Axes, Centre } from './found.ts';
import type { OrdinationOptions } from './options.ts';

/** Fewest members for a hull or an ellipse. */
const FEWEST = 5;

/** The labels of the attribute that symbols show, as supplementary points; items are drawn as wholes. */
export function centresOf(input: AnalysisInput, axes: Axes, options: OrdinationOptions): readonly Centre[] {
  if (options.by === undefined || axes.rows.length === 0) return [];
  const { groups } = groupRows(input.records, [options.by], input.register);
  return groups.flatMap(({ labels, rows }) =>
    [false, true].flatMap((passive) => centreOf(input, axes, options, labels[0], rows, passive)),
  );
}

function centreOf(
  input: AnalysisInput,
  axes: Axes,
  options: OrdinationOptions,
  label: string,
  rows: ArrayLike<number>,
  passive: boolean,
): readonly Centre[] {
  const places = passive ? axes.passive : axes.records;
  const rowsOfPlaces = passive ? axes.passiveRows : axes.rows;
  const wanted = new Set(Array.from(rows));
  const members = rowsOfPlaces.flatMap((row, place) => (wanted.has(row) ? [place] : []));
  if (members.length === 0) return [];
  const points = members.map((place) => places[place].at);
  const at = points[0].map((_, k) => points.reduce((sum, point) => sum + point[k] / points.length, 0));
  const flat = points.map(([x, y]) => [x, y ?? 0] as const);
  const enough = members.length >= FEWEST;
  const items = members.map((place) => input.records.item[rowsOfPlaces[place]]);
  const stream = `${passive ? 'supplementary ' : ''}centre/${label}`;
  const ellipse =
    enough && options.resamples > 0 ? ellipseOf(flat, items, options, input.random.stream(stream)) : [];
  return [{ label, passive, members, at, hull: enough ? convexHull(flat) : [], ellipse }];
}

/** Convex hull, counter-clockwise (Andrew 1979, Inf. Process. Lett. 9:216). */
export function convexHull(points: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (order: readonly (readonly [number, number])[]) => {
    const chain: (readonly [number, number])[] = [];
    for (const point of order) {
      while (chain.length > 1 && turn(chain[chain.length - 2], chain[chain.length - 1], point) <= 0)
        chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

function turn(
  a: readonly [number, number],
  b: readonly [number, number],
  c: readonly [number, number],
): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function ellipseOf(
  points: readonly (readonly [number, number])[],
  items: readonly string[],
  { resamples, confidence }: OrdinationOptions,
  random: Random,
): (readonly [number, number])[] {
  const wholes = new Map<string, number[]>();
  items.forEach((item, place) => {
    addTo(wholes, item, place);
  });
  const clusters = [...wholes.values()];
  const means = Array.from({ length: resamples }, () => {
    const drawn = clusters.flatMap(() => clusters[random.integer(clusters.length)]);
    const mean = (side: 0 | 1) => drawn.reduce((sum, place) => sum + points[place][side] / drawn.length, 0);
    return [mean(0), mean(1)] as const;
  });
  const centre = [0, 1].map((side) => means.reduce((sum, mean) => sum + mean[side] / resamples, 0));
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of means) {
    xx += ((x - centre[0]) * (x - centre[0])) / resamples;
    xy += ((x - centre[0]) * (y - centre[1])) / resamples;
    yy += ((y - centre[1]) * (y - centre[1])) / resamples;
  }
  // Cholesky factor of the covariance turns the circle of radius sqrt(chi-square) into the ellipse.
  const a = Math.sqrt(xx);
  if (!(a > 0)) return [];
  const b = xy / a;
  const c = Math.sqrt(Math.max(0, yy - b * b));
  // The quantile of chi-square with 2 degrees of freedom.
  const radius = Math.sqrt(-2 * ln(1 - confidence));
  return circle(12).map(
    ([x, y]) => [centre[0] + radius * a * x, centre[1] + radius * (b * x + c * y)] as const,
  );
}

/** Points of the unit circle by its rational form, exact on every machine: 4 * steps of them, closed. */
function circle(steps: number): (readonly [number, number])[] {
  const quarter = Array.from({ length: steps }, (_, i): [number, number] => {
    const t = i / steps;
    return [(1 - t * t) / (1 + t * t), (2 * t) / (1 + t * t)];
  });
  const turns: ((point: [number, number]) => readonly [number, number])[] = [
    ([x, y]) => [x, y],
    ([x, y]) => [-y, x],
    ([x, y]) => [-x, -y],
    ([x, y]) => [y, -x],
  ];
  const points = turns.flatMap((rotate) => quarter.map(rotate));
  return [...points, points[0]];
}

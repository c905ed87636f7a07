import { GROUND } from '../../../analyses/shared/figure/colours.ts';
import { axisOf } from '../axes.ts';
import { strokeOf } from '../colours.ts';
import { type Frame, scaleOf } from '../frame.ts';
import { linePath, type Mark } from '../marks.ts';
import { list, numberOr, type Plain, part } from '../plain.ts';
import { pixelOf } from '../scale.ts';

/** More levels than this are a mistake in the figure. */
const MOST_LEVELS = 50;

/**
 * Lines of equal height through a grid of heights, straight across each cell between the places where its edges
 * reach the height (marching squares; a saddle is parted by the mean of its corners).
 */
export function drawContours(trace: Plain, frame: Frame): readonly Mark[] {
  const [x, y] = [scaleOf(frame, axisOf(trace, 'x')), scaleOf(frame, axisOf(trace, 'y'))];
  const heights = list(trace.z).map((row) => list(row).map((z) => (typeof z === 'number' ? z : Number.NaN)));
  const columns = (heights[0] ?? []).map((_, at) => pixelOf(x, list(trace.x)[at] ?? at));
  const rows = heights.map((_, at) => pixelOf(y, list(trace.y)[at] ?? at));
  const path = levelsOf(part(trace, 'contours'))
    .flatMap((height) => heights.slice(1).map((_, row) => cellsOf(heights, columns, rows, row, height)))
    .join('');
  return path === '' ? [] : [{ path, ...strokeOf(part(trace, 'line'), GROUND.ink, 1) }];
}

function levelsOf({ start, end, size }: Plain): readonly number[] {
  const [from, to] = [numberOr(start, 0), numberOr(end, 0)];
  const step = numberOr(size, 0);
  const count = from === to || step <= 0 ? 1 : Math.floor(Math.abs(to - from) / step + 1e-9) + 1;
  return Array.from(
    { length: Math.min(count, MOST_LEVELS) },
    (_, at) => from + Math.sign(to - from) * at * step,
  );
}

function cellsOf(
  heights: readonly (readonly number[])[],
  columns: readonly number[],
  rows: readonly number[],
  row: number,
  height: number,
): string {
  return columns
    .slice(1)
    .map((_, column) => {
      const corners = [
        [heights[row][column], columns[column], rows[row]],
        [heights[row][column + 1], columns[column + 1], rows[row]],
        [heights[row + 1][column + 1], columns[column + 1], rows[row + 1]],
        [heights[row + 1][column], columns[column], rows[row + 1]],
      ] as const;
      if (!corners.every((corner) => corner.every(Number.isFinite))) return '';
      const crossings = corners.flatMap(([z, px, py], at) => {
        const [nextZ, nextX, nextY] = corners[(at + 1) % 4];
        if (z >= height === nextZ >= height) return [];
        const share = (height - z) / (nextZ - z);
        return [[px + share * (nextX - px), py + share * (nextY - py)] as const];
      });
      if (crossings.length === 2) return linePath(crossings);
      if (crossings.length !== 4) return '';
      const mean = corners.reduce((sum, [z]) => sum + z, 0) / 4;
      const [a, b, c, d] = crossings;
      return mean >= height === corners[0][0] >= height
        ? linePath([a, b]) + linePath([c, d])
        : linePath([d, a]) + linePath([b, c]);
    })
    .join('');
}

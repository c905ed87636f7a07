import type { Box } from './marks.ts';

/** Tenths of a pixel, finer than hatching is seen and shorter than the measure of other marks. */
function point(x: number, y: number): string {
  return `${Math.round(10 * x) / 10 || 0} ${Math.round(10 * y) / 10 || 0}`;
}

/** Hatching of a rectangle, cut off at its edges: lines for `/ \ - | x +`, dots for `.`. */
export function hatchPath(shape: string, box: Box, size: number, heavy: number): string {
  switch (shape) {
    case '/':
      return slanted(box, size, 1);
    case '\\':
      return slanted(box, size, -1);
    case 'x':
      return slanted(box, size, 1) + slanted(box, size, -1);
    case '-':
      return level(box, size);
    case '|':
      return upright(box, size);
    case '+':
      return level(box, size) + upright(box, size);
    default:
      return dots(box, size, heavy);
  }
}

function places(from: number, length: number, size: number): readonly number[] {
  const first = Math.ceil(from / size);
  const last = Math.floor((from + length) / size);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => (first + at) * size);
}

function level({ x, y, width, height }: Box, size: number): string {
  return places(y, height, size)
    .map((at) => `M${point(x, at)}L${point(x + width, at)}`)
    .join('');
}

function upright({ x, y, width, height }: Box, size: number): string {
  return places(x, width, size)
    .map((at) => `M${point(at, y)}L${point(at, y + height)}`)
    .join('');
}

/** Lines x + way * y = constant, cut by the rectangle. */
function slanted({ x, y, width, height }: Box, size: number, way: 1 | -1): string {
  const [least, most] = way === 1 ? [x + y, x + y + width + height] : [x - y - height, x + width - y];
  return places(least, most - least, size)
    .map((sum) => {
      const from = Math.max(x, way === 1 ? sum - y - height : sum + y);
      const to = Math.min(x + width, way === 1 ? sum - y : sum + y + height);
      return to - from < 0.05 ? '' : `M${point(from, (sum - from) * way)}L${point(to, (sum - to) * way)}`;
    })
    .join('');
}

function dots({ x, y, width, height }: Box, size: number, heavy: number): string {
  const r = Math.max(0.6, heavy * 0.6);
  const rows = places(y + r, height - 2 * r, size);
  return places(x + r, width - 2 * r, size)
    .flatMap((at) => rows.map((row) => diamond(at, row, r)))
    .join('');
}

function diamond(x: number, y: number, r: number): string {
  return `M${point(x, y - r)}L${point(x + r, y)}L${point(x, y + r)}L${point(x - r, y)}Z`;
}

import { greatest, least } from '../../../numerics/foundation/lists.ts';
import { type Axis, axisOf, type Extent } from '../axes.ts';
import { type ColourScale, colourScale, hexOf, inkOn } from '../colours.ts';
import { type Frame, scaleOf } from '../frame.ts';
import { lettering, MIDDLE, widthOf } from '../lettering.ts';
import { boxPath, type Mark } from '../marks.ts';
import { each, list, numberOr, type Plain, part, textOr } from '../plain.ts';
import { pixel, placeOn } from '../scale.ts';

/** More cells than this are drawn as one picture of dots, in which nobody could point at a single cell. */
const MOST_CELLS = 1500;

/** The edges between cells: half way from one to the next. */
function edgesOf(
  values: readonly unknown[],
  count: number,
  axis: Pick<Axis, 'kind' | 'categories'>,
): readonly number[] {
  const own = Array.from({ length: count }, (_, at) =>
    values.length === 0 ? at : placeOn(axis, values[at]),
  );
  const first = own[0] - ((own[1] ?? own[0] + 1) - own[0]) / 2;
  const last = (own.at(-1) ?? 0) + ((own.at(-1) ?? 0) - (own.at(-2) ?? (own.at(-1) ?? 0) - 1)) / 2;
  return [first, ...own.slice(1).map((at, place) => (at + own[place]) / 2), last];
}

function gridOf(trace: Plain): readonly (readonly unknown[])[] {
  return list(trace.z).map(list);
}

export function heatExtents(trace: Plain, axes: ReadonlyMap<string, Axis>): readonly Extent[] {
  const rows = gridOf(trace);
  return (['x', 'y'] as const).flatMap((letter) => {
    const axis = axes.get(axisOf(trace, letter));
    if (axis === undefined || rows.length === 0) return [];
    const edges = edgesOf(list(trace[letter]), letter === 'y' ? rows.length : rows[0].length, axis);
    // Lines of equal height end at the outermost points of the grid, cells half a step beyond.
    const grid = list(trace[letter]).map((value) => placeOn(axis, value));
    const ends = trace.type === 'contour' && grid.length > 1 ? grid : [edges[0], edges.at(-1) ?? 0];
    return [{ axis: axis.id, low: least(ends), high: greatest(ends), beyond: 0, airy: false }];
  });
}

/** The colours of a trace of numbers, by the limits that it names or those of its numbers. */
export function heatScale(trace: Plain): ColourScale {
  const values = gridOf(trace).flatMap((row) => row.filter((z): z is number => typeof z === 'number'));
  const least = values.reduce((low, z) => Math.min(low, z), Number.POSITIVE_INFINITY);
  const most = values.reduce((high, z) => Math.max(high, z), Number.NEGATIVE_INFINITY);
  return colourScale(
    trace.colorscale,
    numberOr(trace.zmin, least),
    numberOr(trace.zmax, most),
    trace.reversescale,
  );
}

export function drawHeat(trace: Plain, frame: Frame): readonly Mark[] {
  const rows = gridOf(trace);
  if (rows.length === 0) return [];
  const [x, y] = [scaleOf(frame, axisOf(trace, 'x')), scaleOf(frame, axisOf(trace, 'y'))];
  const columns = edgesOf(list(trace.x), rows[0].length, x).map((own) => pixel(x, own));
  const lines = edgesOf(list(trace.y), rows.length, y).map((own) => pixel(y, own));
  const scale = heatScale(trace);
  if (rows.length * rows[0].length > MOST_CELLS) return [asPicture(rows, columns, lines, scale)];
  const [xgap, ygap] = [numberOr(trace.xgap, 0), numberOr(trace.ygap, 0)];
  return rows.flatMap((row, i) =>
    row.flatMap((z, j): readonly Mark[] => {
      if (typeof z !== 'number') return [];
      const box = {
        x: Math.min(columns[j], columns[j + 1]) + xgap / 2,
        y: Math.min(lines[i], lines[i + 1]) + ygap / 2,
        width: Math.abs(columns[j + 1] - columns[j]) - xgap,
        height: Math.abs(lines[i + 1] - lines[i]) - ygap,
      };
      const colour = scale.at(z);
      const text = written(trace, z, i, j);
      const full = numberOr(part(trace, 'textfont').size, 11);
      const size = Math.min(full, (full * (box.width - 2)) / Math.max(1, widthOf(text, full)), box.height);
      const label: readonly Mark[] =
        text === '' || size < LEAST_TYPE
          ? []
          : [
              {
                text,
                x: box.x + box.width / 2,
                y: box.y + box.height / 2 + size * MIDDLE,
                size,
                anchor: 'middle',
                fill: inkOn(colour),
                ofData: true,
              },
            ];
      return [{ path: boxPath(box), fill: hexOf(colour) }, ...label];
    }),
  );
}

const LEAST_TYPE = 7;

function asPicture(
  rows: readonly (readonly unknown[])[],
  columns: readonly number[],
  lines: readonly number[],
  scale: ColourScale,
): Mark {
  const [left, right] = [columns[0], columns.at(-1) ?? 0];
  const [top, bottom] = [lines[0], lines.at(-1) ?? 0];
  const down = top < bottom ? rows : [...rows].reverse();
  return {
    dots: down.map((row) => {
      const cells = row.map((z) => (typeof z === 'number' ? scale.at(z) : null));
      return left < right ? cells : cells.reverse();
    }),
    x: Math.min(left, right),
    y: Math.min(top, bottom),
    width: Math.abs(right - left),
    height: Math.abs(bottom - top),
  };
}

/** What a cell says, by plotly's templates: its text, or its number to some digits. */
function written(trace: Plain, z: number, row: number, column: number): string {
  const template = textOr(trace.texttemplate, '');
  if (template === '') return '';
  const text = textOr(each(list(trace.text)[row], column), '');
  const filled = template
    .replaceAll('%{text}', text)
    .replace(/%\{z(?::\.(\d)f)?\}/g, (_, digits?: string) =>
      digits === undefined ? String(z) : z.toFixed(Number(digits)),
    );
  return lettering(filled).lines.join(' ').replace(/^-/, '−');
}

import type { Figure } from '../contract.ts';
import { inSentence, printCount, printNumber } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { findMarker, kindMarker, MOST_KINDS } from '../shared/figure/kinds.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { escapeText, figureLayout } from '../shared/figure/style.ts';
import { beyondReach, measuredAxis, rangeBars } from './axes.ts';
import type { End, Measurement, ThreadcountFound } from './found.ts';
import { type Heaped, heaped, heapIds, heapsSaid } from './heaps.ts';
import { panelsFigure } from './panels-figure.ts';
import { ratioFigure } from './ratio-figure.ts';
import { ratioLines } from './ratio-lines.ts';

const HEIGHT = 520;
/** What its inside measures at print width, legend and ticks taken off. */
const INSIDE = { width: 560, height: 410 };
/** Symbols that a browser draws at once and moves smoothly. */
const MOST_SYMBOLS = 2000;
/** Ranges of more points would be a thicket; the table holds them. */
const MOST_RANGES = 600;
/** From so many points on they are drawn half through, so that a heap shows. */
const HEAPED = 100;

export function threadcountFigures(found: ThreadcountFound): Readonly<Record<string, Figure>> {
  if (found.points.length === 0) return {};
  const panels = panelsFigure(found);
  const ratio = ratioFigure(found);
  return {
    counts: countsFigure(found),
    ...(panels === null ? {} : { panels }),
    ...(ratio === null ? {} : { ratio }),
  };
}

function countsFigure(found: ThreadcountFound): Figure {
  const { points, groups, x, y, logarithmic, find } = found;
  const heaps = heaped(found, INSIDE, MOST_SYMBOLS);
  const ranges = found.ranges <= MOST_RANGES && heaps.side === 0;
  const marked = groups.map((group, place) => ({ ...group, place }));
  const own = marked.filter(({ mark }) => mark !== null && mark < MOST_KINDS);
  const rest = marked.filter(({ mark }) => mark === null || mark >= MOST_KINDS);
  const trace = (name: string, places: readonly number[], mark: number | null) => {
    const own = heaps.heaps.filter(([{ group }]) => places.includes(group));
    const drawn = own.map(([first]) => first);
    const finds = own.reduce((sum, heap) => sum + heap.length, 0);
    return {
      type: 'scatter',
      mode: 'markers',
      name: escapeText(`${name} (${finds})`),
      x: drawn.map((point) => point.x.point),
      y: drawn.map((point) => point.y.point),
      ...(ranges ? { error_x: rangeBars(drawn, 'x'), error_y: rangeBars(drawn, 'y') } : {}),
      customdata: own.map(heapIds),
      text: own.map(([point, ...more]) =>
        escapeText(
          `${point.id}: ${reading(point.x, x)} by ${reading(point.y, y)}${more.length === 0 ? '' : `; and ${more.length} more here`}`,
        ),
      ),
      hovertemplate: '%{text}<extra></extra>',
      marker: { ...kindMarker(markStyle(mark), 7), opacity: points.length > HEAPED ? 0.7 : 1 },
    };
  };
  const drawn = [...points, ...(find === null ? [] : [find])];
  const lines = found.ratio === null ? null : ratioLines(drawn, logarithmic);
  const restName = rest.length === 1 ? rest[0].label : `${rest.length} others`;
  return {
    data: [
      ...(found.contours === null ? [] : [contourTrace(found.contours)]),
      ...(lines?.traces ?? []),
      ...own.map(({ label, place, mark }) => trace(label, [place], mark)),
      ...(rest.length === 0
        ? []
        : [
            trace(
              restName,
              rest.map(({ place }) => place),
              null,
            ),
          ]),
      ...(find === null ? [] : [findTrace(find)]),
    ],
    layout: figureLayout({
      x: measuredAxis(x, drawn, 'x', logarithmic),
      y: measuredAxis(y, drawn, 'y', logarithmic),
      height: HEIGHT,
      more: lines === null ? {} : { annotations: lines.labels },
    }),
    caption: captionOf(found, heaps, {
      ranges,
      lines: lines !== null,
      beyond: beyondReach(drawn, logarithmic),
    }),
  };
}

function captionOf(
  { points, x, y, byLabel, unit, logarithmic, ranges, openEnded, contours, find }: ThreadcountFound,
  heaps: Heaped,
  drawn: { readonly ranges: boolean; readonly lines: boolean; readonly beyond: number },
): string {
  const { lines, beyond } = drawn;
  const bars = drawn.ranges
    ? ` Bars: the ranges of ${printCount(ranges, 'reading')}, every value within them being possible${beyond === 0 ? '' : `; ${printCount(beyond, 'bar')} ${beyond === 1 ? 'runs' : 'run'} on beyond the figure`}.`
    : ` ${ranges} readings are ranges and stand at their middles.`;
  return [
    `${x.label} against ${inSentence(y.label)} of ${printCount(points.length, unit)}, symbols by ${inSentence(byLabel)}; in brackets ${unit}s.`,
    heapsSaid(heaps, points.length, find !== null),
    logarithmic ? ' Both axes are logarithmic.' : '',
    lines ? ' Thin lines: equal ratio of the two.' : '',
    ranges === 0 ? '' : bars,
    openEnded === 0
      ? ''
      : ` ${printCount(openEnded, 'reading')} with an open end ${openEnded === 1 ? 'stands' : 'stand'} at the end that is known.`,
    contours === null ? '' : ' Outlines hold the densest half and nine tenths of the points.',
    find === null ? '' : ' Star: the find.',
  ].join('');
}

function reading({ low, high, point, openEnded }: End, { unit }: Measurement): string {
  const number = openEnded
    ? `${printNumber(point)}, open-ended`
    : low === high
      ? printNumber(point)
      : `${printNumber(low)} to ${printNumber(high)}`;
  return unit === '' ? number : `${number} ${unit}`;
}

function findTrace(find: { readonly x: End; readonly y: End }) {
  return {
    type: 'scatter',
    mode: 'markers',
    name: 'the find',
    x: [find.x.point],
    y: [find.y.point],
    error_x: { ...rangeBars([find], 'x'), color: GROUND.ink, thickness: 2 },
    error_y: { ...rangeBars([find], 'y'), color: GROUND.ink, thickness: 2 },
    hovertemplate: 'the find<extra></extra>',
    marker: findMarker(18),
  };
}

function contourTrace({ surface, levels }: NonNullable<ThreadcountFound['contours']>) {
  const [half, most] = levels;
  return {
    type: 'contour',
    x: surface.x,
    y: surface.y,
    z: surface.heights,
    autocontour: false,
    // Two levels: `size` is the step from the lower to the higher.
    contours: { start: most, end: half, size: Math.max(half - most, Number.MIN_VALUE), coloring: 'none' },
    line: { color: GROUND.inkSoft, width: 1.2 },
    showscale: false,
    hoverinfo: 'skip',
    showlegend: false,
  };
}

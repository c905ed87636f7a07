import { GROUND } from '../../analyses/shared/figure/colours.ts';
import { append, greatest } from '../../numerics/foundation/lists.ts';
import { fillOf, strokeOf } from './colours.ts';
import { broken, lettering, MIDDLE, widthOf } from './lettering.ts';
import { boxPath, linePath, type Mark } from './marks.ts';
import { numberOr, type Plain, part, textOr } from './plain.ts';
import { hatching } from './traces/bar.ts';
import { markerMark } from './traces/markers.ts';

/** The legend of a figure, above the plot from its left edge. */
export interface Legend {
  readonly height: number;
  readonly marks: readonly Mark[];
}

const SYMBOL = 22;
const AFTER = 14;
/** CSS pixels of a line. */
export const LINE = 18;

/** Traces that a legend names; none where none is wanted. */
function inLegend(traces: readonly Plain[], layout: Plain): readonly Plain[] {
  if (layout.showlegend === false) return [];
  const shown = traces.filter(
    (trace) =>
      trace.showlegend !== false &&
      trace.visible !== false &&
      trace.type !== 'heatmap' &&
      trace.type !== 'contour' &&
      textOr(trace.name, '') !== '',
  );
  const wanted =
    shown.length > 1 || shown.some(({ showlegend }) => showlegend === true) || layout.showlegend === true;
  return wanted ? shown : [];
}

/**
 * Pixels that plotly's legend of many names takes beyond the lines that every height allows for: it stands in columns as
 * wide as the longest name.
 */
export function legendBeyond(traces: readonly Plain[], layout: Plain, width: number): number {
  const shown = inLegend(traces, layout);
  const size = numberOr(part(part(layout, 'legend'), 'font').size, 11);
  const column =
    PLOTLY.symbol +
    greatest([0, ...shown.map(({ name }) => widthOf(lettering(textOr(name, '')).lines.join(' '), size))]);
  const rows = Math.ceil(shown.length / Math.max(1, Math.floor(width / column)));
  return Math.max(0, rows - LINES_ALLOWED) * PLOTLY.line;
}

const PLOTLY = { symbol: 45, line: 19 };
/** Lines of a legend that the height of every figure allows for. */
export const LINES_ALLOWED = 2;

export function layLegend(traces: readonly Plain[], layout: Plain, width: number): Legend {
  const shown = inLegend(traces, layout);
  if (shown.length === 0) return { height: 0, marks: [] };
  const legend = part(layout, 'legend');
  const size = numberOr(part(legend, 'font').size, 11);
  const title = lettering(textOr(part(legend, 'title').text, ''))
    .lines.join(' ')
    .trim();
  const marks: Mark[] = [];
  let [x, y] = [EDGE, EDGE];
  const text = (words: string, at: number, line: number, bold = false) =>
    marks.push({
      text: words,
      x: at,
      y: line + LINE / 2 + size * MIDDLE,
      size,
      anchor: 'start',
      fill: GROUND.ink,
      ...(bold ? { bold } : {}),
    });
  if (title !== '') {
    text(title, x, y, true);
    x += widthOf(title, size, true) + AFTER;
  }
  const start = title !== '' && x > width / 3 ? EDGE : x;
  if (start === EDGE && x > EDGE) y += LINE;
  x = start;
  for (const trace of shown) {
    const name = lettering(textOr(trace.name, '')).lines.join(' ');
    const lines = broken(name, size, width - start - SYMBOL - EDGE);
    const wide = SYMBOL + greatest(lines.map((line) => widthOf(line, size)));
    if (x > start && x + wide > width - EDGE) [x, y] = [start, y + LINE];
    append(marks, sample(trace, x, y + LINE / 2));
    for (const [at, line] of lines.entries()) {
      if (at > 0) y += LINE * 0.75;
      text(line, x + SYMBOL, y);
    }
    x += wide + AFTER;
  }
  return { height: y + LINE + 2, marks };
}

const EDGE = 4;

/** What a trace looks like, small. */
function sample(trace: Plain, x: number, y: number): readonly Mark[] {
  const marker = part(trace, 'marker');
  if (trace.type === 'bar') {
    const box = { x, y: y - 5, width: 16, height: 10 };
    const stroke = strokeOf(part(marker, 'line'), GROUND.ink, 0);
    return [
      { path: boxPath(box), ...fillOf(marker.color ?? GROUND.neutral) },
      ...hatching(part(marker, 'pattern'), 0, box),
      ...(Object.keys(stroke).length > 0 ? [{ path: boxPath(box), ...stroke }] : []),
    ];
  }
  const mode = textOr(trace.mode, 'lines');
  const filled = textOr(trace.fill, 'none') !== 'none';
  return [
    ...(filled
      ? [{ path: boxPath({ x, y: y - 5, width: 16, height: 10 }), ...fillOf(trace.fillcolor) }]
      : []),
    ...(mode.includes('lines')
      ? [
          {
            path: linePath([
              [x, y],
              [x + 18, y],
            ]),
            ...strokeOf(part(trace, 'line'), GROUND.ink, 2),
          },
        ]
      : []),
    ...(mode.includes('markers') || trace.type === 'box'
      ? markerMark({ ...marker, opacity: 1 }, 0, x + 9, y, 9)
      : []),
  ];
}

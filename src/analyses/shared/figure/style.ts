/**
 * The one look of every figure, as plain data: print sizes, type, axes, layout. Analyses build
 * their plotly figures from these, so that a printed page and a screen never disagree.
 * The reasons are in docs/look.md.
 */

import { GROUND, KIND_COLOURS } from './colours.ts';

/** Print widths in CSS pixels (96 an inch): one column is 85 mm, two are 170 mm. */
export const PRINT_WIDTH = { single: 321, double: 643 } as const;

/** 11 px prints at 8.25 pt; nothing in a figure is set smaller than 10 px (7.5 pt). */
export const FIGURE_FONT = {
  family:
    '"Atkinson Hyperlegible Next Variable", "Atkinson Hyperlegible Next", "Helvetica Neue", Arial, sans-serif',
  size: 11,
  color: GROUND.ink,
} as const;

/** An axis: ink line and outward ticks on the two sides that carry numbers, a faint grid, no zero line. */
export function axis(
  title: string,
  more: Readonly<Record<string, unknown>> = {},
): Readonly<Record<string, unknown>> {
  return {
    title: { text: escapeText(title), standoff: 8, font: { size: FIGURE_FONT.size } },
    showline: true,
    linecolor: GROUND.ink,
    linewidth: 1,
    ticks: 'outside',
    ticklen: 4,
    tickcolor: GROUND.ink,
    tickfont: { size: 10 },
    gridcolor: GROUND.line,
    gridwidth: 0.5,
    zeroline: false,
    automargin: true,
    ...more,
  };
}

export interface LayoutRequest {
  readonly x?: Readonly<Record<string, unknown>>;
  readonly y?: Readonly<Record<string, unknown>>;
  /** What the symbols stand for; heads the legend. */
  readonly legend?: string;
  readonly width?: keyof typeof PRINT_WIDTH;
  /** CSS pixels at print width. */
  readonly height?: number;
  readonly more?: Readonly<Record<string, unknown>>;
}

/** A plotly layout of the house: no title (the caption carries it), sheet ground, legend above the plot. */
export function figureLayout(request: LayoutRequest = {}): Readonly<Record<string, unknown>> {
  return {
    width: PRINT_WIDTH[request.width ?? 'double'],
    height: request.height ?? 400,
    margin: { l: 56, r: 16, t: 16, b: 48, pad: 2 },
    paper_bgcolor: GROUND.sheet,
    plot_bgcolor: GROUND.sheet,
    font: FIGURE_FONT,
    colorway: [...KIND_COLOURS],
    hoverlabel: {
      bgcolor: GROUND.sheet,
      bordercolor: GROUND.ink,
      font: { ...FIGURE_FONT, size: 13 },
      align: 'left',
    },
    legend: {
      orientation: 'h',
      x: 0,
      xanchor: 'left',
      // Hung from the edge of the figure, plotly keeps room for as many lines as it takes.
      y: 1,
      yref: 'container',
      yanchor: 'top',
      itemsizing: 'constant',
      // In the order in which bars are stacked; plotly would turn it round.
      traceorder: 'normal',
      font: { size: FIGURE_FONT.size },
      ...(request.legend === undefined ? {} : { title: { text: `${escapeText(request.legend)}  ` } }),
    },
    ...(request.x === undefined ? {} : { xaxis: request.x }),
    ...(request.y === undefined ? {} : { yaxis: request.y }),
    ...request.more,
  };
}

/** Text of a source is shown as it stands: plotly would read `<b>`, `<a href>` and entities in it. */
export function escapeText(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

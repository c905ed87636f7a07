import type { Figure } from '../../analyses/contract.ts';
import { PRINT_WIDTH } from '../../analyses/shared/figure/style.ts';
import { valuesOn } from './axes.ts';
import { colourBarOf } from './colour-bar.ts';
import { drawFigure } from './draw-figure.ts';
import { LINE, LINES_ALLOWED, layLegend } from './legend.ts';
import type { Drawing, Mark, TextMark } from './marks.ts';
import { numberOr, part, textOr } from './plain.ts';

export interface DrawnFigure {
  readonly drawing: Drawing;
  /** Whether it stands in one column of a page, 85 mm, or across both. */
  readonly narrow: boolean;
}

/** Share of the texts inside a figure that may fall away in one column, as small counts in small bars do. */
const MAY_LOSE = 0.2;
/** More names than this beside points stand better across both columns, where points draw apart. */
const MOST_NAMES = 3;

/** A figure as it is printed: in one column where all that it says can still be read there, else in two. */
export function printedFigure(figure: Figure): DrawnFigure {
  const panels = hasPanels(figure);
  const wide = drawFigure(figure, { width: PRINT_WIDTH.double, height: printedHeight(figure, false) });
  if (panels) return { drawing: wide, narrow: false };
  const narrow = drawFigure(figure, { width: PRINT_WIDTH.single, height: printedHeight(figure, true) });
  const said = textsOf(wide.marks).filter(({ ofData }) => ofData);
  const left = textsOf(narrow.marks).filter(({ ofData }) => ofData);
  const names = figure.data.some(
    ({ type, mode }) => textOr(mode, '').includes('text') && textOr(type, 'scatter').startsWith('scatter'),
  );
  const cut = textsOf(narrow.marks).some(({ text }) => text.includes('…'));
  const free = equalUnits(figure) ? narrow.namesLeftOut === 0 : said.length <= MOST_NAMES;
  const fits = !cut && left.length >= said.length * (1 - MAY_LOSE) && (!names || free);
  return fits ? { drawing: narrow, narrow: true } : { drawing: wide, narrow: false };
}

/** CSS pixels that a figure is high in print, in one column or across both. */
export function printedHeight(figure: Figure, narrow: boolean): number {
  if (narrow && !hasPanels(figure)) return heightInColumn(figure);
  if (narrow) return heightOf(figure);
  const most = hasPanels(figure)
    ? MOST_OF_PANELS + Math.max(0, numberOr(part(figure.layout, 'margin').t, 0) - ABOVE_PANELS)
    : Math.max(MOST_IN_PAGE, Math.min(rowsHigh(figure), MOST_OF_PANELS));
  return Math.min(heightOf(figure), most) + (hasPanels(figure) ? 0 : beyondAllowed(figure));
}

/** What a legend of many names takes beyond the lines that a height allows for; panels keep its room themselves. */
function beyondAllowed({ data, layout }: Figure): number {
  return Math.max(
    0,
    layLegend(data, layout, PRINT_WIDTH.double).height - LEGEND_LINE - (LINES_ALLOWED - 1) * LINE,
  );
}

/** Small multiples keep their measure: in one column their headings would run into each other. */
export function hasPanels({ layout }: Pick<Figure, 'layout'>): boolean {
  const shown = Object.keys(layout).filter(
    (name) => /^xaxis\d*$/.test(name) && part(layout, name).visible !== false,
  );
  return shown.length >= FEWEST_PANELS;
}

function heightOf({ layout }: Pick<Figure, 'layout'>): number {
  return numberOr(layout.height, 400);
}

/** A map shows no more for being wider than tall: its points do not draw apart. */
function equalUnits({ layout }: Pick<Figure, 'layout'>): boolean {
  return part(layout, 'yaxis').scaleanchor !== undefined;
}

/** Rows keep their height under a legend of many lines or a colour bar; clouds of points become about as tall as wide. */
function heightInColumn(figure: Figure): number {
  const legend = layLegend(figure.data, figure.layout, PRINT_WIDTH.single).height;
  const bar = colourBarOf(figure.data, CLOUD)?.above ?? 0;
  return inColumn(figure) + Math.max(0, legend - LEGEND_LINE) + bar;
}

function inColumn(figure: Figure): number {
  const height = heightOf(figure);
  const rows = rowsOf(figure);
  if (rows === 0) return Math.min(height, CLOUD);
  return Math.min(
    height,
    AROUND_ROWS + rows * ROW,
    Math.max(MOST_IN_COLUMN, rowsHigh(figure)),
    MOST_OF_PANELS,
  );
}

/** Rows with a name each; 0 where there are none, or none is written. */
function rowsOf({ data, layout }: Figure): number {
  if (part(layout, 'yaxis').showticklabels === false) return 0;
  if (part(layout, 'yaxis').type !== 'category' && !data.some(({ orientation }) => orientation === 'h'))
    return 0;
  return new Set(data.flatMap((trace) => valuesOn(trace, 'y')).map(String)).size;
}

/** As high as rows must be for every name to stand. */
function rowsHigh(figure: Figure): number {
  const rows = rowsOf(figure);
  return rows === 0 ? 0 : AROUND_ROWS + rows * LEAST_ROW;
}

const FEWEST_PANELS = 3;
/** Above panels under a legend of two lines. */
const ABOVE_PANELS = 66;
/** Two thirds of a page. */
const MOST_OF_PANELS = 620;
/** A little more than a third of a page. */
const MOST_IN_PAGE = 280;
/** Two fifths of a page in one column. */
const MOST_IN_COLUMN = 320;
const CLOUD = 250;
/** What a legend of one line takes, which all heights allow for. */
const LEGEND_LINE = 24;
const AROUND_ROWS = 100;
const ROW = 18;
/** A line of type of 7.5 pt. */
const LEAST_ROW = 12.6;

function textsOf(marks: readonly Mark[]): readonly TextMark[] {
  return marks.flatMap((mark) => ('clip' in mark ? textsOf(mark.marks) : 'text' in mark ? [mark] : []));
}

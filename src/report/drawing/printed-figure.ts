import type { Figure } from '../../analyses/contract.ts';
import { PRINT_WIDTH } from '../../analyses/figure-style.ts';
import { valuesOn } from './axes.ts';
import { drawFigure } from './draw-figure.ts';
import type { Drawing, Mark, TextMark } from './marks.ts';
import { numberOr, part, textOr } from './plain.ts';

export interface PrintedFigure {
  readonly drawing: Drawing;
  /** Whether it stands in one column of a page, 85 mm, or across both. */
  readonly narrow: boolean;
}

/** Share of the texts inside a figure that may fall away in one column, as small counts in small bars do. */
const MAY_LOSE = 0.2;
/** More names than this beside points would cover each other in one column. */
const MOST_NAMES = 3;

/** A figure as it is printed: in one column where all that it says can still be read there, else in two. */
export function printedFigure(figure: Figure): PrintedFigure {
  const wide = drawFigure(figure, {
    width: PRINT_WIDTH.double,
    height: Math.min(heightOf(figure), MOST_IN_PAGE),
  });
  const narrow = drawFigure(figure, { width: PRINT_WIDTH.single, height: heightInColumn(figure) });
  const said = textsOf(wide.marks).filter(({ ofData }) => ofData);
  const left = textsOf(narrow.marks).filter(({ ofData }) => ofData);
  const names = figure.data.some(
    ({ type, mode }) => textOr(mode, '').includes('text') && textOr(type, 'scatter').startsWith('scatter'),
  );
  const cut = textsOf(narrow.marks).some(({ text }) => text.endsWith('…'));
  const fits = !cut && left.length >= said.length * (1 - MAY_LOSE) && !(names && said.length > MOST_NAMES);
  return fits ? { drawing: narrow, narrow: true } : { drawing: wide, narrow: false };
}

function heightOf({ layout }: Pick<Figure, 'layout'>): number {
  return numberOr(layout.height, 400);
}

/** Rows keep their height; clouds of points become about as tall as wide. */
function heightInColumn({ data, layout }: Figure): number {
  const height = heightOf({ layout });
  const rows =
    part(layout, 'yaxis').type === 'category' || data.some(({ orientation }) => orientation === 'h');
  if (!rows) return Math.min(height, CLOUD);
  const names = new Set(data.flatMap((trace) => valuesOn(trace, 'y')).map(String));
  return Math.min(height, AROUND_ROWS + names.size * ROW, MOST_IN_COLUMN);
}

/** Two fifths of a page. */
const MOST_IN_PAGE = 310;
/** As much in one column. */
const MOST_IN_COLUMN = 350;
const CLOUD = 265;
const AROUND_ROWS = 100;
const ROW = 18;

function textsOf(marks: readonly Mark[]): readonly TextMark[] {
  return marks.flatMap((mark) => ('clip' in mark ? textsOf(mark.marks) : 'text' in mark ? [mark] : []));
}

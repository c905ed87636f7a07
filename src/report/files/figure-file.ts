import type { Figure } from '../../analyses/contract.ts';
import { GROUND } from '../../analyses/shared/figure/colours.ts';
import { drawFigure, undrawable } from '../drawing/draw-figure.ts';
import { broken } from '../drawing/lettering.ts';
import { boxPath, type Drawing, type TextMark } from '../drawing/marks.ts';
import { outlinedElement } from '../drawing/outlined.ts';
import { pdfOf } from '../drawing/pdf.ts';
import { hasPanels, printedFigure, printedHeight } from '../drawing/printed-figure.ts';
import { svgOf } from '../drawing/svg.ts';
import { captionFor } from '../page/caption.ts';
import { type FigureWidth, inMeasure, measuresOf } from './measures.ts';

const PIXELS_PER_MM = 96 / 25.4;
/** Type of the caption, 7.5 pt, and the room around it. */
const CAPTION = { size: 10, line: 13, above: 8, below: 4, side: 2 };

/**
 * A figure as a file for print: white ground, the caption beneath. Null where it is of a kind that is not drawn without
 * a browser.
 */
export function figureDrawing(figure: Figure, measure: FigureWidth): Drawing | null {
  if (undrawable(figure).length > 0) return null;
  const width = measure * PIXELS_PER_MM;
  const set = inMeasure(figure, measure);
  const drawn = drawFigure(set, { width, height: printedHeight(set, measure === 84) });
  const lines = broken(captionFor(figure, drawn), CAPTION.size, width - 2 * CAPTION.side);
  const caption = lines.map(
    (text, line): TextMark => ({
      text,
      x: CAPTION.side,
      y: drawn.height + CAPTION.above + CAPTION.size + line * CAPTION.line,
      size: CAPTION.size,
      anchor: 'start',
      fill: GROUND.ink,
    }),
  );
  const height = drawn.height + CAPTION.above + lines.length * CAPTION.line + CAPTION.below;
  return {
    width,
    height,
    marks: [{ path: boxPath({ x: 0, y: 0, width, height }), fill: '#FFFFFF' }, ...drawn.marks, ...caption],
  };
}

/** Measures in which all that a figure says can be read. */
export function readableAt(figure: Figure): readonly FigureWidth[] {
  if (undrawable(figure).length > 0) return [];
  return printedFigure(figure).narrow || hasPanels(figure) ? measuresOf(figure) : [174];
}

/** An SVG file whose size is in millimetres, with nothing from outside. */
export function figureSvg(figure: Figure, measure: FigureWidth, name: string): string | null {
  const drawing = figureDrawing(figure, measure);
  if (drawing === null) return null;
  const element = svgOf(drawing, { id: name, label: captionFor(figure), letters: outlinedElement });
  const high = drawing.height / PIXELS_PER_MM;
  const sized = element.replace(
    / width="[^"]*" height="[^"]*"/,
    ` width="${measure}mm" height="${high.toFixed(2)}mm"`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${sized}\n`;
}

/** A PDF of one page of the figure's own size. */
export function figurePdf(figure: Figure, measure: FigureWidth, title: string): string | null {
  const drawing = figureDrawing(figure, measure);
  return drawing === null ? null : pdfOf(drawing, { title, subject: captionFor(figure) });
}

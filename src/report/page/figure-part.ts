import { undrawable } from '../drawing/draw-figure.ts';
import { printedFigure } from '../drawing/printed-figure.ts';
import { svgOf } from '../drawing/svg.ts';
import { lineHigh, linesHigh } from '../heights.ts';
import { escapeHtml } from '../html-parts.ts';
import { captionFor } from './caption.ts';
import type { NumberedFigure } from './outline.ts';

export interface FigurePart {
  readonly html: string;
  readonly narrow: boolean;
  /** CSS pixels that it takes in print with its caption; the note in place of what is not drawn counts for a line. */
  readonly high: number;
}

/**
 * A figure with its number and caption, drawn as it is printed; a page that carries the plotting code puts the
 * live figure in its place on request.
 */
export function figurePart({ number, name, figure }: NumberedFigure): FigurePart {
  const lacking = undrawable(figure);
  const { drawing, narrow } = lacking.length > 0 ? { drawing: null, narrow: false } : printedFigure(figure);
  const picture =
    drawing === null
      ? '<p class="note">This figure is drawn only where scripts run; its tables hold the same numbers.</p>'
      : svgOf(drawing, { id: name, label: figure.caption, tenths: true });
  const caption = captionFor(figure, drawing ?? {});
  return {
    narrow,
    high:
      (drawing?.height ?? lineHigh('text')) +
      linesHigh(`Figure ${number}. ${caption}`, narrow ? 'caption' : 'broad'),
    html: `<figure id="figure-${escapeHtml(name)}"${narrow ? ' class="half"' : ''}>
<div class="drawn" data-figure="${escapeHtml(name)}">${picture}</div>
<figcaption><b>Figure ${number}.</b> ${escapeHtml(caption)}</figcaption>
</figure>`,
  };
}

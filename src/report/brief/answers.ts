import { printTurn } from '../../analyses/phrasing.ts';
import { drawFigure, undrawable } from '../drawing/draw-figure.ts';
import { printedFigure } from '../drawing/printed-figure.ts';
import { svgOf } from '../drawing/svg.ts';
import { escapeHtml, listPart } from '../html-parts.ts';
import { captionFor } from '../page/caption.ts';
import type { NumberedFigure, Question } from '../page/outline.ts';
import { linesHigh, MM, SET } from './heights.ts';

/** An answer as it stands in the brief, and how high that is in pixels. */
export interface Answered {
  readonly title: string;
  readonly html: string;
  readonly height: number;
}

const MOST_ANSWERS = 5;

/** The questions that the study names for its brief; else the first that have a figure, of each kind one before a second. */
export function briefQuestions(
  questions: readonly Question[],
  named: readonly string[] | undefined,
): readonly Question[] {
  if (named !== undefined) return named.flatMap((id) => questions.filter((question) => question.id === id));
  const shown = questions.filter(({ result, figure }) => result.why === undefined && figure !== null);
  const first = shown.filter(
    ({ result }, at) => shown.findIndex((other) => other.result.kind === result.kind) === at,
  );
  const chosen = new Set([...first, ...shown.filter((one) => !first.includes(one))].slice(0, MOST_ANSWERS));
  return questions.filter((question) => chosen.has(question));
}

/** Pixels that a figure of the brief is high at most. */
const FIGURE_HIGH = 190;
/** Lines of a caption; the report has it whole. */
const CAPTION_LINES = 2;
const AROUND = 6 * MM;

export function answerBlock({ result, figure, furtherFigures }: Question): Answered {
  const { answer, because, unless } = result.words;
  const drawn = pictureOf(figure, furtherFigures);
  const evidence = because.slice(0, 1);
  const turns = unless.slice(0, 2).map(printTurn);
  const fixed =
    linesHigh(answer, 'answer') + evidence.reduce((sum, line) => sum + linesHigh(line, 'beside'), 0);
  const high = (lines: readonly string[]) =>
    lines.reduce((sum, line) => sum + linesHigh(line, 'beside') + MM, 0);
  const room = Math.max(drawn.height, fixed + high(turns.slice(0, 1)));
  const kept = fixed + high(turns) <= room ? turns : turns.slice(0, 1);
  const heading =
    kept.length === 0 ? '' : `<div class="mind"><h3>What would change this</h3>${listPart(kept)}</div>`;
  const told = fixed + (kept.length === 0 ? 0 : high(kept) + SET.beside.size * 2 + 3 * MM);
  return {
    title: result.title,
    html: `<section class="answer"><h2>${escapeHtml(result.title)}</h2>
<div><p class="say">${escapeHtml(answer)}</p>
${listPart(evidence)}
${heading}</div>
${drawn.html}</section>`,
    height: linesHigh(result.title, 'heading') + Math.max(drawn.height, told) + AROUND,
  };
}

/** The figure that carries the answer, in one column; another of the question where that one would be too small there. */
function pictureOf(lead: NumberedFigure | null, further: readonly NumberedFigure[]) {
  const drawable = [...(lead === null ? [] : [lead]), ...further].filter(
    ({ figure }) => undrawable(figure).length === 0,
  );
  const fitting = drawable.find(({ figure }) => printedFigure(figure).narrow);
  const chosen = fitting ?? drawable[0];
  if (chosen === undefined) return { html: '<div></div>', height: 0 };
  const { figure, name, number } = chosen;
  const printed = printedFigure(figure).drawing;
  const drawing =
    fitting === undefined
      ? printed
      : drawFigure(figure, { width: printed.width, height: Math.min(printed.height, FIGURE_HIGH) });
  const caption = `Figure ${number}. ${firstLines(captionFor(figure))}`;
  const scale = (84 * MM) / drawing.width;
  return {
    html: `<figure>${svgOf(drawing, { id: name, label: figure.caption })}<figcaption>${escapeHtml(caption)}</figcaption></figure>`,
    height: drawing.height * scale + linesHigh(caption, 'caption') + MM,
  };
}

/** Whole sentences of a caption, as many as a few lines hold. */
function firstLines(caption: string): string {
  const sentences = caption.split(/(?<=[.!?]) (?=[A-Z])/);
  const line = SET.caption.size * (96 / 72) * SET.caption.line;
  let kept = sentences[0] ?? '';
  for (const sentence of sentences.slice(1)) {
    if (linesHigh(`${kept} ${sentence}`, 'caption') > line * CAPTION_LINES) break;
    kept = `${kept} ${sentence}`;
  }
  return kept;
}

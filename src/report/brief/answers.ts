import type { Figure } from '../../analyses/contract.ts';
import { printTurn } from '../../analyses/phrasing.ts';
import { drawFigure, undrawable } from '../drawing/draw-figure.ts';
import { printedFigure } from '../drawing/printed-figure.ts';
import { svgOf } from '../drawing/svg.ts';
import { lineHigh, linesHigh, MM, type SetAs } from '../heights.ts';
import { escapeHtml, listPart } from '../html-parts.ts';
import { captionFor } from '../page/caption.ts';
import type { NumberedFigure, ReportQuestion } from '../page/outline.ts';
import type { Sized } from './sheets.ts';

const MOST_ANSWERS = 5;

/** The questions that the study names for its brief; else the first that have a figure, of each kind one before a second. */
export function briefQuestions(
  questions: readonly ReportQuestion[],
  named: readonly string[] | undefined,
): readonly ReportQuestion[] {
  if (named !== undefined) return named.flatMap((id) => questions.filter((question) => question.id === id));
  const shown = questions.filter(({ result, figure }) => result.why === undefined && figure !== null);
  const first = shown.filter(
    ({ result }, at) => shown.findIndex((other) => other.result.kind === result.kind) === at,
  );
  const chosen = new Set([...first, ...shown.filter((one) => !first.includes(one))].slice(0, MOST_ANSWERS));
  return questions.filter((question) => chosen.has(question));
}

/** Rule, padding and margin above an answer, and the margin under its heading. */
const AROUND = 6 * MM;
/** Under the answer, under a list, around the box of what would change it. */
const GAPS = { answer: 1.5 * MM, list: MM, mind: 2.5 * MM };

/**
 * An answer, from the least that is of use (the verdict, the worst that would change it, a small figure) to all that the
 * brief would say of it: the more room, the more evidence, the more turns, the higher the figure.
 */
export function answerBlock({ result, figure, furtherFigures }: ReportQuestion): Sized {
  const picture = pictureOf(figure, furtherFigures);
  const { answer, because } = result.words;
  const turns = result.words.unless.map(printTurn);
  const head = linesHigh(result.title, 'heading') + AROUND;
  const said = saidOf(answer, because, turns);
  const beside = picture === null || picture.narrow;
  /** Under the text a figure across both columns has what the text leaves. */
  const under = (text: Told) => (picture === null ? 0 : text.across + picture.least);
  const high = (text: Told) => head + (beside ? Math.max(text.down, picture?.least ?? 0) : under(text));
  const most =
    picture === null
      ? high(said.all)
      : head + (beside ? Math.max(said.all.down, picture.most) : said.all.across + picture.most);
  return {
    title: result.title,
    least: high(said.least),
    most,
    at: (height) => {
      const text = said.within((told) => high(told) <= height);
      const room = height - head - (beside ? 0 : text.across);
      const [left, right] = text.html;
      const drawn = picture === null ? '' : picture.at(Math.min(picture.most, room));
      const columns = beside
        ? `<div>${left}\n${right}</div>\n${drawn}`
        : `<div>${left}</div>\n<div>${right}</div>\n${drawn}`;
      return `<section class="answer${beside ? '' : ' broad'}"><h2>${escapeHtml(result.title)}</h2>\n${columns}</section>`;
    },
  };
}

/** So much of an answer as is told: its height in one column, and in two side by side, in pixels. */
interface Told {
  readonly down: number;
  readonly across: number;
  /** The answer with its evidence, and what would change it. */
  readonly html: readonly [string, string];
}

const MOST_EVIDENCE = 3;
const MOST_TURNS = 4;

function saidOf(answer: string, because: readonly string[], turns: readonly string[]) {
  const told = (evidence: readonly string[], minding: readonly string[]): Told => {
    const listed = (lines: readonly string[], set: SetAs) =>
      lines.length === 0 ? 0 : lines.reduce((sum, line) => sum + linesHigh(line, set), GAPS.list);
    const left = linesHigh(answer, 'answer') + GAPS.answer + listed(evidence, 'beside');
    const right = minding.length === 0 ? 0 : GAPS.mind + lineHigh('beside') + listed(minding, 'turn');
    return {
      down: left + right,
      across: Math.max(left, right) + MM,
      html: [
        `<p class="say">${escapeHtml(answer)}</p>${evidence.length === 0 ? '' : `\n${listPart(evidence)}`}`,
        minding.length === 0
          ? ''
          : `<div class="mind"><h3>What would change this</h3>${listPart(minding)}</div>`,
      ],
    };
  };
  const [evidence, minding] = [because.slice(0, MOST_EVIDENCE), turns.slice(0, MOST_TURNS)];
  const least = told([], minding.slice(0, 1));
  return {
    least,
    all: told(evidence, minding),
    /** Evidence and turns in turns, the weightiest first, while they fit; of each, none is told over one left out. */
    within: (fits: (text: Told) => boolean): Told => {
      let [lines, points, text] = [0, Math.min(1, minding.length), least];
      for (const more of ['line', 'point', 'line', 'point', 'line', 'point', 'point'] as const) {
        const next = more === 'line' ? ([lines + 1, points] as const) : ([lines, points + 1] as const);
        if (next[0] > evidence.length || next[1] > minding.length) continue;
        const tried = told(evidence.slice(0, next[0]), minding.slice(0, next[1]));
        if (fits(tried)) [lines, points, text] = [...next, tried];
      }
      return text;
    },
  };
}

/** Pixels that a figure of the brief is high: no less in one column or across both, and no more than this. */
const LOWEST = { narrow: 125, broad: 170 };
const HIGHEST = 340;
/** A figure with room to spare grows to this many times its height in the report. */
const GROWS = 1.35;
/** Lines of a caption; the report has it whole. */
const CAPTION_LINES = 2;

interface Picture {
  readonly narrow: boolean;
  readonly least: number;
  readonly most: number;
  readonly at: (height: number) => string;
}

/** The first figure of the question that can be read in one column; the first of all, across both, where none can. */
function pictureOf(lead: NumberedFigure | null, further: readonly NumberedFigure[]): Picture | null {
  const drawable = [...(lead === null ? [] : [lead]), ...further]
    .filter(({ figure }) => undrawable(figure).length === 0)
    .map((one) => ({ one, ...printedFigure(one.figure) }));
  const chosen = drawable.find(({ narrow, drawing }) => narrow && drawing.height <= HIGHEST) ?? drawable[0];
  if (chosen === undefined) return null;
  const { one, drawing, narrow } = chosen;
  const caption = `Figure ${one.number}. ${firstLines(captionFor(one.figure))}`;
  const own = linesHigh(caption, narrow ? 'caption' : 'broad') + MM;
  const scale = ((narrow ? 84 : 174) * MM) / drawing.width;
  const highest = Math.min(HIGHEST, drawing.height * GROWS);
  const lowest = Math.min(highest, narrow ? LOWEST.narrow : LOWEST.broad);
  return {
    narrow,
    least: lowest * scale + own,
    most: highest * scale + own,
    at: (height) => drawn(one, drawing.width, Math.floor((height - own) / scale), caption),
  };
}

function drawn(
  { figure, name }: { readonly figure: Figure; readonly name: string },
  width: number,
  height: number,
  caption: string,
): string {
  const drawing = drawFigure(figure, { width, height });
  return `<figure>${svgOf(drawing, { id: name, label: figure.caption, tenths: true })}<figcaption>${escapeHtml(caption)}</figcaption></figure>`;
}

/** Whole sentences of a caption, as many as a few lines hold. */
function firstLines(caption: string): string {
  const sentences = caption.split(/(?<=[.!?]) (?=[A-Z])/);
  let kept = sentences[0] ?? '';
  for (const sentence of sentences.slice(1)) {
    if (linesHigh(`${kept} ${sentence}`, 'caption') > lineHigh('caption') * CAPTION_LINES) break;
    kept = `${kept} ${sentence}`;
  }
  return kept;
}

import type { Prepared } from '../study/prepare.ts';
import type { Results } from '../study/results/results.ts';
import { escapeHtml, listPart } from './html-parts.ts';
import { livePart } from './live.ts';
import { headPart, listedPart, readinessPart } from './page/front-part.ts';
import { methodsPart } from './page/methods-part.ts';
import { outlineOf } from './page/outline.ts';
import { questionPart } from './page/question-part.ts';
import { setAsidePart, sourcesPart } from './page/sources-part.ts';
import { fontFace, REPORT_STYLE, runningFoot } from './style.ts';

/** What a page carries along so that it looks the same everywhere and needs no network. */
export interface PageParts {
  /** The typeface as WOFF2 in base64; without it the machine's own stand in. */
  readonly font?: string;
  /** Text of the plotting code; without it figures stand as they are printed and no script runs. */
  readonly plotly?: string;
}

export interface ReportRequest {
  readonly prepared: Prepared;
  readonly results: Results;
  readonly parts: PageParts;
}

/**
 * One HTML page that stands alone, for the screen and for paper: the readiness of the data, every question with its
 * answer, numbered figures and tables, methods, what was set aside and why, and the sources with their hashes.
 * Opens without a network and reads without scripts; texts of the sources are escaped, and a content policy
 * keeps the page from loading anything.
 */
export function renderReport({ prepared, results, parts }: ReportRequest): string {
  const { study } = results;
  const questions = outlineOf(results);
  const figures = questions.flatMap(({ figure, furtherFigures }) => [
    ...(figure === null ? [] : [figure]),
    ...furtherFigures,
  ]);
  const live = parts.plotly === undefined || figures.length === 0 ? '' : livePart(figures, parts.plotly);
  return page({
    title: study.title,
    parts,
    style: REPORT_STYLE,
    scripts: live !== '',
    body: `${headPart(results, prepared.study.authors, questions)}
<main>
${readinessPart(study.readiness)}
${questions.map((question, place) => questionPart(question, place + 1, { study, many: questions.length > MANY })).join('\n')}
${alwaysPart(study.always)}
${methodsPart(results)}
${setAsidePart(prepared, results)}
${sourcesPart(prepared, results)}
<section id="minding"><h2>Minding finds, people and rights</h2>
${listPart(study.cautions)}</section>
${listedPart(questions)}
</main>
${live}`,
  });
}

/** Of more questions than this, each folds away what is not its first evidence. */
const MANY = 8;

export interface PageRequest {
  readonly title: string;
  readonly parts: PageParts;
  readonly style: string;
  readonly scripts: boolean;
  readonly body: string;
}

/** The frame of every page that a run writes. */
export function page({ title, parts, style, scripts, body }: PageRequest): string {
  const policy = `default-src 'none'; ${scripts ? "script-src 'unsafe-inline'; " : ''}style-src 'unsafe-inline'; img-src data: blob:; font-src data:`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="content-security-policy" content="${policy}">
<title>${escapeHtml(title)}</title>
<style>${parts.font === undefined ? '' : fontFace(parts.font)}${style}${runningFoot(title)}</style>
</head>
<body>
${body}
</body>
</html>
`;
}

function alwaysPart(truths: readonly string[]): string {
  if (truths.length === 0) return '';
  return `<section id="always"><h2>What always holds</h2>
${listPart(truths)}</section>`;
}

import { printBehind } from '../analyses/phrasing.ts';
import { serializeResults } from '../study/results/json.ts';
import { sha256 } from '../study/sha256.ts';
import { answerBlock, briefQuestions } from './brief/answers.ts';
import { BRIEF_STYLE } from './brief/brief-style.ts';
import { citePart, readinessLines } from './brief/margins.ts';
import { overSheets } from './brief/sheets.ts';
import { linesHigh, MM } from './heights.ts';
import { page, type ReportRequest } from './html.ts';
import { escapeHtml } from './html-parts.ts';
import { outlineOf } from './page/outline.ts';

/** Pixels that a page of Letter leaves for text, the lower of the two papers, a little kept back. */
const SHEET = 243 * MM;

export interface BriefRequest extends ReportRequest {
  /** SHA-256 of results.json, where it is known. */
  readonly hash?: string | undefined;
}

/**
 * Two pages for whoever will not read the report: the question, whether the data are ready, up to five answers with
 * a figure each and what would overturn them, and how to cite. Heights are reckoned from the widths of letters, so
 * that it is two full pages on A4 and on Letter; an answer that finds no room is named, and stands in the report.
 */
export function renderBrief({ prepared, results, parts, hash }: BriefRequest): string {
  const { study } = results;
  const chosen = briefQuestions(outlineOf(results), prepared.study.brief);
  const blocks = chosen.map(answerBlock);
  const readiness = readinessLines(study.readiness);
  const note = prepared.study.note ?? '';
  const cite = citePart(
    prepared.study,
    study,
    hash ?? sha256(new TextEncoder().encode(serializeResults(results))),
  );
  const head = HEAD + linesHigh(study.title, 'title') + linesHigh(note, 'text') + readiness.height;
  const { html, left } = overSheets(blocks, [SHEET - head, SHEET - cite.height - linesHigh(NO_ROOM, 'text')]);
  const further =
    left.length === 0
      ? ''
      : `<p class="soft">${NO_ROOM} ${escapeHtml(left.map(({ title }) => title).join('; '))}; see the report.</p>`;
  return page({
    title: study.title,
    parts,
    style: BRIEF_STYLE,
    scripts: false,
    body: `<main>
<section class="sheet">
<header><p class="over">Brief of a study${prepared.study.authors === undefined ? '' : ` by ${escapeHtml(prepared.study.authors)}`}; the whole stands in report.html</p>
<h1>${escapeHtml(study.title)}</h1>
${note === '' ? '' : `<p>${escapeHtml(note)}</p>`}
<p>${escapeHtml(printBehind(study.n, study.witness))}; one record is one ${study.unit === 'item' ? escapeHtml(study.witness.one) : 'fragment'}.</p></header>
${readiness.html}
${html[0]}
</section>
<section class="sheet">
${html[1]}
${further}
${cite.html}
</section>
</main>`,
  });
}

/** Over-line, counts and the space around them. */
const HEAD = 15 * MM;

const NO_ROOM = 'No room here for:';

import { printBehind } from '../analyses/phrasing.ts';
import { serializeResults } from '../study/results-json.ts';
import { sha256 } from '../study/sha256.ts';
import { type Answered, answerBlock, briefQuestions } from './brief/answers.ts';
import { BRIEF_STYLE } from './brief/brief-style.ts';
import { linesHigh, MM } from './brief/heights.ts';
import { citePart, readinessLines } from './brief/margins.ts';
import { page, type ReportRequest } from './html.ts';
import { escapeHtml } from './html-parts.ts';
import { outlineOf } from './page/outline.ts';

/** Pixels that a page of Letter leaves for text, the lower of the two papers, a little kept back. */
const SHEET = 238 * MM;

/**
 * Two pages for whoever will not read the report: the question, whether the data are ready, up to five answers with
 * a figure each and what would overturn them, and how to cite. Heights are reckoned from the widths of letters, so
 * that it is two pages on A4 and on Letter; an answer that finds no room is named, and stands in the report.
 */
export function renderBrief({ prepared, results, parts }: ReportRequest): string {
  const { study } = results;
  const chosen = briefQuestions(outlineOf(results), prepared.study.brief);
  const blocks = chosen.map(answerBlock);
  const readiness = readinessLines(study.readiness);
  const note = prepared.study.note ?? '';
  const cite = citePart(prepared.study, study, sha256(new TextEncoder().encode(serializeResults(results))));
  const head = HEAD + linesHigh(study.title, 'title') + linesHigh(note, 'text') + readiness.height;
  const [first, rest] = filled(blocks, SHEET - head);
  const [second, left] = filled(rest, SHEET - cite.height);
  const further =
    left.length === 0
      ? ''
      : `<p class="soft">No room here for: ${escapeHtml(left.map(({ title }) => title).join('; '))}; see the report.</p>`;
  const html = (some: readonly Answered[]) => some.map((one) => one.html).join('\n');
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
${html(first)}
</section>
<section class="sheet">
${html(second)}
${further}
${cite.html}
</section>
</main>`,
  });
}

/** Over-line, counts and the space around them. */
const HEAD = 15 * MM;

/** As many blocks as a sheet holds, and the rest. */
function filled(
  blocks: readonly Answered[],
  room: number,
): readonly [readonly Answered[], readonly Answered[]] {
  let used = 0;
  const count = blocks.findIndex(({ height }) => {
    used += height;
    return used > room;
  });
  return count < 0 ? [blocks, []] : [blocks.slice(0, count), blocks.slice(count)];
}

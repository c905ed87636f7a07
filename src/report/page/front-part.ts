import { printBehind } from '../../analyses/phrasing.ts';
import type { Results } from '../../study/results/results.ts';
import { escapeHtml } from '../html-parts.ts';
import { captionFor } from './caption.ts';
import type { ReportQuestion } from './outline.ts';

/** Title and contents. */
export function headPart(
  { study }: Results,
  authors: string | undefined,
  questions: readonly ReportQuestion[],
): string {
  const line = (to: string, words: string) =>
    `<li><a href="#${escapeHtml(to)}">${escapeHtml(words)}</a></li>`;
  return `<header>
<p class="over">Report of a study${authors === undefined ? '' : ` by ${escapeHtml(authors)}`}</p>
<h1>${escapeHtml(study.title)}</h1>
<p>${escapeHtml(printBehind(study.n, study.witness))}; one record is one ${study.unit === 'item' ? escapeHtml(study.witness.one) : 'fragment'}. Seed ${study.seed}, Thrum ${escapeHtml(study.version)}.</p>
<nav aria-label="Contents"><h2>Contents</h2>
<ol class="lists">
${[
  line('readiness', 'Are the data ready?'),
  ...questions.map(({ id, result }, place) => line(id, `${place + 1} ${result.title}`)),
  ...BACK.map(([to, words]) => line(to, words)),
].join('\n')}
</ol></nav>
</header>`;
}

const BACK = [
  ['always', 'What always holds'],
  ['methods', 'Methods'],
  ['set-aside', 'What was set aside'],
  ['sources', 'Sources'],
  ['minding', 'Minding finds, people and rights'],
  ['listed', 'Figures and tables'],
] as const;

/** Whether the data are ready, before any verdict. */
export function readinessPart(lines: Results['study']['readiness']): string {
  const line = ({ state, says, mend }: (typeof lines)[number]) =>
    `<li class="${state}"><strong>${STATE_WORDS[state]}</strong> ${escapeHtml(says)}${mend === undefined ? '' : ` <span class="soft">${escapeHtml(mend)}</span>`}</li>`;
  return `<section id="readiness"><h2>Are the data ready?</h2>
<ul class="readiness">${lines.map(line).join('\n')}</ul></section>`;
}

export const STATE_WORDS = { ready: 'Ready.', mind: 'Mind.', ask: 'Open.' } as const;

/** Every figure and table by number, with the file that holds a table whole: the appendix of what is too long to print. */
export function listedPart(questions: readonly ReportQuestion[]): string {
  const figures = questions.flatMap(({ figure, furtherFigures }) => [
    ...(figure === null ? [] : [figure]),
    ...furtherFigures,
  ]);
  return `<section id="listed"><h2>Figures and tables</h2>
<ul class="lists">
${figures.map(({ number, name, figure }) => `<li>${linkTo(`figure-${name}`, `Figure ${number}`)} ${escapeHtml(firstClause(captionFor(figure)))}</li>`).join('\n')}
</ul>
<p class="note">Figures and tables that are folded away on the screen are printed where they are opened. Each table stands whole, nothing rounded, in the folder tables beside this report; here its lines in brackets and its file.</p>
${questions.map(tablesListed).join('\n')}
</section>`;
}

/** The tables of one question, one after the other: a line each would fill pages. */
function tablesListed({ result, table, furtherTables }: ReportQuestion, place: number): string {
  const tables = [...(table === null ? [] : [table]), ...furtherTables];
  if (tables.length === 0) return '';
  const items = tables.map(
    (one) =>
      `<li>${linkTo(`table-${one.name}`, `Table ${one.number}`)} ${escapeHtml(one.table.title)} (${one.table.rows.length}): ${escapeHtml(one.file.replace(/^tables\//, ''))}</li>`,
  );
  return `<div class="running"><b>${place + 1} ${escapeHtml(result.title)}</b> <ul>${items.join('\n')}</ul></div>`;
}

function linkTo(to: string, words: string): string {
  return `<a href="#${escapeHtml(to)}">${words}</a>`;
}

/** What a caption says first: up to the point, colon or semicolon that ends it. */
function firstClause(caption: string): string {
  return /^.*?(?=[.:;](?:\s|$))/.exec(caption)?.[0] ?? caption;
}

import { printBehind } from '../../analyses/phrasing.ts';
import type { Results } from '../../study/results.ts';
import { shortened } from '../drawing/labels.ts';
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

/** Pixels and size at which a line of the list is cut. */
const LIST_WIDTH = 300;
const LIST_SIZE = 10;

/** Every figure and table by number, with the file that holds a table whole: the appendix of what is too long to print. */
export function listedPart(questions: readonly ReportQuestion[]): string {
  const figures = questions.flatMap(({ figure, furtherFigures }) => [
    ...(figure === null ? [] : [figure]),
    ...furtherFigures,
  ]);
  const tables = questions.flatMap(({ table, furtherTables }) => [
    ...(table === null ? [] : [table]),
    ...furtherTables,
  ]);
  const link = (to: string, words: string) => `<a href="#${escapeHtml(to)}">${words}</a>`;
  const first = (text: string) => shortened(/^[^.:;]+/.exec(text)?.[0] ?? text, LIST_SIZE, LIST_WIDTH);
  const fileless = (file: string) => file.replace(/^tables\/|\.csv$/g, '');
  return `<section id="listed"><h2>Figures and tables</h2>
<ul class="lists">
${figures.map(({ number, name, figure }) => `<li>${link(`figure-${name}`, `Figure ${number}`)} ${escapeHtml(first(captionFor(figure)))}</li>`).join('\n')}
</ul>
<p class="note">Figures and tables that are folded away on the screen are printed where they are opened. Each table stands whole, nothing rounded, in the folder tables beside this report; here its lines, and the name of its file before .csv.</p>
<ul class="lists">
${tables.map(({ number, name, table, file }) => `<li>${link(`table-${name}`, `Table ${number}`)} ${escapeHtml(table.title)} (${table.rows.length}): ${escapeHtml(fileless(file))}</li>`).join('\n')}
</ul></section>`;
}

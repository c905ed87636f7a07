import type { Answer } from '../../analyses/contract.ts';
import { printBehind, printCount, printList, printTurn } from '../../analyses/phrasing.ts';
import type { StudyHead } from '../../study/results/results.ts';
import { linesHigh } from '../heights.ts';
import { escapeHtml, listPart } from '../html-parts.ts';
import { type FigurePart, figurePart } from './figure-part.ts';
import { cite, type NumberedTable, type ReportQuestion } from './outline.ts';
import { tablePart } from './table-part.ts';

/** One question: its answer with evidence and what would overturn it beside its figure, its table, then the rest. */
export function questionPart(question: ReportQuestion, number: number, { study, many }: Around): string {
  const { witness } = study;
  const { id, result, figure, table, furtherFigures, furtherTables } = question;
  const lead = figure === null ? null : figurePart(figure);
  const further = furtherFigures.map((one) => ({ one, ...figurePart(one) }));
  const open = many ? further.slice(0, firstRow(further)) : further;
  const folded = further.slice(open.length);
  const aside = result.n.setAside.map(
    ({ reason, fragments }) => `${printCount(fragments, 'fragment')}: ${reason}`,
  );
  const told = `<div class="told">
${evidencePart(result.words)}
<p class="n">${escapeHtml(printBehind(result.n, witness))}.${aside.length === 0 ? '' : ` Set aside here: ${escapeHtml(aside.join('; '))}.`}</p>
${citedPart(question)}
</div>`;
  // What is no longer than its figure stays with it on one page.
  const whole = lead?.narrow === true && toldHigh(result.words) <= lead.high;
  return `<section id="${escapeHtml(id)}" class="question">
<div${whole ? ' class="whole"' : ''}>
<h2><span class="count">${number}</span> ${escapeHtml(result.title)}</h2>
${result.note === undefined ? '' : `<p class="note">${escapeHtml(result.note)}</p>`}
<p class="say">${escapeHtml(result.words.answer)}</p>
${lead?.narrow === true ? `<div class="beside">${lead.html}${told}</div>` : `${told}${lead?.html ?? ''}`}
</div>
${table === null ? '' : tablePart(table.table, { number: table.number, name: table.name, file: table.file, briefly: true })}
${furtherPart(open)}
${
  folded.length === 0
    ? ''
    : `<details class="more"><summary>${cite(
        'Figure',
        folded.map(({ one }) => one.number),
      )}</summary>${furtherPart(folded)}</details>`
}
${furtherTables.length === 0 && table === null ? '' : morePart(furtherTables)}
<details class="settings"><summary>What was asked, as the study says it</summary><pre>${escapeHtml(JSON.stringify({ kind: result.kind, ...result.options }, null, 2))}</pre></details>
</section>`;
}

export interface Around {
  readonly study: StudyHead;
  /** Whether the study asks so much that a question shows one line of further figures and folds the others away. */
  readonly many: boolean;
}

/** How many figures stand in the first line: two in one column each, or one across both. */
function firstRow(parts: readonly FigurePart[]): number {
  return parts[0]?.narrow === true && parts[1]?.narrow === true ? 2 : Math.min(1, parts.length);
}

function furtherPart(parts: readonly FigurePart[]): string {
  return parts.length === 0 ? '' : `<div class="further">${parts.map(({ html }) => html).join('\n')}</div>`;
}

/** Where the evidence stands. */
function citedPart({ figure, table, furtherFigures, furtherTables }: ReportQuestion): string {
  const link = (to: string, words: string) => `<a href="#${escapeHtml(to)}">${words}</a>`;
  const first = [
    ...(figure === null ? [] : [link(`figure-${figure.name}`, cite('Figure', [figure.number]))]),
    ...(table === null ? [] : [link(`table-${table.name}`, cite('Table', [table.number]))]),
  ];
  const numbers = (of: readonly { readonly number: number }[]) => of.map(({ number }) => number);
  const [drawn, listed] = [furtherFigures[0], furtherTables[0]];
  const rest = [
    ...(drawn === undefined ? [] : [link(`figure-${drawn.name}`, cite('Figure', numbers(furtherFigures)))]),
    ...(listed === undefined ? [] : [link(`table-${listed.name}`, cite('Table', numbers(furtherTables)))]),
  ];
  const said = [
    first.length === 0 ? '' : `Shown in ${printList(first)}`,
    rest.length === 0 ? '' : `more in ${printList(rest)}`,
  ].filter((part) => part !== '');
  return said.length === 0 ? '' : `<p class="cited">${said.join('; ')}.</p>`;
}

/** The tables beside the one in the text; closed ones are not printed, and their files hold them. */
function morePart(tables: readonly NumberedTable[]): string {
  return tables
    .map(
      ({ number, name, table, file }) =>
        `<details class="more"><summary>Table ${number}. ${escapeHtml(table.title)} <span class="soft">(${printCount(table.rows.length, 'line')}; ${escapeHtml(file)})</span></summary>
${tablePart(table, { number, name, file })}</details>`,
    )
    .join('\n');
}

/** CSS pixels that the evidence takes beside a figure in print; the lines of what it rests on are left to chance. */
function toldHigh({ because, unless, next = [] }: Answer): number {
  const lines = [...because, ...unless.map(printTurn), ...next];
  return lines.reduce((sum, line) => sum + linesHigh(line, 'beside'), 0);
}

/** The evidence of an answer, what would change it, what would settle it. */
function evidencePart({ because, unless, next = [] }: Answer): string {
  return [
    because.length > 0 ? `<div class="because">${listPart(because)}</div>` : '',
    unless.length > 0
      ? `<div class="mind"><h3>What would change this</h3>${listPart(unless.map(printTurn))}</div>`
      : '',
    next.length > 0 ? `<div class="next"><h3>What would settle it</h3>${listPart(next)}</div>` : '',
  ]
    .filter((part) => part !== '')
    .join('\n');
}

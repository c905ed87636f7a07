import type { Answer } from '../../analyses/contract.ts';
import { printBehind, printCount, printList, printTurn } from '../../analyses/phrasing.ts';
import type { StudyHead } from '../../study/results.ts';
import { escapeHtml, listPart } from '../html-parts.ts';
import { figurePart } from './figure-part.ts';
import { cite, type NumberedTable, type Question } from './outline.ts';
import { tablePart } from './table-part.ts';

/** One question: its answer with evidence and what would overturn it beside its figure, its table, then the rest. */
export function questionPart(question: Question, number: number, { witness }: StudyHead): string {
  const { id, result, figure, table, furtherFigures, furtherTables } = question;
  const lead = figure === null ? null : figurePart(figure);
  const further = furtherFigures.map((one) => figurePart(one).html);
  const aside = result.n.setAside.map(
    ({ reason, fragments }) => `${printCount(fragments, 'fragment')}: ${reason}`,
  );
  const told = `<div class="told">
${evidencePart(result.words)}
<p class="n">${escapeHtml(printBehind(result.n, witness))}.${aside.length === 0 ? '' : ` Set aside here: ${escapeHtml(aside.join('; '))}.`}</p>
${citedPart(question)}
</div>`;
  return `<section id="${escapeHtml(id)}" class="question">
<h2><span class="count">${number}</span> ${escapeHtml(result.title)}</h2>
${result.note === undefined ? '' : `<p class="note">${escapeHtml(result.note)}</p>`}
<p class="say">${escapeHtml(result.words.answer)}</p>
${lead?.narrow === true ? `<div class="beside">${lead.html}${told}</div>` : `${told}${lead?.html ?? ''}`}
${table === null ? '' : tablePart(table.table, { number: table.number, name: table.name, file: table.file, briefly: true })}
${further.length === 0 ? '' : `<div class="further">${further.join('\n')}</div>`}
${furtherTables.length === 0 && table === null ? '' : morePart(furtherTables)}
<details class="settings"><summary>What was asked, as the study says it</summary><pre>${escapeHtml(JSON.stringify({ kind: result.kind, ...result.options }, null, 2))}</pre></details>
</section>`;
}

/** Where the evidence stands. */
function citedPart({ figure, table, furtherFigures, furtherTables }: Question): string {
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

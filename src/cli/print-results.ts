import type { ResultTable, TableCell } from '../analyses/contract.ts';
import { inSentence, printBehind, printCount, printList, printTurn } from '../analyses/phrasing.ts';
import { columnHead, tablePrinter } from '../analyses/table-numbers.ts';
import { greatest } from '../numerics/foundation/lists.ts';
import type { AnalysisResult, Results } from '../study/results.ts';
import type { Terminal } from './terminal.ts';
import { columnsThatFit, tame, textTable, wrap } from './text-table.ts';

/** How much of a run is printed: the answers alone, with their evidence, or with every table as well. */
export type Detail = 'quiet' | 'brief' | 'full';

export interface Printing {
  readonly detail: Detail;
  /** The report in which everything stands; none where none was written. */
  readonly report?: string;
}

/** A run as a person reads it: what was read, then each answer; the whole stands in the report. */
export function printResults(terminal: Terminal, results: Results, printing: Printing): void {
  const { study } = results;
  const entries = Object.entries(results.analyses);
  if (printing.detail === 'quiet') {
    for (const [id, result] of entries)
      terminal.out(`${line(`${id}: ${result.words.answer}`, terminal.width)}\n`);
    return;
  }
  const full = printing.detail === 'full';
  terminal.out(`${terminal.colour.bold(tame(study.title))}\n\n`);
  printSources(terminal, results);
  terminal.out(`${line(countSentence(study), terminal.width)}\n`);
  printReadiness(terminal, study.readiness, full);
  if (full && study.disagreements.length > 0)
    terminal.out(`${line(disagreementSentence(study), terminal.width)}\n`);
  const most = entries.length > MANY ? 1 : 2;
  for (const [id, result] of entries) printAnalysis(terminal, id, result, printing, most);
  if (!full && printing.report !== undefined)
    terminal.out(
      `\n${line(`All evidence, tables and figures of a question: ${printing.report}, at its #name.`, terminal.width)}\n`,
    );
  if (full) for (const truth of study.always) terminal.out(`\n${line(truth, terminal.width)}\n`);
}

/** Of more questions than this each is told in fewer lines, so that a run is still taken in at a glance. */
const MANY = 10;

/**
 * One answer: heading with where the whole stands, verdict, the first of its evidence, the worst of what would change it;
 * in full also the rest of both, what would settle it, what was set aside and every table.
 *
 * @param most lines that the evidence takes, in brief.
 */
export function printAnalysis(
  terminal: Terminal,
  id: string,
  result: AnalysisResult,
  { detail, report }: Printing,
  most = 2,
): void {
  const { colour, width } = terminal;
  const { answer, because, unless, next = [] } = result.words;
  const full = detail === 'full';
  const where = full || report === undefined ? '' : `  (${countOf(result)}: #${id})`;
  terminal.out(`\n${colour.dim(line(`${id}  ${result.title}${where}`, width))}\n`);
  terminal.out(`${colour.bold(line(answer, width))}\n`);
  if (!full) {
    const [reason] = because;
    if (reason !== undefined)
      terminal.out(`${item('·', inLines(reason, most, more(because), width), width)}\n`);
    const [worst] = unless;
    if (worst !== undefined)
      terminal.out(`${colour.yellow(item('!', `${printTurn(worst)}${more(unless)}`, width))}\n`);
    return;
  }
  for (const reason of because) terminal.out(`${item('·', reason, width)}\n`);
  for (const turn of unless) terminal.out(`${colour.yellow(item('!', printTurn(turn), width))}\n`);
  for (const step of next) terminal.out(`${item('>', step, width)}\n`);
  for (const { reason, fragments } of result.n.setAside)
    terminal.out(`${line(`Set aside: ${printCount(fragments, 'fragment')}, ${reason}.`, width)}\n`);
  for (const table of Object.values(result.tables)) if (table.rows.length > 0) printTable(terminal, table);
}

function more({ length }: readonly unknown[]): string {
  return length > 1 ? ` (+${length - 1})` : '';
}

/**
 * As much of a text as some lines hold, cut off between its clauses and marked so; the tail follows. A text
 * without such a place, outside of brackets, stands whole.
 */
function inLines(text: string, most: number, tail: string, width: number): string {
  const wide = Math.min(width, WIDEST) - 4;
  const fits = (some: string) => wrap(tame(`${some}${tail}`), wide).length <= most;
  if (fits(text)) return `${text}${tail}`;
  for (const between of [/; /g, /[;,:] /g]) {
    const places = [...text.matchAll(between)].map(({ index }) => index).reverse();
    const at = places.find((place) => fits(`${text.slice(0, place)} …`) && isClosed(text.slice(0, place)));
    if (at !== undefined) return `${text.slice(0, at)} …${tail}`;
  }
  return `${text}${tail}`;
}

/** The first lines of a text, cut off between words. */
function firstWords(text: string, most: number, width: number): string {
  const wide = Math.min(width, WIDEST) - 4;
  const lines = wrap(tame(text), wide);
  if (lines.length <= most) return text;
  const kept = lines.slice(0, most).join(' ').split(' ');
  while (kept.length > 1 && wrap(`${kept.join(' ')} …`, wide).length > most) kept.pop();
  return `${kept.join(' ')} …`;
}

/** Whether no bracket stands open. */
function isClosed(text: string): boolean {
  return text.split('(').length === text.split(')').length;
}

/** "3 tables and 2 figures". */
function countOf(result: AnalysisResult): string {
  const tables = Object.values(result.tables).filter(({ rows }) => rows.length > 0).length;
  const figures = Object.keys(result.figures).length;
  return printList([printCount(tables, 'table'), printCount(figures, 'figure')]);
}

/** A line of a list: its mark, then the text, further lines under the text. */
function item(mark: string, text: string, width: number): string {
  const lines = wrap(tame(text), Math.min(width, WIDEST) - 4);
  return lines.map((part, place) => `${place === 0 ? `  ${mark} ` : '    '}${part}`).join('\n');
}

function printTable(terminal: Terminal, table: ResultTable): void {
  const columns = narrowed(table, terminal.width);
  const heads = columns.map(({ head, isWords }) => ({
    head,
    align: isWords ? ('left' as const) : ('right' as const),
  }));
  terminal.out(`\n${terminal.colour.underline(tame(table.title))}\n`);
  terminal.out(
    textTable(
      heads,
      table.rows.map((_, row) => columns.map(({ cells }) => cells[row])),
      terminal.width,
    ),
  );
  const left = table.columns.length - columns.length;
  const notes = [
    left > 0 ? `${printCount(left, 'further column')} in the results.` : undefined,
    table.note,
  ].filter((note) => note !== undefined);
  if (notes.length > 0) terminal.out(`${terminal.colour.dim(line(notes.join(' '), terminal.width))}\n`);
}

/** In place of a number that cannot be computed. */
const UNKNOWN = '–';

interface PrintedColumn {
  readonly head: string;
  readonly isWords: boolean;
  readonly cells: readonly string[];
}

/** As many columns as fit: those the table names for narrow places, else its first; those without any value left out. */
function narrowed(table: ResultTable, width: number): readonly PrintedColumn[] {
  const printer = tablePrinter(table);
  const printed = table.columns.map((_, place) => printedColumn(table, place, printer));
  const filled = [...printed.keys()].filter((place) =>
    printed[place].cells.some((cell) => cell !== '' && cell !== UNKNOWN),
  );
  const fits = (places: readonly number[]) =>
    columnsThatFit(
      places.map((place) =>
        Math.max(printed[place].head.length, greatest(printed[place].cells.map((cell) => cell.length))),
      ),
      places.map((place) => printed[place].isWords),
      width,
    );
  const named = (table.briefly ?? [])
    .map((id) => table.columns.findIndex((column) => column.id === id))
    .filter((place) => filled.includes(place));
  const chosen = fits(filled) === filled.length || named.length === 0 ? filled : named;
  return chosen.slice(0, fits(chosen)).map((place) => printed[place]);
}

/** Within a table a number that cannot be computed is a dash; why stands in results.json and the report. */
function printedColumn(
  table: ResultTable,
  place: number,
  printer: ReturnType<typeof tablePrinter>,
): PrintedColumn {
  const column = table.columns[place];
  const cells = table.rows.map((row) => row[place] ?? null);
  return {
    head: columnHead(column),
    isWords: !cells.some((cell) => typeof cell === 'number'),
    cells: cells.map((cell, at) => brief(cell, (value) => printer(table.rows[at], place)(value).text)),
  };
}

function brief(cell: TableCell, print: (value: number) => string): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return print(cell);
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  return typeof cell === 'object' ? UNKNOWN : tame(cell);
}

function printSources(terminal: Terminal, { study }: Results): void {
  terminal.out(
    textTable(
      [
        { head: 'source', align: 'left' },
        { head: 'rows read', align: 'right' },
        { head: 'kept', align: 'right' },
        { head: 'set aside', align: 'right' },
        { head: 'cells changed', align: 'right' },
        { head: 'flagged', align: 'right' },
        { head: 'not understood', align: 'right' },
      ],
      study.sources.map((source) => [
        source.file,
        String(source.rowsRead),
        String(source.rowsKept),
        String(source.rowsSetAside),
        String(source.ledger.read),
        String(source.ledger.flagged),
        String(source.ledger.notUnderstood),
      ]),
      terminal.width,
    ),
  );
}

/** What is open before any verdict; what is ready only in full. */
function printReadiness(terminal: Terminal, lines: Results['study']['readiness'], full: boolean): void {
  for (const { state, says, mend } of lines) {
    if (state === 'ready' && !full) continue;
    const text = mend === undefined ? says : `${says} ${mend}`;
    const mark = state === 'ask' ? '?' : state === 'mind' ? '!' : '·';
    terminal.out(
      `${item(mark, full ? text : firstWords(says, state === 'ask' ? 2 : 1, terminal.width), terminal.width)}\n`,
    );
  }
}

function countSentence({ n, unit, witness }: Results['study']): string {
  const base = `${printBehind(n, witness)}; one record one ${unit === 'item' ? witness.one : 'fragment'}`;
  const aside = n.setAside.map(
    ({ reason, fragments }) => `${printCount(fragments, 'fragment')} set aside: ${reason}`,
  );
  return `${[base, ...aside].join('; ')}.`;
}

/** Most attributes that are named where fragments of one item contradict each other. */
const MOST_DISAGREEMENTS = 5;

function disagreementSentence({ disagreements, witness }: Results['study']): string {
  const ordered = [...disagreements].sort((a, b) => b.items - a.items);
  const parts = ordered
    .slice(0, MOST_DISAGREEMENTS)
    .map(({ label, items }) => `${inSentence(label)} (${items})`);
  const rest = ordered.length - parts.length;
  if (rest > 0) parts.push(printCount(rest, 'further attribute'));
  return `Fragments of one ${witness.one} differ in ${printList(parts)}; number of ${witness.many} in brackets.`;
}

/** Longer lines are hard to read, however wide the terminal. */
const WIDEST = 100;

function line(text: string, width: number): string {
  return wrap(tame(text), Math.min(width, WIDEST)).join('\n');
}

import type { ResultTable, TableCell } from '../analyses/contract.ts';
import { printBehind, printCount, printList, printTurn } from '../analyses/phrasing.ts';
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
  if (printing.detail === 'quiet') {
    for (const [id, result] of Object.entries(results.analyses))
      terminal.out(`${line(`${id}: ${result.words.answer}`, terminal.width)}\n`);
    return;
  }
  terminal.out(`${terminal.colour.bold(tame(study.title))}\n\n`);
  printSources(terminal, results);
  terminal.out(`${line(countSentence(study), terminal.width)}\n`);
  printReadiness(terminal, study.readiness, printing.detail === 'full');
  if (study.disagreements.length > 0) terminal.out(`${line(disagreementSentence(study), terminal.width)}\n`);
  for (const [id, result] of Object.entries(results.analyses)) printAnalysis(terminal, id, result, printing);
  if (printing.detail === 'full')
    for (const truth of study.always) terminal.out(`\n${line(truth, terminal.width)}\n`);
}

/**
 * One answer: heading, verdict, evidence, the worst of what would change it, and where the rest stands; in
 * full also every turn, what would settle it, what was set aside and every table.
 */
export function printAnalysis(
  terminal: Terminal,
  id: string,
  result: AnalysisResult,
  { detail, report }: Printing,
): void {
  const { colour, width } = terminal;
  const { answer, because, unless, next = [] } = result.words;
  const full = detail === 'full';
  const shown = full ? unless : unless.slice(0, 1);
  const more = unless.length - shown.length;
  terminal.out(`\n${colour.dim(`${id}  ${tame(result.title)}`)}\n${colour.bold(line(answer, width))}\n`);
  for (const reason of because) terminal.out(`${item('·', reason, width)}\n`);
  for (const [place, turn] of shown.entries()) {
    const rest = more > 0 && place === shown.length - 1 ? ` (and ${more} more)` : '';
    terminal.out(`${colour.yellow(item('!', `${printTurn(turn)}${rest}`, width))}\n`);
  }
  if (full) {
    for (const step of next) terminal.out(`${item('>', step, width)}\n`);
    for (const { reason, fragments } of result.n.setAside)
      terminal.out(`${line(`Set aside: ${printCount(fragments, 'fragment')}, ${reason}.`, width)}\n`);
    for (const table of Object.values(result.tables)) if (table.rows.length > 0) printTable(terminal, table);
  } else if (report !== undefined) {
    terminal.out(`${colour.dim(`  ${countOf(result)}: ${report}#${id}`)}\n`);
  }
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
    const text = mend === undefined || !full ? says : `${says} ${mend}`;
    const mark = state === 'ask' ? '?' : state === 'mind' ? '!' : '·';
    terminal.out(`${item(mark, text, terminal.width)}\n`);
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
  const parts = ordered.slice(0, MOST_DISAGREEMENTS).map(({ attribute, items }) => `${attribute} (${items})`);
  const rest = ordered.length - parts.length;
  if (rest > 0) parts.push(printCount(rest, 'further attribute'));
  return `Fragments of one ${witness.one} differ in ${printList(parts)}; number of ${witness.many} in brackets.`;
}

/** Longer lines are hard to read, however wide the terminal. */
const WIDEST = 100;

function line(text: string, width: number): string {
  return wrap(tame(text), Math.min(width, WIDEST)).join('\n');
}

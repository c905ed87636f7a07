import { inSentence, printBehind, printCount, printList, printTurn } from '../analyses/phrasing.ts';
import type { AnalysisResult, Results } from '../study/results/results.ts';
import { firstWords, inLines, item, line } from './fitted-lines.ts';
import { printTable } from './print-table.ts';
import type { Terminal } from './terminal.ts';
import { tame, textTable } from './text-table.ts';

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
  if (!full) terminal.out(`\n${line(KEY, terminal.width)}\n`);
  if (!full && printing.report !== undefined)
    terminal.out(
      `${line(`All evidence, tables and figures of a question: ${printing.report}, at its #name.`, terminal.width)}\n`,
    );
  if (full) for (const truth of study.always) terminal.out(`\n${line(truth, terminal.width)}\n`);
}

/** What the marks of a short run stand for. */
const KEY = '"·" evidence; "!" what would change or weaken it; "?" to be settled; "(+2)" two more lines.';

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
      terminal.out(
        `${colour.yellow(item('!', inLines(printTurn(worst), most + 1, more(unless), width, worst.what.length + 1), width))}\n`,
      );
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

/** "3 tables and 2 figures". */
function countOf(result: AnalysisResult): string {
  const tables = Object.values(result.tables).filter(({ rows }) => rows.length > 0).length;
  const figures = Object.keys(result.figures).length;
  return printList([printCount(tables, 'table'), printCount(figures, 'figure')]);
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
  for (const { topic, state, says, mend } of lines) {
    if (state === 'ready' && !full) continue;
    const text = mend === undefined ? says : `${says} ${mend}`;
    const mark = state === 'ask' ? '?' : state === 'mind' ? '!' : '·';
    terminal.out(
      `${item(mark, full ? text : firstWords(says, state === 'ask' ? 3 : topic === 'witness' ? 2 : 1, terminal.width), terminal.width)}\n`,
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

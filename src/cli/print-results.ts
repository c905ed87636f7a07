import type { Counts, ResultTable } from '../analyses/contract.ts';
import { printCount } from '../analyses/phrasing.ts';
import type { AnalysisResult, Results } from '../study/results.ts';
import type { Terminal } from './terminal.ts';
import { printCell, tame, textTable, wrap } from './text-table.ts';

/** The whole of a run, as a person reads it: what was read, then each answer with its cautions. */
export function printResults(terminal: Terminal, results: Results): void {
  const { study } = results;
  terminal.out(`${terminal.colour.bold(tame(study.title))}\n\n`);
  printSources(terminal, results);
  terminal.out(`${line(countSentence(study.n, study.unit), terminal.width)}\n`);
  if (study.disagreements.length > 0) {
    const parts = study.disagreements.map(({ attribute, items }) => `${attribute} (${items})`);
    terminal.out(
      `${line(`Fragments of one item disagree on ${parts.join(', ')}; number of items in brackets.`, terminal.width)}\n`,
    );
  }
  for (const [id, result] of Object.entries(results.analyses)) printAnalysis(terminal, id, result);
}

/** Most lines of a table that are printed; the rest stands in results.json and the report. */
const MOST_ROWS = 24;

/** One answer: heading, sentence, tables, cautions. */
export function printAnalysis(terminal: Terminal, id: string, result: AnalysisResult): void {
  const { colour, width } = terminal;
  terminal.out(`\n${colour.bold(`${id}  ${tame(result.title)}`)}\n`);
  terminal.out(`${line(result.sentence, width)}\n`);
  for (const table of Object.values(result.tables)) printTable(terminal, table);
  for (const { reason, fragments } of result.n.setAside) {
    terminal.out(`${line(`Set aside: ${printCount(fragments, 'fragment')}, ${reason}.`, width)}\n`);
  }
  for (const caution of result.cautions) terminal.out(`${colour.yellow(line(`Mind: ${caution}`, width))}\n`);
}

function printTable(terminal: Terminal, table: ResultTable): void {
  const rows = table.rows.slice(0, MOST_ROWS);
  const kept = table.columns.map((_, place) => place).filter((place) => rows.some((row) => says(row[place])));
  const columns = kept.map((place) => ({
    head: table.columns[place].unit
      ? `${table.columns[place].label} (${table.columns[place].unit})`
      : table.columns[place].label,
    align: rows.some((row) => typeof row[place] === 'number') ? ('right' as const) : ('left' as const),
  }));
  terminal.out(`\n${terminal.colour.underline(tame(table.title))}\n`);
  terminal.out(
    textTable(
      columns,
      rows.map((row) => kept.map((place) => brief(row[place]))),
      terminal.width,
    ),
  );
  if (table.rows.length > rows.length) {
    terminal.out(`(${printCount(table.rows.length - rows.length, 'further line')} in results.json)\n`);
  }
  if (table.note !== undefined) terminal.out(`${terminal.colour.dim(line(table.note, terminal.width))}\n`);
}

function says(cell: ResultTable['rows'][number][number] | undefined): boolean {
  return cell !== undefined && cell !== null && cell !== '';
}

/** Within a table a number that cannot be computed is a dash; why stands in results.json and the report. */
function brief(cell: ResultTable['rows'][number][number]): string {
  return typeof cell === 'object' && cell !== null ? '–' : tame(printCell(cell));
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

function countSentence(n: Counts, unit: 'item' | 'fragment'): string {
  const base = `${printCount(n.fragments, 'fragment')} of ${printCount(n.items, 'item')}; one record ${unit === 'item' ? 'an item' : 'a fragment'}`;
  const aside = n.setAside.map(
    ({ reason, fragments }) => `${printCount(fragments, 'fragment')} set aside: ${reason}`,
  );
  return `${[base, ...aside].join('; ')}.`;
}

function line(text: string, width: number): string {
  return wrap(tame(text), Math.min(width, 100)).join('\n');
}

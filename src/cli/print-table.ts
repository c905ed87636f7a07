import type { ResultTable, TableCell } from '../analyses/contract.ts';
import { printCount } from '../analyses/phrasing.ts';
import { columnHead, tablePrinter } from '../analyses/table-numbers.ts';
import { greatest } from '../numerics/foundation/lists.ts';
import { line } from './fitted-lines.ts';
import type { Terminal } from './terminal.ts';
import { columnsThatFit, tame, textTable } from './text-table.ts';

export function printTable(terminal: Terminal, table: ResultTable): void {
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

import { foldText } from '../../../attributes/matching.ts';
import { InputError } from '../../../errors.ts';
import { decodeBytes } from '../../../sources/formats/decode.ts';
import type { PrintedFigure } from './claim.ts';
import { decimalMarkOf } from './numbers.ts';
import { modelPrint } from './programs/model-print.ts';
import type { ModelPrint } from './programs/print-rows.ts';
import { programPrint } from './programs/test-print.ts';
import { figuresBeside, figuresOfOutput, unreadOfOutput } from './table/beside.ts';
import { figuresOfCells, type RoledColumn } from './table/cells.ts';
import { type TableText, tableText } from './table/grid.ts';
import type { Role } from './table/heads.ts';
import type { Layout, TableRow } from './table/laid.ts';
import { layOut } from './table/layout.ts';
import { isStatistic } from './table/role-kinds.ts';
import { withRoles } from './table/roles.ts';
import type { TableSays } from './table/says.ts';
import { QUANTITIES } from './terms.ts';

export { cellId } from './table/cells.ts';
export type { TableColumn, TableRow } from './table/laid.ts';

/** A table as it is printed, cells to the printed digit. */
export interface PrintedTable {
  readonly name: string;
  readonly kind: 'counts' | 'shares' | 'samples';
  readonly caption: string;
  /** The words over the labels. */
  readonly corner: string;
  /** What a study says of it. */
  readonly says: TableSays;
  readonly notes: readonly string[];
  readonly columns: readonly RoledColumn[];
  readonly rows: readonly TableRow[];
  /** The figures of each row and column; empty where nothing is printed. */
  readonly cells: readonly (readonly (readonly PrintedFigure[])[])[];
  /** The parts alone, without totals and what is no part of a sum: one number a row and column. */
  readonly body: TableBody;
  /** Every number of the table. */
  readonly figures: readonly PrintedFigure[];
  /** Cells and words of which nothing was made, each with its place. */
  readonly unread: readonly string[];
}

export interface TableBody {
  readonly rows: readonly string[];
  readonly columns: readonly string[];
  readonly cells: readonly (readonly (PrintedFigure | null)[])[];
}

/**
 * Reads a printed table: typed, CSV, or copied from a page; one or two rows of heads, sections, totals, notes.
 * Each column gets a role from its head or its cells; nothing is left unread in silence.
 *
 * @throws InputError where it has no heads, labels and numbers.
 */
export function readTable(bytes: Uint8Array, file: string, says: TableSays = {}): PrintedTable {
  const output = outputOf(bytes, file, says);
  if (output !== null) return output;
  const model = modelPrint(decodeBytes(bytes, file).text);
  const { caption, grid, notes } = model === null ? tableText(bytes, file) : modelText(model, file);
  const laid = layOut(grid, rolesSaid(says.roles, file));
  if (!laid.texts.flat().some((cell) => /\d/.test(cell)))
    throw new InputError(
      'this is no table with labels in its first row and column: it holds no number',
      { file },
      'give it a row of heads and a column of labels',
    );
  const name = tableName(file);
  // Programs print a point, and part no thousands.
  const mark = model === null ? decimalMarkOf(laid.texts.flat()) : '.';
  const columns = withRoles(laid, caption, says, mark);
  const samples = columns.some(({ reading, role }) => role !== 'n' && isStatistic({ ...reading, role }));
  const { cells, unread } = figuresOfCells({ name, laid, columns, samples, mark, says, caption });
  const beside = figuresBeside(name, [caption, ...notes], mark);
  const body = bodyOf(laid, columns, cells);
  const counted = body.cells.flat().some((cell) => cell?.quantity === 'count');
  return {
    name,
    kind: samples
      ? 'samples'
      : counted || body.cells.flat().every((cell) => cell === null)
        ? 'counts'
        : 'shares',
    caption,
    corner: laid.corner,
    says,
    notes,
    columns,
    rows: laid.rows,
    cells,
    body,
    figures: [...cells.flat(2), ...beside],
    unread: [...unread, ...(model?.beside ?? []).map((line) => `${name}: “${line}”`)],
  };
}

/** The print of a fitted model as a table with its other lines below it. */
function modelText({ table, caption, reports }: ModelPrint, file: string): TableText {
  const read = tableText(new TextEncoder().encode(table), file);
  return { ...read, caption, notes: [...read.notes, ...reports] };
}

/** What a statistics program printed of one test, pasted where a table is: its figures, and no cell. */
function outputOf(bytes: Uint8Array, file: string, says: TableSays): PrintedTable | null {
  const { text } = decodeBytes(bytes, file);
  const program = programPrint(text);
  if (program === null) return null;
  const name = tableName(file);
  const figures = figuresOfOutput(name, text);
  if (figures.length === 0) return null;
  return {
    name,
    kind: 'counts',
    caption: program.title.replace(', of another question', ''),
    corner: '',
    says,
    notes: [],
    columns: [],
    rows: [],
    cells: [],
    body: { rows: [], columns: [], cells: [] },
    figures,
    unread: unreadOfOutput(name, text),
  };
}

function rolesSaid(roles: TableSays['roles'], file: string): Record<string, Role> {
  return Object.fromEntries(
    Object.entries(roles ?? {}).map(([head, role]) => {
      if (!(role in QUANTITIES) && role !== 'not part' && role !== 'step' && role !== 'unknown')
        throw new InputError(
          `"${role}" is no role of a column`,
          { file, column: head },
          `use ${[...Object.keys(QUANTITIES), 'not part'].join(', ')}`,
        );
      return [head, role as Role];
    }),
  );
}

function bodyOf(
  laid: Layout,
  columns: readonly { readonly role: Role; readonly line: string; readonly head: string }[],
  cells: readonly (readonly (readonly PrintedFigure[])[])[],
): TableBody {
  const rows = laid.rows.flatMap(({ line }, r) => (line === 'part' ? [r] : []));
  const wanted = (role: Role) =>
    columns.flatMap((column, c) => (column.role === role && column.line === 'part' ? [c] : []));
  const counts = wanted('count');
  const inside = counts.length > 0 ? counts : wanted('share');
  return {
    rows: rows.map((r) => laid.rows[r].label),
    columns: inside.map((c) => columns[c].head),
    cells: rows.map((r) => inside.map((c) => cells[r][c][0] ?? null)),
  };
}

/** A table is called by its file name without the ending. */
export function tableName(file: string): string {
  return file.replace(/^.*\//, '').replace(/\.[^.]+$/, '');
}

/** The row of this label, spelling apart; -1 for none. */
export function rowOf({ body }: PrintedTable, label: string): number {
  const wanted = foldText(label);
  return body.rows.findIndex((row) => foldText(row) === wanted);
}

import { foldText } from '../../../attributes/matching.ts';
import { InputError } from '../../../errors.ts';
import type { Condition } from '../../../fragments/select.ts';
import { decodeBytes } from '../../../sources/decode.ts';
import { detectDelimiter } from '../../../sources/dialect.ts';
import { restoreText } from '../../../sources/export.ts';
import { parseCsv } from '../../../sources/parse-csv.ts';
import { type PrintedFigure, perUnitOf } from './claim.ts';
import { readPrinted } from './printed-text.ts';
import { QUANTITY_NAMES, type Quantity } from './terms.ts';

/** What a printed table may say of itself beside its cells. */
export interface TableSays {
  /** Attribute whose terms label the rows; lets the cells be counted in the data. */
  readonly rows?: string | undefined;
  /** The same for the columns of a table of counts or percentages. */
  readonly columns?: string | undefined;
  /** Attribute that a table of means describes. */
  readonly attribute?: string | undefined;
  /** Grid of the single readings of a table of means: 1, 0.5, 0.1. */
  readonly step?: string | undefined;
}

/** A table as it is printed, cells to the printed digit. */
export interface PrintedTable {
  readonly name: string;
  readonly kind: 'counts' | 'shares' | 'samples';
  /** Labels without those of totals. */
  readonly rows: readonly string[];
  readonly columns: readonly string[];
  /** One a row and column; null where nothing is printed. */
  readonly cells: readonly (readonly (PrintedFigure | null)[])[];
  /** Printed sums; null where there are none. */
  readonly rowTotals: readonly (PrintedFigure | null)[];
  readonly columnTotals: readonly (PrintedFigure | null)[];
  readonly grand: PrintedFigure | null;
  /** Every number of the table. */
  readonly figures: readonly PrintedFigure[];
}

const TOTAL = new Set([
  'total',
  'totals',
  'sum',
  'all',
  'summe',
  'gesamt',
  'somme',
  'totale',
  'suma',
  'i alt',
  'sum total',
]);
const EMPTY = new Set(['', '-', '–', '—', '.', '·', 'n/a', 'na']);

/**
 * Reads a printed table: labels in the first row and column. Where two or more heads are quantities ("n",
 * "mean", "sd"), each row describes a sample; otherwise it holds counts or, with percent signs or decimals,
 * percentages, and a row or column headed "total" holds sums. A cell "12 (34 %)" is a count with its share.
 */
export function readTable(bytes: Uint8Array, file: string, says: TableSays = {}): PrintedTable {
  const { text } = decodeBytes(bytes, file);
  const grid = parseCsv(text, file, detectDelimiter(text))
    .grid.map((row) => row.map((cell) => restoreText(cell.trim())))
    .filter((row) => row.some((cell) => cell !== ''));
  const [head, ...body] = grid;
  if (head === undefined || head.length < 2 || body.length === 0)
    throw new InputError(
      'this is no table with labels in its first row and column',
      { file },
      'give it a row of heads and a column of labels',
    );
  const name = tableName(file);
  const quantities = head.slice(1).map(quantityNamed);
  const samples = quantities.filter((quantity) => quantity !== undefined).length >= 2;
  const cellOf = (row: number, column: number): PrintedFigure[] => {
    const printed = body[row][column + 1] ?? '';
    if (EMPTY.has(printed.toLowerCase())) return [];
    const quantity = samples ? quantities[column] : kindOf(body);
    return quantity === undefined ? [] : figuresOfCell(quantity, row, column, printed);
  };
  const labels = body.map((row) => row[0]);
  const stepAt = head.slice(1).findIndex((cell) => foldText(cell) === 'step');
  const asked = says.rows !== undefined && (samples || says.columns !== undefined);
  const figuresOfCell = (
    quantity: Quantity,
    row: number,
    column: number,
    printed: string,
  ): PrintedFigure[] => {
    const parts = readPrinted(printed, quantity);
    if (parts === null)
      throw new InputError(
        `"${printed}" cannot be read as a printed ${quantity}`,
        { file, row: row + 2, column: head[column + 1] },
        'copy the figure alone, or leave the cell empty',
      );
    const [label, over] = [labels[row], head[column + 1]];
    const sum = !samples && (isTotal(label) || isTotal(over));
    return parts.map((part, i) => ({
      id: i === 0 ? cellId(name, label, over) : `${cellId(name, label, over)} (${part.quantity})`,
      // Its id says where it stands.
      place: '',
      quantity: sum && i === 0 ? 'total' : part.quantity,
      set: name,
      method: null,
      sided: '',
      perUnit: perUnitOf(stepAt < 0 ? (says.step ?? '') : (body[row][stepAt + 1] ?? '')),
      attributes: samples && says.attribute !== undefined ? [says.attribute] : [],
      select: isTotal(label) || !asked ? [] : within(says.rows, label),
      versus: [],
      counted: samples || isTotal(over) ? [] : within(says.columns, over),
      // A label that no attribute explains is no condition, and the data cannot be asked by it.
      selectText: isTotal(label) && asked ? '' : label,
      versusText: '',
      values: part.values.map((value) => {
        const asShare = part.quantity === 'share' || (!samples && kindOf(body) === 'share');
        return asShare
          ? { ...value, percent: true, number: { ...value.number, decimals: value.number.decimals + 2 } }
          : value;
      }),
      vague: part.vague === true,
      printed,
      note: '',
    }));
  };
  return layOut(name, samples, head.slice(1), labels, cellOf);
}

function layOut(
  name: string,
  samples: boolean,
  heads: readonly string[],
  labels: readonly string[],
  cellOf: (row: number, column: number) => PrintedFigure[],
): PrintedTable {
  const all = labels.map((_, row) => heads.map((_, column) => cellOf(row, column)));
  const inner = (list: readonly string[]) =>
    list.flatMap((label, place) => (!samples && isTotal(label) ? [] : [place]));
  const [rows, columns] = [inner(labels), inner(heads)];
  const sumRow = samples ? -1 : labels.findIndex(isTotal);
  const sumColumn = samples ? -1 : heads.findIndex(isTotal);
  const first = (row: number, column: number) => all[row]?.[column]?.[0] ?? null;
  const cells = rows.map((row) => columns.map((column) => first(row, column)));
  const shares = cells.flat().some((cell) => cell?.quantity === 'share');
  return {
    name,
    kind: samples ? 'samples' : shares ? 'shares' : 'counts',
    rows: rows.map((row) => labels[row]),
    columns: columns.map((column) => heads[column]),
    cells,
    rowTotals: rows.map((row) => first(row, sumColumn)),
    columnTotals: columns.map((column) => first(sumRow, column)),
    grand: first(sumRow, sumColumn),
    figures: all.flat(2),
  };
}

/** A table is called by its file name without the ending. */
export function tableName(file: string): string {
  return file.replace(/^.*\//, '').replace(/\.[^.]+$/, '');
}

/** Names the figure in the row of this label, under this head; a second number of the cell adds its quantity. */
export function cellId(table: string, label: string, head: string): string {
  return `${table}: ${label} / ${head}`;
}

function isTotal(label: string): boolean {
  return TOTAL.has(foldText(label));
}

/** The row of this label, spelling apart; -1 for none. */
export function rowOf(table: PrintedTable, label: string): number {
  const wanted = foldText(label);
  return table.rows.findIndex((row) => foldText(row) === wanted);
}

function within(attribute: string | undefined, label: string): readonly Condition[] {
  return attribute === undefined ? [] : [{ attribute, in: [label] }];
}

const HEADS: Readonly<Record<string, Quantity>> = {
  'std dev': 'sd',
  's d': 'sd',
  'standard deviation': 'sd',
  'standard error': 'se',
  minimum: 'min',
  maximum: 'max',
  'lower quartile': 'q1',
  'upper quartile': 'q3',
  average: 'mean',
};

function quantityNamed(head: string): Quantity | undefined {
  const folded = foldText(head.replace(/\([^)]*\)/g, ''));
  return QUANTITY_NAMES.find((name) => name === folded) ?? HEADS[folded];
}

/** Percentages where a cell carries the sign or a decimal. */
function kindOf(body: readonly (readonly string[])[]): Quantity {
  const cells = body.flatMap((row) => row.slice(1));
  const bare = cells.filter((cell) => !/\(/.test(cell));
  return bare.some((cell) => /%|per\s?cent|\d[.,]\d{1,2}$/i.test(cell)) ? 'share' : 'count';
}

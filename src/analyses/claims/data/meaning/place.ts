import type { Condition } from '../../../../fragments/select-condition.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import { OF_TEST, SAMPLED } from '../../reading/table/role-kinds.ts';
import type { Quantity } from '../../reading/terms.ts';
import type { LineMeaning } from './lines.ts';
import type { Names } from './names.ts';
import { type Sides, termsIn } from './sides.ts';
import { methodBeside, testBeside, testOf } from './tests.ts';

const COUNTED: ReadonlySet<Quantity> = new Set<Quantity>(['count', 'share', 'total', 'n']);

/** The figure with the records that its row and column say; as it is where they do not say enough. */
export function placedIn(
  figure: PrintedFigure,
  table: PrintedTable,
  sides: Sides,
  names: Names,
): PrintedFigure {
  const { cell, quantity } = figure;
  if (cell === null) return testBeside(figure, table, sides, names);
  const [row, column] = [sides.rows[cell.row], sides.columns[cell.column]];
  const measure = row.measure ?? column.measure ?? sides.measure;
  const sums = [table.rows[cell.row], table.columns[cell.column]].map(({ line }) => line === 'total');
  const compared = comparison(figure, table, [row, column], measure);
  if (compared !== null) return compared;
  if (OF_TEST.has(quantity) && quantity !== 'correlation') return testOf(figure, table, sides, names);
  if (SAMPLED.has(quantity) || (quantity === 'n' && table.kind === 'samples')) {
    const select = [...row.select, ...column.select];
    const of = select.length > 0 || sums[0] || sums[1] || row.measure !== null || column.measure !== null;
    if (!of) return figure;
    const attributes = measure === null ? [] : [measure];
    const kinds = [...sides.rows, ...sides.columns].flatMap(({ select: all }) => all);
    return { ...figure, placed: true, attributes, select, ...(select.length > 0 ? {} : otherwise(kinds)) };
  }
  if (!COUNTED.has(quantity) || measureIn(row, column)) return figure;
  const inRow = row.select.length > 0 || sums[0] || table.rows[cell.row].line === 'n';
  const inColumn = column.select.length > 0 || sums[1] || table.columns[cell.column].role === 'n';
  if (!inRow || !inColumn) return figure;
  const along = (list: readonly LineMeaning[]): readonly Condition[] =>
    [...new Set(list.flatMap(({ select }) => select.map(({ attribute }) => attribute)))].map((attribute) => ({
      attribute,
      known: true,
    }));
  // Sums are of the records that have both; those of all records that have the one are another ordinary way.
  const select = row.select.length > 0 ? row.select : along(sides.rows);
  const counted = column.select.length > 0 ? column.select : along(sides.columns);
  if (select.length + counted.length === 0) return figure;
  const [knownRow, knownColumn] = [along(sides.rows), along(sides.columns)];
  const base = { ...figure, placed: true as const };
  if (quantity === 'n') {
    const ofRow = [...row.select, ...knownColumn];
    const ofColumn = [...column.select, ...knownRow];
    // "12/35": its row, its column or the whole; a printed line of n is of that line.
    const ways = [
      ...(row.select.length > 0 ? [ofRow, row.select] : []),
      ...(column.select.length > 0 ? [ofColumn, column.select] : []),
      [...knownRow, ...knownColumn],
    ];
    return { ...base, select: ways[0], selectOr: ways.slice(1), counted: [] };
  }
  if (!sums.includes(true) || figure.values[0].percent) return { ...base, select, counted };
  return {
    ...base,
    select: [...select, ...counted],
    counted: [],
    selectOr: [[...row.select, ...column.select]],
  };
}

const COMPARED: ReadonlySet<Quantity> = new Set<Quantity>([
  'statistic',
  'df',
  'p',
  'effect',
  'difference',
  'low',
  'high',
  'correlation',
  'n',
]);

/** Two groups or two measures that one label names: "Early vs. Late", "Length × Width". */
function comparison(
  figure: PrintedFigure,
  table: PrintedTable,
  lines: readonly LineMeaning[],
  measure: string | null,
): PrintedFigure | null {
  if (!COMPARED.has(figure.quantity)) return null;
  const groups = lines.find(({ versus }) => versus.length > 0);
  if (groups !== undefined && measure !== null && figure.quantity !== 'n')
    return {
      ...figure,
      method: figure.method ?? methodBeside(figure, table, false),
      placed: true,
      attributes: [measure],
      select: groups.select,
      versus: groups.versus,
    };
  const both = lines.find(({ second }) => second !== null);
  if (both?.measure == null || both.second === null) return null;
  if (figure.quantity === 'n')
    return {
      ...figure,
      placed: true,
      select: [both.measure, both.second].map((attribute) => ({ attribute, known: true })),
    };
  return {
    ...figure,
    method: figure.method ?? methodBeside(figure, table, false),
    placed: true,
    attributes: [both.measure, both.second],
    select: [],
  };
}

const measureIn = (row: LineMeaning, column: LineMeaning) => row.measure !== null || column.measure !== null;

/** All of a table are all records, those of a known kind, or those of the kinds that it prints. */
function otherwise(kinds: readonly Condition[]): Pick<PrintedFigure, 'selectOr'> {
  const attributes = [...new Set(kinds.map(({ attribute }) => attribute))];
  return {
    selectOr: attributes.flatMap((attribute) => [
      [{ attribute, known: true }],
      [{ attribute, in: termsIn(kinds, attribute) }],
    ]),
  };
}

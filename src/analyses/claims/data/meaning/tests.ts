import type { Condition } from '../../../../fragments/select-condition.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import type { TestMethod } from '../../reading/terms.ts';
import type { LineMeaning } from './lines.ts';
import type { Names } from './names.ts';
import { type Sides, termsIn } from './sides.ts';

/** A test at the end of a line is of its measure, or of its kinds, by the groups of the other side. */
export function testOf(
  figure: PrintedFigure,
  table: PrintedTable,
  sides: Sides,
  names: Names,
): PrintedFigure {
  const { cell } = figure;
  if (cell === null) return figure;
  const aside = table.rows[cell.row].holds !== null;
  const [line, others] = aside
    ? [sides.columns[cell.column], sides.rows]
    : [sides.rows[cell.row], sides.columns];
  const groups = others.flatMap(({ select }) => select);
  const attributes = [...new Set(groups.map(({ attribute }) => attribute))];
  const [by] = attributes;
  if (by === undefined || attributes.length > 1) return figure;
  const terms = termsIn(groups, by);
  const all = terms.length === (names.occurring.get(by)?.size ?? 0);
  const select: readonly Condition[] = all ? [] : [{ attribute: by, in: terms }];
  const first = line.measure ?? (line.kind === by ? null : line.kind);
  if (first === null) return figure;
  const method = figure.method ?? methodBeside(figure, table, aside);
  if (
    line.measure !== null &&
    terms.length === 2 &&
    (method === 't' || method === 'U' || method === 'W' || method === 'cohen-d')
  )
    return {
      ...figure,
      method,
      placed: true,
      attributes: [first],
      select: [{ attribute: by, in: [terms[0]] }],
      versus: [{ attribute: by, in: [terms[1]] }],
    };
  return { ...figure, method, placed: true, attributes: [first, by], select };
}

/** The test of the one statistic that is printed in the same line. */
export function methodBeside(
  { cell }: PrintedFigure,
  { figures }: PrintedTable,
  aside: boolean,
): TestMethod | null {
  const line = figures.filter(
    (other) =>
      other.method !== null &&
      (other.quantity === 'statistic' || other.quantity === 'correlation') &&
      (aside ? other.cell?.column === cell?.column : other.cell?.row === cell?.row),
  );
  return line.length === 1 ? line[0].method : null;
}

/** A test in the words above or below a table of counts is of its rows by its columns. */
export function testBeside(
  figure: PrintedFigure,
  table: PrintedTable,
  { rows, columns }: Sides,
  names: Names,
): PrintedFigure {
  if (table.kind === 'samples') return figure;
  const [first, second] = [rows, columns].map((lines) => oneKind(lines, names));
  if (first === null || second === null || first.attribute === second.attribute) return figure;
  const select = [first, second].flatMap(({ condition }) => condition ?? []);
  if (figure.quantity === 'n') {
    const known = [first, second].map(({ attribute }) => ({ attribute, known: true }));
    return { ...figure, placed: true, select: [...select, ...known], selectOr: [select] };
  }
  return { ...figure, placed: true, attributes: [first.attribute, second.attribute], select };
}

/** The one attribute that the lines are kinds of; a condition where not all of its kinds are printed. */
function oneKind(
  lines: readonly LineMeaning[],
  names: Names,
): { readonly attribute: string; readonly condition: Condition | null } | null {
  const all = lines.flatMap(({ select }) => select);
  const attributes = [...new Set(all.map(({ attribute }) => attribute))];
  const [attribute] = attributes;
  if (attribute === undefined || attributes.length > 1) return null;
  const terms = termsIn(all, attribute);
  const whole = terms.length === (names.occurring.get(attribute)?.size ?? 0);
  return { attribute, condition: whole ? null : { attribute, in: terms } };
}

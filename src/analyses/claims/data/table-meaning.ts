import type { Register } from '../../../attributes/definition.ts';
import { fitOfWays } from '../conventions/way.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { PrintedTable } from '../reading/printed-table.ts';
import type { Material } from './check-data.ts';
import { attempt, withBase, withMeasure } from './meaning/by-fit.ts';
import { namesOf } from './meaning/names.ts';
import { placedIn } from './meaning/place.ts';
import { sidesOf } from './meaning/sides.ts';
import type { View } from './values.ts';

/** A table whose figures say which records they are of; the doubt says why it was left as it is. */
export interface Meant {
  readonly table: PrintedTable;
  /** Labels of the attributes that its rows and columns name; none where it is held against itself only. */
  readonly attributes: readonly string[];
  readonly doubt?: string;
}

/**
 * What a printed table is of: the terms and measures that its labels name, as far as a study does not say it. The
 * one measure of a table that names none is that under which most of its cells come out as printed; percentages
 * are of rows, columns or the whole, whichever fits most of them. Where most figures fit nothing of that, the
 * table is of other records, and is held against itself only.
 */
export function ofTheData(table: PrintedTable, { records, register, unit }: Material): Meant {
  const view: View = { table: records, register, unit };
  const names = namesOf(view);
  const sides = sidesOf(table, names);
  const placed = table.figures.map((figure) => placedIn(figure, table, sides, names));
  if (!placed.some((figure) => figure.placed)) return { table, attributes: [] };
  const measured = withMeasure(placed, view);
  const based = withBase(measured, view);
  const answered = based.flatMap((figure) => {
    if (figure.placed !== true) return [];
    const found = attempt(figure, view);
    return found === null ? [] : [fitOfWays(figure, found) !== null];
  });
  const fitting = answered.filter(Boolean).length;
  const said = table.says.rows ?? table.says.columns ?? table.says.attribute;
  if (said === undefined && fitting * 2 < answered.length)
    return {
      table,
      attributes: [],
      doubt: `The labels of the table ${table.name} occur in the data, but only ${fitting} of its ${answered.length} figures come out of them; say under "rows", "columns" and "attribute" what it is of, if it is of these records.`,
    };
  return { table: rebuilt(table, based), attributes: attributesOf(based, register) };
}

/** What the figures that know their records are of, in the words of the data. */
function attributesOf(figures: readonly PrintedFigure[], register: Register): string[] {
  const ids = figures
    .filter(({ placed }) => placed)
    .flatMap(({ attributes, select, versus, counted }) => [
      ...[...select, ...versus, ...counted].map(({ attribute }) => attribute),
      ...attributes,
    ]);
  return [...new Set(ids)].map((id) => register.attributes.get(id)?.label ?? id);
}

function rebuilt(table: PrintedTable, figures: readonly PrintedFigure[]): PrintedTable {
  const byId = new Map(figures.map((figure) => [figure.id, figure]));
  const same = (figure: PrintedFigure) => byId.get(figure.id) ?? figure;
  return {
    ...table,
    figures,
    cells: table.cells.map((row) => row.map((cell) => cell.map(same))),
    body: {
      ...table.body,
      cells: table.body.cells.map((row) => row.map((cell) => (cell === null ? null : same(cell)))),
    },
  };
}

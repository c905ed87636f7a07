import type { Register } from '../../attributes/definition.ts';
import { structureDrawing } from '../../attributes/drawing/structure-drawing.ts';
import { drawingSvg } from '../../attributes/drawing/svg.ts';
import { weaveNotation } from '../../cells/descriptions/notation.ts';
import { readFind } from '../../fragments/find-table.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { DrawingView } from './views/records.ts';

/** The schema of what one row records of its structure; null where there is none to draw. */
export function rowDrawing(register: Register, table: FragmentTable, row: number): DrawingView | null {
  const facets: Record<string, string> = {};
  for (const [id, column] of table.columns) {
    if (column.kind === 'term') {
      const level = column.levels[column.codes[row] ?? -1];
      if (level !== undefined) facets[id] = level;
    } else if (column.kind === 'numeric') {
      const [low, high] = [column.low[row], column.high[row]];
      if (low === high && low !== undefined && !Number.isNaN(low)) facets[id] = String(low);
    }
  }
  const { structure } = facets;
  const drawing = structure === undefined ? null : structureDrawing(register, structure, facets);
  if (drawing === null) return null;
  const code = weaveNotation(structure ?? '', facets.elementGrouping ?? null);
  const says = code === null ? drawing.says : `${drawing.says} In the notation of ISO 9354: ${code}.`;
  return { title: drawing.title, says, notes: drawing.notes, svg: drawingSvg(drawing) };
}

/** The same of a find that is being described: "open twining with pile" is drawn as it is read. */
export function findDrawing(register: Register, find: Readonly<Record<string, string>>): DrawingView | null {
  const { table } = readFind(find, register);
  return rowDrawing(register, table, 0);
}

import type { Register } from '../../attributes/definition.ts';
import { contradictEachOther } from '../contradiction.ts';
import { groupRows } from '../groups.ts';
import { isMissing } from '../missing.ts';
import type { Column, FragmentTable } from '../table.ts';

/** What parts one context from another, beside the source. */
const CONTEXT = ['site', 'phase', 'context'] as const;
/** Of a larger context only its best recorded fragments are set against each other: the bound is lower then, and holds. */
const MOST = 400;
const COMPARED: ReadonlySet<string> = new Set(['structure', 'spacing', 'fibre']);

/**
 * The least number of items that the fragments can be of, where no column says: within a context (source, site, phase,
 * context) fragments that contradict one another, pair by pair, in structure, fibre or a reading (`contradictEachOther`:
 * terms of which neither is the broader, readings more than a fifth apart) are as many items; the contexts are added up,
 * as if no item lay in two. After the minimum number of individuals of bone and sherd counts (common practice, no source).
 *
 * A lower bound, whatever else is true of the fragments; those best recorded are taken first, so that the order of
 * the rows does not matter.
 */
export function leastItems(table: FragmentTable, register: Register): number {
  const compared = [...table.columns.values()].filter(
    ({ kind, attribute }) => kind !== 'text' && COMPARED.has(attribute.block) && !attribute.derived,
  );
  return contextsOf(table, register).reduce((sum, rows) => sum + apartIn(rows, compared, table, register), 0);
}

function contextsOf(table: FragmentTable, register: Register): readonly (readonly number[])[] {
  const keys = CONTEXT.flatMap((id) => {
    const column = table.columns.get(id);
    if (column === undefined || column.kind === 'numeric') return [];
    const nameOf = new Map<number, string>();
    for (const { labels, rows } of groupRows(table, [id], register).groups)
      for (const row of rows) nameOf.set(row, labels[0]!);
    return [nameOf];
  });
  const contexts = new Map<string, number[]>();
  for (let row = 0; row < table.rows; row++) {
    const key = JSON.stringify([table.origin[row]!.source, ...keys.map((nameOf) => nameOf.get(row) ?? null)]);
    const rows = contexts.get(key);
    if (rows === undefined) contexts.set(key, [row]);
    else rows.push(row);
  }
  return [...contexts.values()];
}

/** Fragments that contradict all those taken before them. */
function apartIn(
  rows: readonly number[],
  compared: readonly Column[],
  table: FragmentTable,
  register: Register,
): number {
  const known = new Map(
    rows.map((row) => [row, compared.filter((column) => !isMissing(column, row)).length]),
  );
  const order = [...rows].sort(
    (a, b) => known.get(b)! - known.get(a)! || (table.id[a]! < table.id[b]! ? -1 : 1),
  );
  const taken: number[] = [];
  for (const row of order.slice(0, MOST))
    if (
      taken.every((other) => compared.some((column) => contradictEachOther(column, [row, other], register)))
    )
      taken.push(row);
  return taken.length;
}

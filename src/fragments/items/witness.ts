import type { FragmentTable } from '../table.ts';

/**
 * The witness is what counts as one: a fragment, an original item, a vessel, a grave. Which column names it is for
 * somebody who knows the table to say; until then every fragment counts, and nothing is called an item.
 */
export interface Witness {
  /**
   * `confirmed`: somebody said which column names the object, or that each row is one; `suggested`: something in the
   * table looks like it; `absent`: nothing does.
   */
  readonly status: 'confirmed' | 'suggested' | 'absent';
  readonly one: string;
  readonly many: string;
}

/** What a study says of its witness. */
export interface WitnessChoice {
  readonly is: 'column' | 'row';
  readonly noun: string;
  readonly plural?: string | undefined;
}

/**
 * @param choice what the study says; undefined where nobody has said anything.
 * @returns the witness, and the table with the items that may be relied on: until they are confirmed, each
 * fragment stands for itself.
 */
export function settleWitness(
  table: FragmentTable,
  choice: WitnessChoice | undefined,
): { readonly witness: Witness; readonly table: FragmentTable } {
  const one = choice?.noun ?? 'item';
  const many = choice?.plural ?? `${one}s`;
  if (choice?.is === 'column') return { witness: { status: 'confirmed', one, many }, table };
  const alone = { ...table, item: table.id };
  if (choice?.is === 'row') return { witness: { status: 'confirmed', one, many }, table: alone };
  const status = namesObjects(table) ? 'suggested' : 'absent';
  return { witness: { status, one, many }, table: alone };
}

/** Whether several rows share a name that may be that of one object. */
function namesObjects(table: FragmentTable): boolean {
  return table.columns.has('item') || new Set(table.item).size < table.rows;
}

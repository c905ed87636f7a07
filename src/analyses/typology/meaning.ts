import type { Register } from '../../attributes/definition.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { type Association, association, withoutEmptyLines } from '../../numerics/tests/contingency.ts';
import { fisherExact } from '../../numerics/tests/fisher-exact.ts';
import type { Unavailable } from '../contract.ts';

/** Whether the types go with something outside themselves. */
export interface Meaning {
  readonly attribute: string;
  readonly label: string;
  readonly kinds: readonly string[];
  /** counts[type][kind], empty types and kinds left out. */
  readonly counts: readonly (readonly number[])[];
  /** Places of the types that the lines of `counts` stand for. */
  readonly types: readonly number[];
  readonly association: Association | Unavailable;
  /** Exact or resampled where an expected count is below 5, from chi-squared otherwise. */
  readonly p: number | Unavailable;
  /** Over all attributes set against the types (Holm). */
  readonly pAdjusted: number | Unavailable;
  readonly method: string;
}

/** Sets the types against each attribute that the table records; defining ones are left out as circular. */
export function meaningOf(
  table: FragmentTable,
  rows: Int32Array,
  types: Int32Array,
  count: number,
  against: readonly string[],
  register: Register,
  random: Random,
): Meaning[] {
  const typeOf = new Map(Array.from(rows, (row, place) => [row, types[place]]));
  const tests = against.flatMap((id) => {
    if (id !== 'assemblage' && !table.columns.has(id)) return [];
    const { groups } = groupRows(table, [id], register);
    const counts = Array.from({ length: count }, (_, type) =>
      groups.map((group) => group.rows.filter((row) => typeOf.get(row) === type).length),
    );
    const trimmed = withoutEmptyLines(counts);
    const found = association(trimmed.table);
    const tested = testOf(found, trimmed.table, random.stream(id));
    return [
      {
        attribute: id,
        label: id === 'assemblage' ? 'Assemblage' : (register.attributes.get(id)?.label ?? id),
        kinds: trimmed.columns.map((column) => groups[column].labels[0]),
        counts: trimmed.table,
        types: trimmed.rows,
        association: found,
        ...tested,
      },
    ];
  });
  const adjusted = adjustKnown(
    tests.map(({ p }) => p),
    'holm',
  );
  return tests.map((test, place) => ({ ...test, pAdjusted: adjusted[place] }));
}

function testOf(found: Association | Unavailable, counts: readonly (readonly number[])[], random: Random) {
  if ('why' in found) return { p: found, method: '' };
  if (found.smallestExpected >= 5) return { p: found.p, method: 'chi-squared' };
  const exact = fisherExact(counts, random, 1999);
  if ('why' in exact) return { p: exact, method: '' };
  return { p: exact.p, method: exact.method === 'exact' ? 'Fisher exact' : 'Fisher, resampled' };
}

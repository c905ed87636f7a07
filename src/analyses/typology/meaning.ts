import type { Register } from '../../attributes/definition.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { type Association, withoutEmptyLines } from '../../numerics/tests/contingency.ts';
import { toldAt } from '../verdicts.ts';
import { testAssociation } from './association.ts';
import type { Meaning } from './found.ts';

/** Sets the types against each attribute that the table records; defining ones are left out as circular. */
export function meaningOf(
  table: FragmentTable,
  rows: Int32Array,
  types: Int32Array,
  count: number,
  against: readonly string[],
  register: Register,
  confidence: number,
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
    const tested = testAssociation(trimmed.table, random.stream(id));
    return [
      {
        attribute: id,
        label: id === 'assemblage' ? 'Assemblage' : (register.attributes.get(id)?.label ?? id),
        kinds: trimmed.columns.map((column) => groups[column].labels[0]),
        counts: trimmed.table,
        types: trimmed.rows,
        ...tested,
        strongest: 'why' in tested.association ? null : strongestOf(tested.association),
      },
    ];
  });
  const adjusted = adjustKnown(
    tests.map(({ p }) => p),
    'holm',
  );
  return tests.map((test, place) => ({
    ...test,
    pAdjusted: adjusted[place],
    told: toldAt(adjusted[place], confidence),
  }));
}

function strongestOf({ residuals }: Association): Meaning['strongest'] {
  let best: Meaning['strongest'] = null;
  residuals.forEach((cells, type) => {
    cells.forEach((residual, kind) => {
      if (Math.abs(residual) > Math.abs(best?.residual ?? 0)) best = { type, kind, residual };
    });
  });
  return best;
}

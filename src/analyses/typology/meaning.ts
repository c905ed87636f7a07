import type { Register } from '../../attributes/definition.ts';
import { groupRows } from '../../fragments/groups.ts';
import { atLevelOf, type Groups } from '../../fragments/level/common-level.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { testAssociation } from '../../numerics/tests/association-test.ts';
import { type Association, withoutEmptyLines } from '../../numerics/tests/contingency.ts';
import { levelSaid } from '../shared/level/said.ts';
import { toldAt } from '../verdicts.ts';
import type { Meaning } from './found.ts';
import type { TypologyOptions } from './options.ts';

/**
 * Sets the types against each attribute that the table records; defining ones are left out as circular. Kinds are
 * counted at the level to which they were recorded of every type.
 */
export function meaningOf(
  table: FragmentTable,
  rows: Int32Array,
  types: Int32Array,
  labels: readonly string[],
  { against, level, confidence }: Pick<TypologyOptions, 'against' | 'level' | 'confidence'>,
  register: Register,
  random: Random,
): Meaning[] {
  const typed = labels.map((label, type) => ({
    labels: [label],
    rows: Array.from(rows).filter((_, place) => types[place] === type),
  }));
  const tests = against.flatMap((id) => {
    if (id !== 'assemblage' && !table.columns.has(id)) return [];
    const found = atLevelOf(table, id, typed, register, { level });
    const counted = countTypes(found.table, id, typed, register);
    const tested = testAssociation(counted.counts, random.stream(id));
    const recorded = found.differs
      ? testAssociation(countTypes(table, id, typed, register).counts, random.stream(`${id} as recorded`)).p
      : null;
    return [
      {
        attribute: id,
        label: id === 'assemblage' ? 'Assemblage' : (register.attributes.get(id)?.label ?? id),
        ...counted,
        ...tested,
        level: levelSaid(level, found),
        asRecorded: recorded,
        strongest: 'why' in tested.association ? null : strongestOf(tested.association),
      },
    ];
  });
  const adjusted = adjustKnown(
    tests.map(({ p }) => p),
    'holm',
  );
  // Held at the same adjusted level: each by its own family of p, the recorded one in its place.
  const asRecorded = tests.map(({ asRecorded: own }, place) =>
    own === null
      ? null
      : toldAt(
          adjustKnown(
            tests.map(({ p }, other) => (other === place ? own : p)),
            'holm',
          )[place],
          confidence,
        ),
  );
  return tests.map((test, place) => ({
    ...test,
    pAdjusted: adjusted[place],
    told: toldAt(adjusted[place], confidence),
    asRecorded: asRecorded[place],
  }));
}

/** Types by the kinds of an attribute, lines without a record left out. */
function countTypes(
  table: FragmentTable,
  id: string,
  typed: Groups,
  register: Register,
): Pick<Meaning, 'counts' | 'types' | 'kinds'> {
  const kindOf = new Map<number, number>();
  const { groups } = groupRows(table, [id], register);
  groups.forEach(({ rows }, kind) => {
    for (const row of rows) kindOf.set(row, kind);
  });
  const counts = typed.map(({ rows }) =>
    groups.map((_, kind) => rows.filter((row) => kindOf.get(row) === kind).length),
  );
  const trimmed = withoutEmptyLines(counts);
  return {
    counts: trimmed.table,
    types: trimmed.rows,
    kinds: trimmed.columns.map((column) => groups[column].labels[0]),
  };
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

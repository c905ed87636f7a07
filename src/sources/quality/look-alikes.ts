import type { Register } from '../../attributes/definition.ts';
import { isOfSide, LOOK_ALIKES, type LookAlike } from '../../attributes/look-alikes.ts';
import { partsOf } from '../../attributes/mixtures.ts';
import { isWithin } from '../../attributes/tree.ts';
import { termAt } from '../../fragments/accessors.ts';
import type { FragmentTable } from '../../fragments/table.ts';

/** A pair of look-alikes of which a table names one or both. */
export interface LookAlikeMet {
  readonly of: LookAlike;
  /** Records of each side. */
  readonly counts: readonly [number, number];
}

/** Terms met in a table that may have been written for another. Nothing is changed for it. */
export function lookAlikes(table: FragmentTable, register: Register): LookAlikeMet[] {
  return LOOK_ALIKES.flatMap((pair) => {
    const counts = pair.sides.map((side) => {
      const column = table.columns.get(side.attribute);
      const vocabulary = register.vocabularies.get(column?.attribute.vocabulary ?? '');
      if (column?.kind !== 'term' || vocabulary === undefined) return 0;
      let n = 0;
      for (let row = 0; row < table.rows; row++) {
        const term = termAt(column, row);
        if (term === null || !preservedSo(pair, table, row, register)) continue;
        if (partsOf(term, vocabulary).some((part) => isOfSide(side, side.attribute, part, vocabulary)))
          n += 1;
      }
      return n;
    });
    const [a = 0, b = 0] = counts;
    return a + (pair.secondIsCommon ? 0 : b) === 0 ? [] : [{ of: pair, counts: [a, b] as const }];
  });
}

function preservedSo(
  { preservation }: LookAlike,
  table: FragmentTable,
  row: number,
  register: Register,
): boolean {
  if (preservation === undefined) return true;
  const column = table.columns.get('preservation');
  const vocabulary = register.vocabularies.get('preservation');
  if (column?.kind !== 'term' || vocabulary === undefined) return false;
  const term = termAt(column, row);
  return term !== null && preservation.some((one) => isWithin(vocabulary, term, one));
}

/** "Linking and sprang (2 and 1 records): …". */
export function lookAlikeInWords({ of: { pair, tells, source }, counts: [a, b] }: LookAlikeMet): string {
  const name = pair.charAt(0).toUpperCase() + pair.slice(1);
  return `${name} (${a} and ${b}) are told apart by ${tells} (${source.replace(', no source', '')}).`;
}

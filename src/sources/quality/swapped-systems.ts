import type { Register } from '../../attributes/definition.ts';
import { isWithin } from '../../attributes/tree.ts';
import { midpoint, termAt } from '../../fragments/accessors.ts';
import type { FragmentTable } from '../../fragments/table.ts';

/** Two sources whose like fabrics have their denser system under opposite names. */
export interface SwappedSystems {
  /** Source in which system 1 is the denser one as a rule, and the one in which system 2 is. */
  readonly sources: readonly [first: string, second: string];
  /** Finds of each with the denser system where the source has it as a rule, of how many. */
  readonly of: readonly [readonly [n: number, of: number], readonly [n: number, of: number]];
}

const FEWEST = 5;
const AS_A_RULE = 0.8;
/** Fabrics whose systems can be written either way round. */
const EITHER_WAY = ['woven', 'plaited', 'matting'];

/**
 * Sources that may write warp and weft the other way round: woven and plaited finds whose counts differ, at least
 * five a source, of which four in five or more have the denser system under one name in one source and under
 * the other in another. It may be a difference of the cloths as well; the question is for a person.
 */
export function swappedSystems(table: FragmentTable, register: Register): SwappedSystems[] {
  const counts = new Map<string, { first: number; all: number }>();
  const [one, two] = [table.columns.get('density1'), table.columns.get('density2')];
  const structure = table.columns.get('structure');
  const orientation = table.columns.get('orientation');
  const vocabulary = register.vocabularies.get('structure');
  if (one?.kind !== 'numeric' || two?.kind !== 'numeric' || vocabulary === undefined) return [];
  for (let row = 0; row < table.rows; row++) {
    const kind = structure?.kind === 'term' ? termAt(structure, row) : null;
    if (kind === null || !EITHER_WAY.some((broad) => isWithin(vocabulary, kind, broad))) continue;
    if (orientation?.kind === 'term' && termAt(orientation, row) === 'untold') continue;
    const difference = midpoint(one, row) - midpoint(two, row);
    if (!(Math.abs(difference) > 0)) continue;
    const name = table.sources[table.origin[row]!.source] ?? '';
    const count = counts.get(name) ?? { first: 0, all: 0 };
    counts.set(name, { first: count.first + (difference > 0 ? 1 : 0), all: count.all + 1 });
  }
  const enough = [...counts].filter(([, { all }]) => all >= FEWEST);
  const denserFirst = enough.filter(([, { first, all }]) => first >= AS_A_RULE * all);
  const denserSecond = enough.filter(([, { first, all }]) => all - first >= AS_A_RULE * all);
  return denserFirst.flatMap(([a, x]) =>
    denserSecond.map(
      ([b, y]): SwappedSystems => ({
        sources: [a, b],
        of: [
          [x.first, x.all],
          [y.all - y.first, y.all],
        ],
      }),
    ),
  );
}

import { isKnown } from '../../fragments/comparison/find.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { NearestFirst } from '../../numerics/dissimilarity/nearest-first.ts';
import { type DissimilaritySpec, valueAt } from '../../numerics/dissimilarity/variables.ts';
import { type LessKnown, NAMED_NEAREST, type Neighbour } from './found.ts';

/**
 * A gap takes an attribute out of a pair, so that a record with gaps can be nearest because nothing is known in which it
 * differs. Null where the nearest that are named have as much of what the find has as the comparanda on average.
 *
 * @param spec the comparison on what the find has.
 */
export function lessKnownOf(
  spec: DissimilaritySpec,
  order: NearestFirst,
  distances: Float64Array,
  neighbours: readonly Neighbour[],
  records: FragmentTable,
): LessKnown | null {
  const of = spec.variables.length;
  const knownOf = (row: number) => spec.variables.filter((one) => isKnown(valueAt(one, row))).length;
  const named = neighbours.slice(0, NAMED_NEAREST);
  const mean = (rows: ArrayLike<number>) => {
    let sum = 0;
    for (let at = 0; at < rows.length; at++) sum += knownOf(rows[at]);
    return sum / rows.length;
  };
  const shared = mean(named.map(({ row }) => row));
  const others = mean(order.reached);
  if (shared >= others) return null;
  const [whole] = order.firstWhere((row) => knownOf(row) === of, 1);
  return {
    named: named.length,
    shared,
    others,
    of,
    lacking: [...new Set(named.flatMap(({ notCompared }) => notCompared))],
    whole:
      whole === undefined
        ? null
        : { id: records.id[whole], assemblage: records.assemblage[whole], distance: distances[whole] },
  };
}

import { type ComparisonSettings, compareRecords } from '../../fragments/comparison/comparison.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { dissimilaritiesTo } from '../../numerics/dissimilarity/dissimilarity.ts';
import { prepareComparison } from '../../numerics/dissimilarity/prepare.ts';
import { valueAt } from '../../numerics/dissimilarity/variables.ts';
import type { AnalysisInput } from '../contract.ts';

/**
 * To which of these medoids is each record nearest, as it is compared now? A quick view of other weights
 * while they are being set: the medoids stay, only who belongs to them changes; O(n k), where groups made
 * anew cost every pair. Of equally near medoids the first is taken; -1 where no medoid can be compared.
 *
 * @param medoids ids of records, one a group; those that are not in the table attract nobody
 */
export function nearestMedoids(
  records: FragmentTable,
  register: AnalysisInput['register'],
  settings: ComparisonSettings,
  medoids: readonly string[],
): Int32Array {
  const { spec } = compareRecords(records, register, settings);
  const prepared = prepareComparison(spec);
  const nearest = new Int32Array(records.rows).fill(-1);
  const least = new Float64Array(records.rows).fill(Number.POSITIVE_INFINITY);
  for (const [group, id] of medoids.entries()) {
    const row = records.id.indexOf(id);
    if (row < 0) continue;
    const distances = dissimilaritiesTo(
      prepared,
      spec.variables.map((variable) => valueAt(variable, row)),
    );
    for (let i = 0; i < records.rows; i++) {
      if (distances[i] < least[i]) {
        least[i] = distances[i];
        nearest[i] = group;
      }
    }
  }
  return nearest;
}

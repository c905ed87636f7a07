import { type Condensed, takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import {
  adjustedMutualInformation,
  adjustedRand,
  contingency,
  matchGroups,
} from '../../numerics/grouping/agreement.ts';
import { medoids } from '../../numerics/grouping/medoids.ts';
import { groupStability } from '../../numerics/grouping/stability.ts';
import type { Unavailable } from '../contract.ts';
import type { FreeGroups } from './apart-found.ts';

const RESAMPLES = 100;
/** Below this mean coefficient a group is not to be trusted (Hennig 2007). */
const SHAKY = 0.6;

/**
 * Do groups found without the types find them? As many medoid groups as there are types, on the attributes
 * that did not define them; and again on items drawn anew, each type compared with the nearest group by
 * Jaccard's coefficient (Hennig 2007).
 *
 * @param items item of each record; records of one item are drawn together.
 */
export function groupFreely(
  matrix: Condensed,
  labels: Int32Array,
  count: number,
  items: Int32Array,
  random: Random,
): FreeGroups | Unavailable {
  const k = new Set(labels).size;
  if (k < 2) return { why: 'only one type has records to compare' };
  const { membership } = medoids(matrix, k);
  const table = contingency(labels, membership);
  const countOf = (type: number, group: number) =>
    type < table.rows ? table.counts[type * table.columns + group] : 0;
  const stability = groupStability({
    membership: labels,
    items,
    resamples: RESAMPLES,
    random,
    regroup: (rows) =>
      rows.length < k ? rows.map(() => 0) : medoids(takeRecords(matrix, rows), k).membership,
  });
  const present = new Set(labels);
  return {
    membership,
    counts: Array.from({ length: count }, (_, type) =>
      Array.from({ length: k }, (__, group) => countOf(type, group)),
    ),
    match: Array.from({ length: count }, (_, type) => matchGroups(table)[type] ?? -1),
    adjustedRand: adjustedRand(table),
    adjustedMutualInformation: adjustedMutualInformation(table),
    stability,
    shaky: stability.flatMap(({ mean }, type) => (present.has(type) && mean < SHAKY ? [type] : [])),
  };
}

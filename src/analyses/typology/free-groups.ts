import { type Condensed, takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import {
  adjustedMutualInformation,
  adjustedRand,
  contingency,
  matchGroups,
} from '../../numerics/grouping/agreement.ts';
import { medoids } from '../../numerics/grouping/medoids.ts';
import { type GroupStability, groupStability } from '../../numerics/grouping/stability.ts';
import type { Unavailable } from '../contract.ts';

/** Groups found without the types, set against them. */
export interface FreeGroups {
  /** Group of each compared record, as many groups as types. */
  readonly membership: Int32Array;
  /** counts[type][group] */
  readonly counts: readonly (readonly number[])[];
  /** Group that answers to each type, -1 for none. */
  readonly match: readonly number[];
  readonly adjustedRand: number | Unavailable;
  readonly adjustedMutualInformation: number | Unavailable;
  /** How well free groups of records drawn again find each type, by its place; none where a type has no record. */
  readonly stability: readonly GroupStability[];
}

const MOST = 3000;
const RESAMPLES = 100;

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
  if (matrix.n > MOST)
    return { why: `${matrix.n} records are too many to group here; use the analysis "grouping"` };
  const { membership } = medoids(matrix, k);
  const table = contingency(labels, membership);
  const countOf = (type: number, group: number) =>
    type < table.rows ? table.counts[type * table.columns + group] : 0;
  return {
    membership,
    counts: Array.from({ length: count }, (_, type) =>
      Array.from({ length: k }, (__, group) => countOf(type, group)),
    ),
    match: Array.from({ length: count }, (_, type) => matchGroups(table)[type] ?? -1),
    adjustedRand: adjustedRand(table),
    adjustedMutualInformation: adjustedMutualInformation(table),
    stability: groupStability({
      membership: labels,
      items,
      resamples: RESAMPLES,
      random,
      regroup: (rows) =>
        rows.length < k ? rows.map(() => 0) : medoids(takeRecords(matrix, rows), k).membership,
    }),
  };
}

import type { Condensed } from '../dissimilarity/condensed.ts';
import { type DensityGrouping, excessOfMass } from './condensed-tree.ts';
import { requireKnown } from './known-records.ts';
import { spanningMerges } from './spanning-tree.ts';
import { numberMerges } from './tree.ts';

export interface DensitySettings {
  /** Fewest records that make a group, 2 or more. */
  readonly smallestGroup: number;
  /** Records, the record itself included, within whose reach a record is dense; 1 or more. */
  readonly neighbours: number;
}

/**
 * Which records lie in dense regions that persist over a range of densities, and which in none?
 *
 * HDBSCAN (Campello, Moulavi & Sander 2013, *PAKDD*, LNCS 7819:160) on any dissimilarity: core distances,
 * single linkage of mutual reachabilities, the tree condensed to clusters of at least `smallestGroup`, and
 * those with the greatest excess of mass taken (their alg. 2). The whole table is never one group: with no
 * split into two groups large enough all records are noise. Groups may have any shape; the number follows
 * from the data. O(n²) time, O(n) memory beside the matrix. Equal dissimilarities: see `spanningMerges`.
 */
export function densityGroups(matrix: Condensed, settings: DensitySettings): DensityGrouping {
  const { smallestGroup, neighbours } = settings;
  requireKnown(matrix, 'densityGroups');
  if (!(smallestGroup >= 2) || !(neighbours >= 1)) {
    throw new RangeError('densityGroups needs smallestGroup of 2 or more and neighbours of 1 or more');
  }
  const { n } = matrix;
  if (n < 2) return { k: 0, membership: new Int32Array(n).fill(-1), strength: new Float64Array(n) };
  const core = coreDistances(matrix, Math.min(neighbours, n));
  return excessOfMass(numberMerges(n, spanningMerges(matrix, core)), smallestGroup);
}

/** Distance to the m-th nearest record, the record itself being the first. */
function coreDistances({ n, values }: Condensed, m: number): Float64Array {
  if (m === 1) return new Float64Array(n);
  const keep = m - 1;
  /** The `keep` least distances of each record so far, ascending. */
  const nearest = new Float64Array(n * keep).fill(Number.POSITIVE_INFINITY);
  const insert = (row: number, value: number) => {
    const start = row * keep;
    let place = start + keep - 1;
    if (value >= nearest[place]) return;
    for (; place > start && nearest[place - 1] > value; place--) nearest[place] = nearest[place - 1];
    nearest[place] = value;
  };
  let pair = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const value = values[pair++];
      insert(i, value);
      insert(j, value);
    }
  }
  return Float64Array.from({ length: n }, (_, row) => nearest[row * keep + keep - 1]);
}

import type { Condensed } from '../dissimilarity/condensed.ts';
import { closestPairMerges } from './closest-pair.ts';
import { withClusters } from './clusters.ts';
import { requireKnown } from './known-records.ts';
import { mutualRounds } from './mutual-rounds.ts';
import { chainMerges } from './nearest-neighbour-chain.ts';
import { spanningMerges } from './spanning-tree.ts';
import { type MergeTree, numberMerges } from './tree.ts';

/**
 * How the dissimilarity of a new cluster to the others is made from those of its two parts
 * (Lance & Williams 1967, *Computer Journal* 9:373).
 *
 * - `single`, `complete`: least and greatest dissimilarity between members.
 * - `average`: mean over all pairs of members (UPGMA). `mcquitty`: mean of the two parts (WPGMA).
 * - `ward`: least growth of the within-cluster sum of squares, from plain dissimilarities; they are squared
 *   inside and heights are on their scale (ward.D2 of R, `ward` of scipy; Murtagh & Legendre 2014).
 * - `ward-squared`: the same recurrence on the values as given, so it expects *squared* dissimilarities and
 *   gives squared heights (ward.D of R).
 * - `centroid`, `median`: distance of centroids, or of the midpoint of the two parts; from plain Euclidean
 *   distances, squared inside, heights on their scale (scipy; R's hclust expects squares). Heights may fall
 *   again (inversions), and on other dissimilarities they have no geometric meaning.
 */
export const LINKAGES = [
  'single',
  'complete',
  'average',
  'mcquitty',
  'ward',
  'ward-squared',
  'centroid',
  'median',
] as const;
export type Linkage = (typeof LINKAGES)[number];

/** Records from which merges come in rounds first; below, the chain alone is as fast. */
const ROUNDS_FROM = 1000;

/**
 * Which records join first, which clusters next, and at what height?
 *
 * Agglomerative grouping. Single linkage by Prim's spanning tree; complete, average, McQuitty and Ward by
 * the nearest-neighbour chain (Murtagh 1983, *Computer Journal* 26:354), O(n²), which rounds of mutual nearest
 * neighbours precede on large tables; centroid and median, for which neither is valid, by the closest pair with
 * cached neighbours (Müllner 2011, arXiv:1109.2378, fig. 3). Ties: a chain prefers its previous link, then the
 * lowest row, a round the lowest row that is free; of equal heights the merge found first is numbered first. Without
 * rounds that is the tree of scipy. Other tie rules can give other trees from the same data.
 *
 * @param matrix every pair known (RangeError otherwise), at least one record; left unchanged
 * @param roundsFrom records from which rounds come first
 */
export function linkage(matrix: Condensed, method: Linkage, roundsFrom = ROUNDS_FROM): MergeTree {
  const { n, values } = matrix;
  if (n < 1) throw new RangeError('linkage needs at least one record');
  switch (method) {
    case 'single':
      requireKnown(matrix, 'linkage');
      return numberMerges(n, spanningMerges(matrix));
    case 'centroid':
    case 'median': {
      requireKnown(matrix, 'linkage');
      const squares = { n, values: values.map((value) => value * value) };
      const merges = closestPairMerges(squares, method);
      return numberMerges(n, merges.map(rooted), false);
    }
    default:
      return withClusters(matrix, (clusters) => {
        if (n >= roundsFrom) mutualRounds(clusters, method);
        chainMerges(clusters, method);
        return numberMerges(n, clusters.merges);
      });
  }
}

function rooted(merge: { a: number; b: number; height: number }) {
  return { ...merge, height: Math.sqrt(Math.max(0, merge.height)) };
}

import type { Condensed } from '../dissimilarity/condensed.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { groupSizes } from './silhouette.ts';

export interface Validity {
  /** Between-group over within-group mean square (Caliński & Harabasz 1974, *Commun. Stat.* 3:1, eq. 3); larger is better. */
  readonly calinskiHarabasz: number | Unavailable;
  /** Mean over groups of the worst ratio of spreads to distance (Davies & Bouldin 1979, *IEEE PAMI* 1:224); smaller is better. */
  readonly daviesBouldin: number | Unavailable;
  /** Least dissimilarity between groups over greatest within one (Dunn 1974, *J. Cybern.* 4:95); larger is better. */
  readonly dunn: number | Unavailable;
}

/**
 * How compact and how separate are the groups? Three indices from dissimilarities alone: centroids need no
 * coordinates, since squared distances to and between them follow from the squared dissimilarities (Gower
 * 1966). On Euclidean distances they equal the coordinate formulas; where the dissimilarity is not
 * Euclidean a squared distance can come out negative and is then taken as 0. Records with label -1 are left
 * out. Each index says why where it cannot be computed.
 *
 * Davies-Bouldin takes the mean (not the root mean square) distance to the centroid, as scikit-learn does.
 */
export function validity(matrix: Condensed, membership: ArrayLike<number>): Validity {
  const { n, values } = matrix;
  const size = groupSizes(membership, n);
  const groups = [...size.keys()].filter((group) => size[group] > 0);
  const k = size.length;
  const grouped = size.reduce((total, count) => total + count, 0);
  if (groups.length < 2) {
    const why = { why: 'there are fewer than two groups' };
    return { calinskiHarabasz: why, daviesBouldin: why, dunn: why };
  }
  const squares = new Float64Array(k * k);
  const toGroup = new Float64Array(n);
  let separation = Number.POSITIVE_INFINITY;
  let diameter = 0;
  let place = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const distance = values[place++];
      const a = membership[i];
      const b = membership[j];
      if (a < 0 || b < 0) continue;
      const square = distance * distance;
      squares[a * k + b] += square;
      if (a !== b) {
        squares[b * k + a] += square;
        separation = Math.min(separation, distance);
      } else {
        toGroup[i] += square;
        toGroup[j] += square;
        diameter = Math.max(diameter, distance);
      }
    }
  }
  const total = groups.reduce(
    (sum, a) => sum + groups.reduce((part, b) => part + (b >= a ? squares[a * k + b] : 0), 0),
    0,
  );
  const within = groups.reduce((sum, a) => sum + squares[a * k + a] / size[a], 0);
  const between = total / grouped - within;
  return {
    calinskiHarabasz: ratio(
      between / (groups.length - 1),
      within / (grouped - groups.length),
      'no two members of any group differ, or every record is a group of its own',
    ),
    daviesBouldin: daviesBouldin(groups, size, squares, toGroup, membership),
    dunn: ratio(separation, diameter, 'no two members of any group differ'),
  };
}

function ratio(above: number, below: number, why: string): number | Unavailable {
  return below > 0 ? above / below : { why };
}

function daviesBouldin(
  groups: readonly number[],
  size: Int32Array,
  squares: Float64Array,
  toGroup: Float64Array,
  membership: ArrayLike<number>,
): number | Unavailable {
  const k = size.length;
  /** Half the mean squared dissimilarity of all ordered pairs: the mean squared distance to the centroid. */
  const inner = (group: number) => squares[group * k + group] / (size[group] * size[group]);
  const spread = new Float64Array(k);
  for (let i = 0; i < toGroup.length; i++) {
    const group = membership[i];
    if (group < 0) continue;
    spread[group] += Math.sqrt(Math.max(0, toGroup[i] / size[group] - inner(group))) / size[group];
  }
  let sum = 0;
  for (const a of groups) {
    let worst = 0;
    for (const b of groups) {
      if (a === b) continue;
      const apart = squares[a * k + b] / (size[a] * size[b]) - inner(a) - inner(b);
      if (!(apart > 0)) return { why: 'two groups share one centre' };
      worst = Math.max(worst, (spread[a] + spread[b]) / Math.sqrt(apart));
    }
    sum += worst;
  }
  return sum / groups.length;
}

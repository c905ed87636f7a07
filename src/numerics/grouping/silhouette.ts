import type { Condensed } from '../dissimilarity/condensed.ts';

export interface Silhouette {
  /** s(i) = (b - a) / max(a, b), one a record; NaN for a record in no group (membership -1). */
  readonly widths: Float64Array;
  /** The nearest other group of each record; -1 for a record in no group. */
  readonly neighbour: Int32Array;
  /** Mean width of each group. */
  readonly groups: Float64Array;
  /** Mean width of all grouped records. */
  readonly mean: number;
}

/**
 * Does each record sit better in its own group than in the next one?
 *
 * Silhouette width (Rousseeuw 1987, *J. Comput. Appl. Math.* 20:53, eq. 2): a is the mean dissimilarity to
 * the other members of the own group, b the least mean dissimilarity to another group. From -1 (belongs
 * elsewhere) over 0 (between two) to 1. A record alone in its group gets 0 (same paper), as does one with
 * a = b = 0. Null where fewer than two groups have members, since there is no other group to compare with.
 *
 * @param membership group of each record, 0 … groups - 1, or -1 for none; empty groups are allowed and get 0
 */
export function silhouette(matrix: Condensed, membership: ArrayLike<number>): Silhouette | null {
  const { n, values } = matrix;
  const size = groupSizes(membership, n);
  const k = size.length;
  if (size.filter((members) => members > 0).length < 2) return null;
  const sums = new Float64Array(n * k);
  let place = 0;
  for (let i = 0; i < n; i++) {
    const groupI = membership[i];
    if (groupI < 0) {
      place += n - i - 1;
      continue;
    }
    const row = i * k;
    for (let j = i + 1; j < n; j++) {
      const distance = values[place++];
      const groupJ = membership[j];
      if (groupJ < 0) continue;
      sums[row + groupJ] += distance;
      sums[j * k + groupI] += distance;
    }
  }
  return fromSums(sums, size, membership, n);
}

function fromSums(
  sums: Float64Array,
  size: Int32Array,
  membership: ArrayLike<number>,
  n: number,
): Silhouette {
  const k = size.length;
  const widths = new Float64Array(n).fill(Number.NaN);
  const neighbour = new Int32Array(n).fill(-1);
  const groups = new Float64Array(k);
  let total = 0;
  let grouped = 0;
  for (let i = 0; i < n; i++) {
    const own = membership[i];
    if (own < 0) continue;
    let between = Number.POSITIVE_INFINITY;
    for (let group = 0; group < k; group++) {
      if (group === own || size[group] === 0) continue;
      const mean = sums[i * k + group] / size[group];
      if (mean < between) {
        between = mean;
        neighbour[i] = group;
      }
    }
    const within = size[own] > 1 ? sums[i * k + own] / (size[own] - 1) : 0;
    const larger = Math.max(within, between);
    widths[i] = size[own] === 1 || larger === 0 ? 0 : (between - within) / larger;
    groups[own] += widths[i];
    total += widths[i];
    grouped++;
  }
  for (let group = 0; group < k; group++) groups[group] = size[group] === 0 ? 0 : groups[group] / size[group];
  return { widths, neighbour, groups, mean: total / grouped };
}

/** Number of members of each group 0 … largest label; records with -1 count nowhere. */
export function groupSizes(membership: ArrayLike<number>, n: number = membership.length): Int32Array {
  let most = -1;
  for (let i = 0; i < n; i++) if (membership[i] > most) most = membership[i];
  const size = new Int32Array(most + 1);
  for (let i = 0; i < n; i++) if (membership[i] >= 0) size[membership[i]]++;
  return size;
}

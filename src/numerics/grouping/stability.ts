import type { Random } from '../foundation/random.ts';

export interface GroupStability {
  /** Mean over resamples of the Jaccard coefficient with the most similar new group; NaN without any. */
  readonly mean: number;
  /** Resamples in which that was 0.5 or less: the group had dissolved. */
  readonly dissolved: number;
  /** Resamples in which that was 0.75 or more: the group had been found again. */
  readonly recovered: number;
  /** Resamples that held at least one member of the group. */
  readonly resamples: number;
}

export interface StabilityRequest {
  /** Group of each record, 0 … k - 1, -1 for none. */
  readonly membership: ArrayLike<number>;
  /** Item of each record, 0 … : records of one item are drawn together. */
  readonly items: ArrayLike<number>;
  readonly resamples: number;
  /** Groups the records at these rows anew, by the same method as before; one label a row. */
  readonly regroup: (rows: Int32Array) => ArrayLike<number>;
  readonly random: Random;
  readonly onProgress?: (share: number) => void;
}

/**
 * Would each group be found again in other finds of the same kind?
 *
 * Items are drawn with replacement, as many as there are; an item drawn twice counts once (so about 63 %
 * take part, `multipleboot = FALSE` of R's fpc), the drawn records are grouped anew, and each original
 * group, cut down to the drawn records, is compared with the most similar new one by Jaccard's coefficient
 * (Hennig 2007, *Comput. Stat. Data Anal.* 52:258). Hennig's reading: 0.85 and more highly stable, from
 * 0.75 a valid group, 0.6 to 0.75 a pattern whose membership is doubtful, below that not to be trusted.
 */
export function groupStability(request: StabilityRequest): GroupStability[] {
  const { membership, items, random } = request;
  const n = membership.length;
  let itemCount = 0;
  let k = 0;
  for (let i = 0; i < n; i++) {
    itemCount = Math.max(itemCount, items[i] + 1);
    k = Math.max(k, membership[i] + 1);
  }
  const sums = new Float64Array(k);
  const counts = Array.from({ length: k }, () => ({ dissolved: 0, recovered: 0, resamples: 0 }));
  for (let draw = 0; draw < request.resamples; draw++) {
    const drawn = new Uint8Array(itemCount);
    for (let t = 0; t < itemCount; t++) drawn[random.integer(itemCount)] = 1;
    const rows = Int32Array.from({ length: n }, (_, i) => i).filter((i) => drawn[items[i]] === 1);
    const again = bestJaccard(membership, rows, request.regroup(rows), k);
    for (let group = 0; group < k; group++) {
      const value = again[group];
      if (Number.isNaN(value)) continue;
      sums[group] += value;
      counts[group].resamples++;
      if (value <= 0.5) counts[group].dissolved++;
      if (value >= 0.75) counts[group].recovered++;
    }
    request.onProgress?.((draw + 1) / request.resamples);
  }
  return counts.map((count, group) => ({ ...count, mean: sums[group] / count.resamples }));
}

/**
 * For each original group its greatest Jaccard coefficient with a new one; NaN where no member was drawn.
 *
 * @param membership group of every record, 0 … k - 1, -1 for none; `rows` those grouped anew, `again` their labels
 */
export function bestJaccard(
  membership: ArrayLike<number>,
  rows: Int32Array,
  again: ArrayLike<number>,
  k: number,
): Float64Array {
  let groups = 0;
  for (let t = 0; t < rows.length; t++) groups = Math.max(groups, again[t] + 1);
  const common = new Float64Array(k * groups);
  const oldSize = new Float64Array(k);
  const newSize = new Float64Array(groups);
  for (let t = 0; t < rows.length; t++) {
    const before = membership[rows[t]];
    const now = again[t];
    if (before >= 0) oldSize[before]++;
    if (now >= 0) newSize[now]++;
    if (before >= 0 && now >= 0) common[before * groups + now]++;
  }
  return Float64Array.from(oldSize, (size, group) => {
    if (size === 0) return Number.NaN;
    let best = 0;
    for (let other = 0; other < groups; other++) {
      const both = common[group * groups + other];
      best = Math.max(best, both / (size + newSize[other] - both));
    }
    return best;
  });
}

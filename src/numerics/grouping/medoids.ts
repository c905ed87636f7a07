import type { Condensed } from '../dissimilarity/condensed.ts';
import { requireKnown } from './known-records.ts';
import { type FullMatrix, withFullMatrix } from './medoid-sums.ts';

export interface MedoidGrouping {
  readonly k: number;
  /** Rows of the medoids, ascending. */
  readonly medoids: Int32Array;
  /** Place in `medoids` of the nearest medoid, one a record; equal distances go to the earlier medoid. */
  readonly membership: Int32Array;
  /** Sum of dissimilarities to the nearest medoid. */
  readonly cost: number;
  /** The same after BUILD, before any swap. */
  readonly buildCost: number;
  readonly swaps: number;
}

/**
 * Which k records stand best for all the others, and which records does each stand for?
 *
 * k-medoids (PAM): the greedy BUILD of Kaufman & Rousseeuw 1990, *Finding Groups in Data*, ch. 2, then the
 * best swap of a medoid with another record, again and again until none lowers the cost. The best of all
 * k(n - k) swaps is found in one pass over the pairs by the FastPAM1 regrouping of the sums (Schubert &
 * Rousseeuw 2021, *Inf. Syst.* 101:101804, alg. 2 and 3), so the path and the optimum are those of the
 * classical method at 1/k of its work. Deterministic: of equal swaps the one with the lowest candidate
 * row, then the lowest medoid row. Memory 8 n² bytes beside the matrix, which is laid out in full for the kernels.
 *
 * @param matrix every pair known (RangeError otherwise); any dissimilarity, no metric needed
 * @param k 1 … n (RangeError otherwise); medoids are distinct records even where records are equal
 */
export function medoids(matrix: Condensed, k: number): MedoidGrouping {
  requireCount(matrix, k, 'medoids');
  requireKnown(matrix, 'medoids');
  return withFullMatrix(matrix, k, (full) => improve(full, buildMedoids(full, k)));
}

/**
 * The same for every k from `least` to `most`; BUILD is shared, since its first k choices do not depend on
 * how many follow.
 */
export function medoidsForEach(matrix: Condensed, least: number, most: number): MedoidGrouping[] {
  requireCount(matrix, least, 'medoidsForEach');
  requireCount(matrix, most, 'medoidsForEach');
  requireKnown(matrix, 'medoidsForEach');
  return withFullMatrix(matrix, most, (full) => {
    const built = buildMedoids(full, most);
    return Array.from({ length: most - least + 1 }, (_, step) =>
      improve(full, built.subarray(0, least + step)),
    );
  });
}

/** BUILD: first the record with the least sum of dissimilarities, then each time the one that lowers the cost most. */
function buildMedoids(full: FullMatrix, k: number): Int32Array {
  const { n } = full;
  const chosen = new Int32Array(k);
  const nearest = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const taken = new Uint8Array(n);
  for (let step = 0; step < k; step++) {
    const gain = step === 0 ? full.negativeSums() : full.gains(nearest);
    let best = -1;
    for (let i = 0; i < n; i++) if (taken[i] === 0 && (best < 0 || gain[i] > gain[best])) best = i;
    chosen[step] = best;
    taken[best] = 1;
    const row = full.row(best);
    for (let i = 0; i < n; i++) nearest[i] = Math.min(nearest[i], row[i]);
  }
  return chosen;
}

interface Assignment {
  /** Place of the nearest medoid, and the dissimilarities to the nearest and the second nearest medoid. */
  readonly place: Int32Array;
  readonly first: Float64Array;
  readonly second: Float64Array;
  readonly cost: number;
}

function assign(full: FullMatrix, chosen: Int32Array): Assignment {
  const { n } = full;
  const place = new Int32Array(n);
  const first = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const second = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  for (let m = 0; m < chosen.length; m++) {
    const row = full.row(chosen[m]);
    for (let i = 0; i < n; i++) {
      const distance = row[i];
      if (distance < first[i]) {
        second[i] = first[i];
        first[i] = distance;
        place[i] = m;
      } else if (distance < second[i]) second[i] = distance;
    }
  }
  for (let m = 0; m < chosen.length; m++) place[chosen[m]] = m;
  let cost = 0;
  for (let i = 0; i < n; i++) cost += first[i];
  return { place, first, second, cost };
}

function improve(full: FullMatrix, built: Int32Array): MedoidGrouping {
  let chosen = built.slice().sort();
  let now = assign(full, chosen);
  const buildCost = now.cost;
  let swaps = 0;
  while (chosen.length > 1) {
    const swap = bestSwap(full, chosen, now);
    if (swap === null || swap.change >= 0) break;
    const next = chosen.slice();
    next[swap.place] = swap.candidate;
    next.sort();
    const after = assign(full, next);
    // Among equal costs rounding could send the search in a circle: only a cost that has really fallen counts.
    if (after.cost >= now.cost * (1 - 16 * Number.EPSILON)) break;
    chosen = next;
    now = after;
    swaps++;
  }
  return { k: chosen.length, medoids: chosen, membership: now.place, cost: now.cost, buildCost, swaps };
}

interface Swap {
  readonly candidate: number;
  readonly place: number;
  readonly change: number;
}

/** The swap that lowers the cost most: what every candidate would gain, summed over pairs in one pass. */
function bestSwap(full: FullMatrix, chosen: Int32Array, now: Assignment): Swap | null {
  const { n } = full;
  const k = chosen.length;
  const { shared, extra, stride } = full.swaps(now, k);
  const removal = new Float64Array(k);
  for (let i = 0; i < n; i++) removal[now.place[i]] -= now.first[i] - now.second[i];
  let best: Swap | null = null;
  const isMedoid = new Uint8Array(n);
  for (const row of chosen) isMedoid[row] = 1;
  for (let candidate = 0; candidate < n; candidate++) {
    if (isMedoid[candidate] === 1) continue;
    for (let place = 0; place < k; place++) {
      const change = removal[place] + shared[candidate] + extra[place * stride + candidate];
      if (best === null || change < best.change) best = { candidate, place, change };
    }
  }
  return best;
}

function requireCount(matrix: Condensed, k: number, caller: string): void {
  if (Number.isInteger(k) && k >= 1 && k <= matrix.n) return;
  throw new RangeError(`${caller} needs a whole number of groups from 1 to ${matrix.n}, got ${k}`);
}

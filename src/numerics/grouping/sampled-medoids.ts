import type { Condensed } from '../dissimilarity/condensed.ts';
import type { Random } from '../foundation/random.ts';
import { medoidsForEach } from './medoids.ts';

/** Dissimilarities worked out on demand, for tables whose full matrix would not fit. */
export interface DissimilaritySource {
  readonly n: number;
  /** Among these rows; every pair must be known. */
  readonly among: (rows: Int32Array) => Condensed;
  /** Of all records to the record at this row; NaN where unknown. */
  readonly to: (row: number) => Float64Array;
}

export interface SampledMedoids {
  readonly k: number;
  /** Rows of the medoids, ascending. */
  readonly medoids: Int32Array;
  /** Place of the nearest medoid, -1 for a record that no medoid can be compared with. */
  readonly membership: Int32Array;
  /** Dissimilarity to the nearest and to the second nearest medoid. */
  readonly first: Float64Array;
  readonly second: Float64Array;
  /** Mean dissimilarity to the nearest medoid, over all records that have one. */
  readonly cost: number;
  /** Mean of (second - first) / second: silhouette width with medoids in place of whole groups. */
  readonly meanWidth: number;
}

/**
 * Medoids of a table too large for a matrix, for every k from `least` to `most`.
 *
 * CLARA (Kaufman & Rousseeuw 1990, *Finding Groups in Data*, ch. 3): medoids are found in samples, every
 * record goes to the nearest one, and the sample whose medoids cost least over *all* records is kept.
 * Memory is linear in n. The mean width is the simplified silhouette (Hruschka, de Castro & Campello 2004,
 * *Proc. IEEE ICDM*: 403).
 *
 * @param samples rows of each sample, every pair of a sample known, all larger than `most`
 */
export function sampledMedoids(
  source: DissimilaritySource,
  samples: readonly Int32Array[],
  least: number,
  most: number,
): SampledMedoids[] {
  const best: (SampledMedoids | undefined)[] = [];
  for (const rows of samples) {
    const known = new Map<number, Float64Array>();
    const distancesTo = (row: number) => {
      const have = known.get(row) ?? source.to(row);
      known.set(row, have);
      return have;
    };
    for (const found of medoidsForEach(source.among(rows), least, most)) {
      const chosen = found.medoids.map((place) => rows[place]).sort();
      const candidate = spread(source.n, chosen, distancesTo);
      const before = best[found.k - least];
      if (before === undefined || candidate.cost < before.cost) best[found.k - least] = candidate;
    }
  }
  return best.filter((entry) => entry !== undefined);
}

function spread(n: number, medoids: Int32Array, distancesTo: (row: number) => Float64Array): SampledMedoids {
  const membership = new Int32Array(n).fill(-1);
  const first = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const second = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  for (const [place, medoid] of medoids.entries()) {
    const distances = distancesTo(medoid);
    for (let i = 0; i < n; i++) {
      if (distances[i] < first[i]) {
        second[i] = first[i];
        first[i] = distances[i];
        membership[i] = place;
      } else if (distances[i] < second[i]) second[i] = distances[i];
    }
  }
  for (const [place, medoid] of medoids.entries()) membership[medoid] = place;
  let cost = 0;
  let width = 0;
  let placed = 0;
  for (let i = 0; i < n; i++) {
    if (membership[i] < 0) continue;
    placed++;
    cost += first[i];
    width += simplifiedWidth(first[i], second[i]);
  }
  return {
    k: medoids.length,
    medoids,
    membership,
    first,
    second,
    cost: cost / placed,
    meanWidth: width / placed,
  };
}

/** (second - first) / second; 0 where both are 0, 1 where no second medoid can be compared. */
export function simplifiedWidth(first: number, second: number): number {
  if (second === Number.POSITIVE_INFINITY) return 1;
  return second > 0 ? (second - first) / second : 0;
}

/** Rows of a sample without replacement, ascending, drawn by Floyd's method (Bentley & Floyd 1987, *CACM* 30:754). */
export function sampleRows(n: number, size: number, random: Random): Int32Array {
  const chosen = new Set<number>();
  for (let last = n - size; last < n; last++) {
    const row = random.integer(last + 1);
    chosen.add(chosen.has(row) ? last : row);
  }
  return Int32Array.from(chosen).sort();
}

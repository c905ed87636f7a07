import type { DissimilaritySpec } from '../../numerics/dissimilarity/variables.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { sampleRows } from '../../numerics/grouping/sampled-medoids.ts';
import { type Compared, takeCompared, takeVariables } from './compared.ts';
import type { Partition } from './found.ts';
import type { GroupingOptions } from './options.ts';
import { partitionsOf } from './partition.ts';

/** Repeated grouping of more records than this would take minutes: a sample stands for them. */
export const MOST_IN_TRUST = 500;

export interface TrustRequest {
  readonly compared: Compared;
  /** The specification of exactly these records. */
  readonly spec: DissimilaritySpec;
  readonly items: Int32Array;
  /** Site and phase of each record, "" where it is not known. */
  readonly assemblages: readonly string[];
  readonly chosen: Partition;
  readonly tried: readonly Partition[];
  readonly options: GroupingOptions;
  readonly random: Random;
  readonly onProgress: (share: number, what: string) => void;
}

export interface Base
  extends Pick<TrustRequest, 'compared' | 'spec' | 'items' | 'assemblages' | 'tried' | 'chosen'> {
  /** Where its records stand among those of the request. */
  readonly places: Int32Array;
}

/** The request itself, or for a large table a sample of it, grouped anew in the same numbers of groups. */
export function withinReach(request: TrustRequest): Base {
  const { compared, spec, items, assemblages, chosen, tried, options, random } = request;
  const n = items.length;
  if (n <= MOST_IN_TRUST || tried.length === 0) {
    return { ...request, places: Int32Array.from({ length: n }, (_, place) => place) };
  }
  const places = sampleRows(n, MOST_IN_TRUST, random.stream('trust sample'));
  const part = takeCompared(compared, places);
  const least = tried[0].k;
  const most = tried[tried.length - 1].k;
  const again = partitionsOf(part, options, least, most, random.stream('trust groups'));
  return {
    compared: part,
    spec: takeVariables(spec, places),
    items: renumber(places.map((place) => items[place])),
    assemblages: Array.from(places, (place) => assemblages[place]),
    places,
    chosen: { ...chosen, membership: places.map((place) => chosen.membership[place]) },
    tried: again.partitions,
  };
}

/** Numbers 0, 1, … in order of appearance. */
export function renumber(labels: ArrayLike<number | string>): Int32Array {
  const numbers = new Map<number | string, number>();
  return Int32Array.from({ length: labels.length }, (_, place) => {
    const known = numbers.get(labels[place]);
    if (known !== undefined) return known;
    numbers.set(labels[place], numbers.size);
    return numbers.size - 1;
  });
}

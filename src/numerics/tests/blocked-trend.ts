import type { Unavailable } from '../foundation/unavailable.ts';
import { type PermutationOptions, type PermutationTest, permutationTest } from '../resampling/permutation.ts';
import type { BlockedSample } from './blocked-sample.ts';
import { jonckheereTerpstra } from './trend.ts';

/**
 * Do values rise or fall along groups in a stated order, when readings come in blocks (fragments of one item)?
 * Two-sided: the absolute standardised statistic of Jonckheere 1954, its p by dealing whole blocks among the
 * groups, exact where all ways can be tried. Groups then differ in how many readings they are dealt, so that the
 * statistic is standardised anew each time; with one reading a block it is the usual permutation test.
 *
 * @param samples in their order, earliest first.
 */
export function blockedTrendTest(
  samples: readonly BlockedSample[],
  options: PermutationOptions,
): PermutationTest | Unavailable {
  const filled = samples.filter(({ values }) => values.length > 0);
  const plain = jonckheereTerpstra(filled.map(({ values }) => values));
  if ('why' in plain) return plain;
  const distinct = Float64Array.from(new Set(filled.flatMap(({ values }) => Array.from(values)))).sort();
  const placeOf = new Map(Array.from(distinct, (value, place) => [value, place] as const));
  const places: Int32Array[] = [];
  const labels: number[] = [];
  filled.forEach(({ values, blocks, count }, group) => {
    for (let block = 0; block < count; block++) {
      places.push(
        Int32Array.from(
          values.filter((_, i) => blocks[i] === block),
          (value) => placeOf.get(value) ?? 0,
        ),
      );
      labels.push(group);
    }
  });
  return permutationTest(labels, standardised(places, distinct.length, filled.length), options);
}

/** |z| of the groups that the blocks are dealt to. */
function standardised(places: readonly Int32Array[], levels: number, groups: number) {
  const counts = new Int32Array(groups * levels);
  const ties = new Int32Array(levels);
  for (const block of places) for (const place of block) ties[place]++;
  const n = ties.reduce((sum, count) => sum + count, 0);
  const pair = (s: number) => s * (s - 1);
  const triple = (s: number) => s * (s - 1) * (s - 2);
  const cubic = (s: number) => s * (s - 1) * (2 * s + 5);
  const total = (values: Int32Array, of: (value: number) => number) =>
    values.reduce((sum, value) => sum + of(value), 0);
  const [tiedPairs, tiedTriples, tiedCubes] = [pair, triple, cubic].map((of) => total(ties, of));
  const sizes = new Int32Array(groups);
  const below = new Float64Array(groups);
  return (labels: Int32Array): number => {
    counts.fill(0);
    sizes.fill(0);
    below.fill(0);
    for (let block = 0; block < places.length; block++) {
      const from = labels[block] * levels;
      sizes[labels[block]] += places[block].length;
      for (let i = 0; i < places[block].length; i++) counts[from + places[block][i]]++;
    }
    let statistic = 0;
    for (let level = 0; level < levels; level++) {
      let earlier = 0;
      for (let group = 0; group < groups; group++) {
        const own = counts[group * levels + level];
        statistic += own * earlier;
        earlier += below[group] + own / 2;
        below[group] += own;
      }
    }
    const mean = (n * n - total(sizes, (s) => s * s)) / 4;
    let variance = (cubic(n) - total(sizes, cubic) - tiedCubes) / 72;
    if (n > 2) variance += (total(sizes, triple) * tiedTriples) / (36 * triple(n));
    variance += (total(sizes, pair) * tiedPairs) / (8 * pair(n));
    return variance > 0 ? Math.abs(statistic - mean) / Math.sqrt(variance) : 0;
  };
}

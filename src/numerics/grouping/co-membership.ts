import { type Condensed, pairCount } from '../dissimilarity/condensed.ts';

/**
 * How often do two records fall into one group, over several groupings (methods, weights, numbers of
 * groups)? Share of those groupings that place both of them, 0 to 1; NaN for a pair that none places.
 * One minus it is a dissimilarity that can be grouped again (evidence accumulation, Fred & Jain 2005,
 * *IEEE Trans. PAMI* 27:835).
 *
 * @param groupings labels 0, 1, … of the same n records in each, -1 for none; at least one grouping
 */
export function coMembership(groupings: readonly ArrayLike<number>[]): Condensed {
  const n = groupings[0]?.length ?? 0;
  if (n === 0 || groupings.some((labels) => labels.length !== n)) {
    throw new RangeError('coMembership needs at least one grouping, all of the same records');
  }
  const values = new Float64Array(pairCount(n));
  let place = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      let both = 0;
      let together = 0;
      for (const labels of groupings) {
        if (labels[i] < 0 || labels[j] < 0) continue;
        both++;
        if (labels[i] === labels[j]) together++;
      }
      values[place++] = both === 0 ? Number.NaN : together / both;
    }
  }
  return { n, values };
}

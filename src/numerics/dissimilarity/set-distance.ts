/**
 * How far apart two sets of kinds are, from the distances of their kinds: for each kind of either set the nearest one
 * of the other, averaged within each set, and the two averages averaged. Known as the best-match average of terms of a
 * hierarchy (Wang et al. 2007, Bioinformatics 23:1274; from memory). 0 for equal sets, 1 where every kind of one is 1
 * from every kind of the other; for sets of one kind the distance of the kinds. No triangle inequality is promised.
 *
 * @param between levels * levels distances of single kinds, row by row.
 * @param a places of the kinds of one set, at least one; `b` those of the other.
 */
export function setDistance(
  between: ArrayLike<number>,
  levels: number,
  a: readonly number[],
  b: readonly number[],
): number {
  const nearest = (from: readonly number[], to: readonly number[]): number => {
    let sum = 0;
    for (const one of from) {
      let best = Infinity;
      for (const other of to) best = Math.min(best, between[one * levels + other]!);
      sum += best;
    }
    return sum / from.length;
  };
  return (nearest(a, b) + nearest(b, a)) / 2;
}

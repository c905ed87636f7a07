/**
 * Anderson-Darling statistic for several samples, in the version for ties by mid-distribution
 * (Scholz & Stephens 1987, J. Am. Stat. Assoc. 82:918, equation 7). It grows when the samples differ
 * in place, spread or shape, with weight on the tails. Its p comes from permutationTest over the
 * labels of items.
 *
 * @param values pooled readings.
 * @param labels group 0 … k-1 of each reading.
 */
export function andersonDarling(values: ArrayLike<number>, labels: ArrayLike<number>, k: number): number {
  const n = values.length;
  const order = Array.from({ length: n }, (_, i) => i).sort((a, b) => values[a] - values[b]);
  const sizes = new Float64Array(k);
  for (let i = 0; i < n; i++) sizes[labels[i]]++;
  const below = new Float64Array(k);
  const here = new Float64Array(k);
  let statistic = 0;
  let seen = 0;
  for (let start = 0; start < n; ) {
    here.fill(0);
    let end = start;
    while (end < n && values[order[end]] === values[order[start]]) here[labels[order[end++]]]++;
    const length = end - start;
    const middle = seen + length / 2;
    const scale = middle * (n - middle) - (n * length) / 4;
    if (scale > 0)
      for (let group = 0; group < k; group++) {
        const share = below[group] + here[group] / 2;
        const gap = n * share - sizes[group] * middle;
        statistic += ((length / n) * gap * gap) / scale / sizes[group];
      }
    for (let group = 0; group < k; group++) below[group] += here[group];
    seen += length;
    start = end;
  }
  return ((n - 1) / n) * statistic;
}

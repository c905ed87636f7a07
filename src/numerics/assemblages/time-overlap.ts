/**
 * How much of a span of years falls into each bin: equal shares over the half-open span [from, to), the
 * rule of aoristic weights (Ratcliffe 2000, Int. J. Geogr. Inf. Sci. 14:669; Johnson 2004; Crema 2012, J.
 * Archaeol. Method Theory 19:440). A span without length lies wholly in the bin that holds it. The
 * shares sum to 1 less what falls outside all bins.
 *
 * @param edges ascending; bin i is [edges[i], edges[i + 1]).
 *
 * Example: overlapShares(-350, -150, [-400, -300, -200, -100]) is 0.25, 0.5, 0.25.
 */
export function overlapShares(from: number, to: number, edges: readonly number[]): Float64Array {
  return Float64Array.from({ length: Math.max(0, edges.length - 1) }, (_, bin) => {
    const [start, end] = [edges[bin], edges[bin + 1]];
    if (from === to) return from >= start && from < end ? 1 : 0;
    return Math.max(0, Math.min(to, end) - Math.max(from, start)) / (to - from);
  });
}

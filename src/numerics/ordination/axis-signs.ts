/**
 * Axes have no up or down of their own. Here each is turned so that its entry of greatest size is
 * positive (the first of equals), so that the same data always give the same picture.
 *
 * @returns 1 or -1, by which every entry of the axis and of whatever goes with it is multiplied.
 */
export function axisSign(entries: Iterable<number>): 1 | -1 {
  let greatest = 0;
  for (const entry of entries) if (Math.abs(entry) > Math.abs(greatest) * (1 + 1e-9)) greatest = entry;
  return greatest < 0 ? -1 : 1;
}

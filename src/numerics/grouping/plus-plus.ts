import type { Random } from '../foundation/random.ts';
import type { Records } from './records.ts';

/**
 * Centres to start k-means from: each further one is a record drawn with chance proportional to the squared
 * distance to the nearest one so far (k-means++, Arthur & Vassilvitskii 2007, *SODA*: 1027). The distances on
 * the way are those that the first assignment would need: `membership`, `upper` and `lower` are left as it
 * would leave them.
 */
export function plusPlus({ kernels, doubles, wholes, n, k, stride }: Records, random: Random): void {
  const { records, centres, upper, lower } = doubles;
  upper.fill(Number.POSITIVE_INFINITY);
  lower.fill(Number.POSITIVE_INFINITY);
  for (let centre = 0; centre < k; centre++) {
    const chosen =
      centre === 0
        ? random.integer(n)
        : kernels.reach(upper.byteOffset, n, random.next() * kernels.sum(upper.byteOffset, n));
    const at = centre * stride;
    centres.set(records.subarray(chosen * stride, (chosen + 1) * stride), at);
    kernels.addCentre(
      ...[records.byteOffset, n, stride],
      ...[centres.byteOffset + 8 * at, centre],
      ...[wholes.membership.byteOffset, upper.byteOffset, lower.byteOffset],
    );
  }
  for (let i = 0; i < n; i++) {
    upper[i] = Math.sqrt(upper[i]);
    lower[i] = Math.sqrt(lower[i]);
  }
}

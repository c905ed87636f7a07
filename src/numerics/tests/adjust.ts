import type { Unavailable } from '../foundation/unavailable.ts';

/** Ways to adjust a family of p values for having been asked together. */
export type Adjustment = 'holm' | 'benjamini-hochberg' | 'bonferroni' | 'none';

/**
 * Adjusted p values in the order given.
 * - `holm`: Holm 1979, Scand. J. Stat. 6:65, the chance of any false alarm in the family;
 * - `benjamini-hochberg`: Benjamini & Hochberg 1995, J. R. Stat. Soc. B 57:289, the share of false alarms;
 * - `bonferroni`: each p times the size of the family.
 */
export function adjustP(p: readonly number[], method: Adjustment): number[] {
  const m = p.length;
  if (method === 'none') return [...p];
  if (method === 'bonferroni') return p.map((value) => Math.min(1, value * m));
  const order = p.map((_, index) => index).sort((a, b) => p[a] - p[b]);
  const adjusted = new Array<number>(m).fill(1);
  if (method === 'holm') {
    let running = 0;
    order.forEach((index, rank) => {
      running = Math.max(running, Math.min(1, p[index] * (m - rank)));
      adjusted[index] = running;
    });
    return adjusted;
  }
  let running = 1;
  for (let rank = m - 1; rank >= 0; rank--) {
    running = Math.min(running, (p[order[rank]] * m) / (rank + 1));
    adjusted[order[rank]] = running;
  }
  return adjusted;
}

/** As `adjustP`, where some tests could not be made: these are not counted, and keep their reason. */
export function adjustKnown(
  p: readonly (number | Unavailable)[],
  method: Adjustment,
): (number | Unavailable)[] {
  const adjusted = adjustP(
    p.filter((value): value is number => typeof value === 'number'),
    method,
  );
  let next = 0;
  return p.map((value) => (typeof value === 'number' ? adjusted[next++] : value));
}

import { exp } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { whyNotCompared } from './samples.ts';

/** Do two samples come from one distribution, whatever the kind of difference? */
export interface KolmogorovSmirnov {
  /** D, the largest distance between the two cumulative curves. */
  readonly statistic: number;
  /** Two-sided. */
  readonly p: number;
  readonly method: 'exact' | 'asymptotic';
}

/**
 * Two-sample Kolmogorov-Smirnov test. Exact, given the ties, while the lattice of n1 x n2 steps is
 * walkable (Schroeer & Trenkler 1995, Comput. Stat. Data Anal. 20:185), otherwise by the limiting
 * distribution, which ties make too large. Unavailable when a sample is empty or all values are equal.
 * Source: Smirnov 1939; Hollander & Wolfe 1999, section 5.4.
 */
export function kolmogorovSmirnov(
  first: ArrayLike<number>,
  second: ArrayLike<number>,
): KolmogorovSmirnov | Unavailable {
  const refusal = whyNotCompared([first, second]);
  if (refusal) return refusal;
  const n1 = first.length;
  const n2 = second.length;
  const pooled = [
    ...Array.from(first, (value) => ({ value, step: 1 / n1 })),
    ...Array.from(second, (value) => ({ value, step: -1 / n2 })),
  ].sort((a, b) => a.value - b.value);
  // Only where the value changes can the two curves be compared.
  const compared = pooled.map((entry, i) => i === pooled.length - 1 || entry.value !== pooled[i + 1].value);
  let gap = 0;
  let statistic = 0;
  pooled.forEach((entry, i) => {
    gap += entry.step;
    if (compared[i]) statistic = Math.max(statistic, Math.abs(gap));
  });
  if (n1 * n2 <= 4e6) return { statistic, p: walkLattice(n1, n2, statistic, compared), method: 'exact' };
  return { statistic, p: limiting(statistic * Math.sqrt((n1 * n2) / (n1 + n2))), method: 'asymptotic' };
}

/**
 * Chance that a random path through the lattice of pooled ranks strays to `statistic` or beyond: each
 * cell holds the chance that a path which reaches it has strayed already.
 */
function walkLattice(n1: number, n2: number, statistic: number, compared: readonly boolean[]): number {
  const bound = statistic - 1e-12;
  let row = new Float64Array(n2 + 1);
  for (let i = 0; i <= n1; i++) {
    const next = new Float64Array(n2 + 1);
    for (let j = 0; j <= n2; j++) {
      const seen = i + j;
      if (seen === 0) continue;
      if (compared[seen - 1] && Math.abs(i / n1 - j / n2) >= bound) next[j] = 1;
      else next[j] = ((i > 0 ? row[j] * i : 0) + (j > 0 ? next[j - 1] * j : 0)) / seen;
    }
    row = next;
  }
  return Math.min(1, row[n2]);
}

function limiting(z: number): number {
  let sum = 0;
  for (let k = 1; k <= 100; k++) {
    const term = exp(-2 * k * k * z * z);
    sum += k % 2 === 1 ? term : -term;
    if (term < 1e-18) break;
  }
  return Math.min(1, Math.max(0, 2 * sum));
}

import { chiSquaredUpper, normalQuantileUpper } from '../foundation/distributions.ts';
import { exp, ln } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import type { CountTable } from './contingency.ts';
import { stratifiedTest } from './stratified.ts';

export interface MantelHaenszel {
  /** Generalised statistic, without continuity correction. */
  readonly statistic: number;
  readonly df: number;
  readonly p: number;
}

export interface CommonOdds {
  /** Common odds ratio of the strata (Mantel & Haenszel 1959). */
  readonly estimate: number;
  /** Robins, Breslow & Greenland 1986, Biometrics 42:311. */
  readonly low: number;
  readonly high: number;
  /** Standard error of its logarithm. */
  readonly se: number;
  /** With continuity correction. */
  readonly statistic: number;
  readonly p: number;
}

/**
 * Are rows and columns associated within strata? One table of counts a stratum, all with the same rows and columns
 * (Cochran-Mantel-Haenszel, generalised to r by c: Agresti 2013, Categorical Data Analysis, 8.4.3).
 */
export function mantelHaenszel(tables: readonly CountTable[]): MantelHaenszel | Unavailable {
  const labels: number[] = [];
  const strata: number[] = [];
  const kinds: number[] = [];
  for (const [stratum, table] of tables.entries())
    for (const [row, line] of table.entries())
      for (const [column, count] of line.entries())
        for (let i = 0; i < count; i++) {
          labels.push(row);
          strata.push(stratum);
          kinds.push(column);
        }
  const columns = tables[0]?.[0]?.length ?? 0;
  const scores = Array.from({ length: columns }, (_, column) =>
    kinds.map((kind) => (kind === column ? 1 : 0)),
  );
  const found = stratifiedTest({ labels, labelCount: tables[0]?.length ?? 0, strata, scores });
  if ('why' in found) return found;
  return { statistic: found.statistic, df: found.df, p: found.pAsymptotic };
}

/** The common odds ratio of 2 by 2 tables, first row against second, with limits at the level. */
export function commonOdds(tables: readonly CountTable[], level: number): CommonOdds | Unavailable {
  let [r, s, pr, ps, cross, gap, variance] = [0, 0, 0, 0, 0, 0, 0];
  for (const [[a, b], [c, d]] of tables) {
    const n = a + b + c + d;
    if (n < 2) continue;
    const [ri, si, pi] = [(a * d) / n, (b * c) / n, (a + d) / n];
    r += ri;
    s += si;
    pr += pi * ri;
    ps += (1 - pi) * si;
    cross += pi * si + (1 - pi) * ri;
    gap += a - ((a + b) * (a + c)) / n;
    variance += ((a + b) * (c + d) * (a + c) * (b + d)) / (n * n * (n - 1));
  }
  if (!(r > 0 && s > 0)) return { why: 'a cell is empty in all strata, so the odds ratio has no value' };
  if (!(variance > 0)) return { why: 'no stratum has both rows and both columns' };
  const sd = Math.sqrt(pr / (2 * r * r) + cross / (2 * r * s) + ps / (2 * s * s));
  const reach = normalQuantileUpper((1 - level) / 2) * sd;
  const corrected = Math.max(0, Math.abs(gap) - 0.5) ** 2 / variance;
  return {
    estimate: r / s,
    low: exp(ln(r / s) - reach),
    high: exp(ln(r / s) + reach),
    se: sd,
    statistic: corrected,
    p: chiSquaredUpper(corrected, 1),
  };
}

import gammaln from '@stdlib/math-base-special-gammaln';
import { exp } from '../foundation/elementary.ts';

/**
 * The other p values that are printed for Fisher's exact test of a 2 x 2 table: each tail, twice the
 * smaller tail, and the middle p, which counts the table itself by half (Lancaster 1961, J. Am. Stat.
 * Assoc. 56:223).
 */
export function fisherTails(
  table: readonly (readonly number[])[],
): readonly { readonly said: string; readonly value: number }[] {
  const [[a, b], [c, d]] = table;
  const [row, column, n] = [a + b, a + c, a + b + c + d];
  const least = Math.max(0, row + column - n);
  const most = Math.min(row, column);
  const chance = (first: number) =>
    exp(logChoose(column, first) + logChoose(n - column, row - first) - logChoose(n, row));
  let below = 0;
  let above = 0;
  let noLikelier = 0;
  const own = chance(a);
  for (let first = least; first <= most; first++) {
    const each = chance(first);
    if (first <= a) below += each;
    if (first >= a) above += each;
    if (first !== a && each <= own * (1 + 1e-7)) noLikelier += each;
  }
  const smaller = Math.min(below, above);
  return [
    { said: 'one-sided, this or fewer', value: Math.min(1, below) },
    { said: 'one-sided, this or more', value: Math.min(1, above) },
    { said: 'twice the smaller tail', value: Math.min(1, 2 * smaller) },
    { said: 'middle p, one-sided', value: smaller - own / 2 },
    { said: 'middle p, two-sided', value: noLikelier + own / 2 },
  ];
}

function logChoose(n: number, k: number): number {
  return gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1);
}

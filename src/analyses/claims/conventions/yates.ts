import { pOf } from '../../../numerics/printed/test-p.ts';
import { association } from '../../../numerics/tests/contingency.ts';

/** Chi-squared of a 2 x 2 table with half a unit taken off each gap (Yates 1934), p with 1 df. */
export function yates(
  table: readonly (readonly number[])[],
): { readonly statistic: number; readonly p: number } | null {
  const found = association(table);
  if ('why' in found) return null;
  let statistic = 0;
  const gaps = table.map((line, i) => line.map((count, j) => Math.abs(count - found.expected[i][j])));
  const off = Math.min(0.5, ...gaps.flat());
  table.forEach((line, i) => {
    line.forEach((_, j) => {
      statistic += ((gaps[i][j] - off) * (gaps[i][j] - off)) / found.expected[i][j];
    });
  });
  return { statistic, p: pOf('chi-squared', statistic, 1) };
}

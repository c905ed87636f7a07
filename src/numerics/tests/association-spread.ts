import { type CountTable, margins } from './contingency.ts';

/**
 * n times the variance that φ² (chi-squared over n) has in samples of a whole whose shares are those of the table: the
 * delta method on the multinomial of the cells (Bishop, Fienberg & Holland 1975, Discrete Multivariate Analysis, 14.6;
 * from memory). Noncentral chi-squared has 4 φ² instead, which is right only near no association: in tables of many lines
 * the true one is up to twice that.
 *
 * @param table counts without empty rows or columns.
 */
export function spreadOfPhiSquared(table: CountTable): number {
  const { rows, columns, n } = margins(table);
  const part = (i: number, j: number) => table[i][j] ** 2 / (rows[i] * columns[j]);
  const ofRow = rows.map((row, i) => columns.reduce((sum, _, j) => sum + part(i, j), 0) * (n / row));
  const ofColumn = columns.map((column, j) => rows.reduce((sum, _, i) => sum + part(i, j), 0) * (n / column));
  let mean = 0;
  let square = 0;
  for (const [i, row] of rows.entries())
    for (const [j, column] of columns.entries()) {
      const share = table[i][j] / n;
      const slope = (2 * table[i][j] * n) / (row * column) - ofRow[i] - ofColumn[j];
      mean += share * slope;
      square += share * slope * slope;
    }
  return square - mean * mean;
}

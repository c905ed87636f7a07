import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { exp, ln } from '../foundation/elementary.ts';
import { greatest, least } from '../foundation/lists.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

export interface Discriminant {
  /** For each record the chance of each class, given its values. */
  readonly posterior: readonly (readonly number[])[];
  /** The likeliest class of each record. */
  readonly predicted: Int32Array;
}

/**
 * Linear discriminant analysis: classes of one common spread (Fisher 1936, Ann. Eugen. 7:179; Venables
 * & Ripley 2002, section 12.1). Prior chances are the shares of the classes in all records. Unavailable when a class
 * is empty, records are too few, or the attributes determine one another.
 *
 * @param records one array of numbers a record, no gaps.
 * @param labels class 0 … k-1 of each record.
 * @param fold records of one fold (assemblage, or each record its own) are predicted from all others;
 *   without folds every record is predicted from all, itself included.
 */
export function discriminant(
  records: readonly (readonly number[])[],
  labels: ArrayLike<number>,
  fold?: ArrayLike<number>,
): Discriminant | Unavailable {
  const n = records.length;
  const k = greatest(Array.from(labels)) + 1;
  const shares = Array.from(
    { length: k },
    (_, label) => Array.from(labels).filter((own) => own === label).length / n,
  );
  const posterior: (readonly number[])[] = new Array(n);
  const folds = fold === undefined ? [-1] : [...new Set(Array.from(fold))];
  const everyone = Array.from({ length: n }, (_, i) => i);
  for (const left of folds) {
    const learn = fold === undefined ? everyone : everyone.filter((i) => fold[i] !== left);
    const rule = learnRule(
      learn.map((i) => records[i]),
      learn.map((i) => labels[i]),
      shares,
    );
    if ('why' in rule) return rule;
    for (const i of fold === undefined ? everyone : everyone.filter((at) => fold[at] === left))
      posterior[i] = rule.judge(records[i]);
  }
  return {
    posterior,
    predicted: Int32Array.from(posterior, (chances) => chances.indexOf(greatest(chances))),
  };
}

/** From a record to the chances of the classes. */
type Judge = (record: readonly number[]) => number[];

function learnRule(
  records: readonly (readonly number[])[],
  labels: readonly number[],
  shares: readonly number[],
): { readonly judge: Judge } | Unavailable {
  const n = records.length;
  const k = shares.length;
  const width = records[0]?.length ?? 0;
  const members = Array.from({ length: k }, (_, label) => records.filter((__, i) => labels[i] === label));
  const empty = members.findIndex((member) => member.length === 0);
  if (empty >= 0) return { why: `class ${empty + 1} has no record to learn from` };
  if (n <= k + width) return { why: `${n} records are too few for ${width} attributes and ${k} classes` };
  const means = members.map((member) =>
    Array.from(
      { length: width },
      (_, column) => member.reduce((sum, record) => sum + record[column], 0) / member.length,
    ),
  );
  const pooled = Matrix.zeros(width, width);
  members.forEach((member, label) => {
    for (const record of member)
      for (let a = 0; a < width; a++)
        for (let b = 0; b < width; b++)
          pooled.set(
            a,
            b,
            pooled.get(a, b) + ((record[a] - means[label][a]) * (record[b] - means[label][b])) / (n - k),
          );
  });
  const factor = new CholeskyDecomposition(pooled);
  const scale = greatest(pooled.diagonal());
  if (
    !factor.isPositiveDefinite() ||
    least(factor.lowerTriangularMatrix.diagonal()) <= 1e-8 * Math.sqrt(scale)
  )
    return { why: 'the attributes determine one another' };
  const directions = factor.solve(new Matrix(means).transpose());
  const offsets = means.map((mean, label) => {
    const along = mean.reduce((sum, value, column) => sum + value * directions.get(column, label), 0);
    return ln(shares[label]) - along / 2;
  });
  const judge: Judge = (record) => {
    const scores = offsets.map((offset, label) =>
      record.reduce((sum, value, column) => sum + value * directions.get(column, label), offset),
    );
    const top = greatest(scores);
    const weights = scores.map((score) => exp(score - top));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    return weights.map((weight) => weight / total);
  };
  return { judge };
}

import { exactly, overlap, type Range } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { named, rangeOf, wholeOf } from '../../judging/check.ts';
import type { PrintedTest } from './test-groups.ts';

/** Degrees of freedom against the numbers of records: n - 2 for a correlation; n1 + n2 - 2 for t, less with Welch's correction; n - k for F. */
export function degreesFromN({ method, df, sizes }: PrintedTest): FigureCheck[] {
  if (df === undefined || sizes.length === 0) return [];
  const counts = sizes.map(wholeOf);
  if (counts.some((count) => count === null)) return [];
  const wholes = counts as number[];
  const n = wholes.reduce((sum, count) => sum + count, 0);
  const last = df.values[df.values.length - 1];
  const found = rangeOf(last, 'any');
  const allowed = allowedDegrees(method, wholes, n);
  if (allowed === undefined || (method === 'F' && df.values.length !== 2)) return [];
  const groups = method === 'F' ? wholes.length - 1 : null;
  const between = groups === null || overlap(exactly(groups), rangeOf(df.values[0], 'any'));
  const fits = between && allowed.some(({ range }) => overlap(range, found));
  const said = [
    ...(groups === null ? [] : [`${wholes.length} groups − 1 = ${groups}`]),
    allowed.map((one) => one.said).join('; or '),
  ].join(', and ');
  return [
    {
      figure: df.id,
      name: 'degrees of freedom from n',
      from: 'print',
      outcome: fits ? 'agrees' : 'differs',
      working: `With ${sizes.map(named).join(', ')}: ${said}. Printed: ${df.printed}.`,
      ...(fits ? {} : { resolve: 'State how many records entered the test; some may have been set aside.' }),
      with: sizes.map(({ id }) => id),
    },
  ];
}

function allowedDegrees(
  method: string,
  counts: readonly number[],
  n: number,
): readonly { readonly range: Range; readonly said: string }[] | undefined {
  if ((method === 'r' || method === 'rho') && counts.length === 1)
    return [
      { range: exactly(n - 2), said: `n − 2 = ${n - 2}` },
      { range: exactly(n), said: `n itself, ${n}` },
    ];
  const least = Math.max(1, Math.min(...counts) - 1);
  if (method === 'F' && counts.length > 1)
    return [
      { range: exactly(n - counts.length), said: `n − ${counts.length} groups = ${n - counts.length}` },
      { range: { low: least, high: n - counts.length }, said: `down to ${least} with Welch's correction` },
    ];
  if (method !== 't') return undefined;
  // One number of records may be that of all, of pairs, or of one sample.
  if (counts.length === 1)
    return [
      { range: exactly(n - 1), said: `n − 1 = ${n - 1}` },
      { range: exactly(n - 2), said: `n − 2 = ${n - 2} for two groups` },
    ];
  if (counts.length !== 2) return undefined;
  return [
    { range: exactly(n - 2), said: `n − 2 = ${n - 2}` },
    { range: { low: least, high: n - 2 }, said: `down to ${least} with Welch's correction or in pairs` },
  ];
}

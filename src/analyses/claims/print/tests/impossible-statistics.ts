import type { FigureCheck } from '../../found.ts';
import { rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedTest } from './test-groups.ts';

/** What no statistic of its kind can be, whatever the records. */
export function impossibleStatistic({ method, statistic, df, sizes }: PrintedTest): FigureCheck[] {
  const { low, high } = rangeOfFigure(statistic, 'any');
  const base = {
    figure: statistic.id,
    name: 'possible statistic',
    from: 'print',
    outcome: 'cannot be',
  } as const;
  if (NOT_NEGATIVE.has(method) && high < 0)
    return [
      {
        ...base,
        working: `${method === 'U' ? 'U counts pairs' : `${method === 'chi-squared' ? 'Chi-squared' : method} is built of squares or ranks`} and cannot be negative.`,
        resolve: 'Look up the sign.',
        with: [],
      },
    ];
  if ((method === 'r' || method === 'rho' || method === 'tau') && (low > 1 || high < -1))
    return [
      {
        ...base,
        working: 'A correlation lies between −1 and 1.',
        resolve: 'Look up the decimal point.',
        with: [],
      },
    ];
  const [n1, n2] = sizes.map(wholeOf);
  if (method === 'U' && sizes.length === 2 && n1 !== null && n2 !== null && low > n1 * n2)
    return [
      {
        ...base,
        working: `U counts pairs, of which ${n1} × ${n2} = ${n1 * n2} exist; ${statistic.printed} is more.`,
        resolve: 'State U and both numbers of records, or say if another rank statistic is printed.',
        with: sizes.map(({ id }) => id),
      },
    ];
  if (method === 'signed-rank' && sizes.length === 1 && n1 !== null && low > (n1 * (n1 + 1)) / 2)
    return [
      {
        ...base,
        working: `The ranks of ${n1} pairs add up to ${(n1 * (n1 + 1)) / 2}; ${statistic.printed} is more.`,
        resolve: 'State the number of pairs that entered.',
        with: sizes.map(({ id }) => id),
      },
    ];
  const degrees = wholeOf(df);
  if (method === 'chi-squared' && sizes.length === 1 && n1 !== null && degrees !== null && degrees >= 1) {
    // Of a table with so many degrees of freedom, the shorter side has at most their root (Cramér 1946, section 21.9).
    const most = n1 * Math.floor(Math.sqrt(degrees));
    if (low > most)
      return [
        {
          ...base,
          outcome: 'differs',
          working: `Chi-squared of a table of ${n1} records with ${degrees} degrees of freedom is at most ${most}; printed: ${statistic.printed}.`,
          resolve: 'Look up the statistic, n and the degrees of freedom.',
          with: sizes.map(({ id }) => id),
        },
      ];
  }
  return [];
}

const NOT_NEGATIVE: ReadonlySet<string> = new Set(['F', 'chi-squared', 'G', 'H', 'U', 'W', 'signed-rank']);

import { normalQuantileUpper } from '../../../../numerics/foundation/distributions.ts';
import { over, type Range, size } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { named, rangeOfFigure } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Coefficient } from './coefficient.ts';

/** The loosest level that so many stars are used for; common practice, no source. */
const LOOSEST: readonly number[] = [1, 0.1, 0.05, 0.01, 0.001];

interface Starred {
  readonly estimate: PrintedFigure;
  readonly se: PrintedFigure;
  readonly p: PrintedFigure | undefined;
  readonly stars: number;
  readonly ratio: Range;
}

/**
 * Stars behind a coefficient whose error is all that is printed with it: no distribution gives so small a p for a
 * smaller ratio than the normal one, and within a column more stars go with larger ratios.
 */
export function starsOfCoefficients(coefficients: readonly Coefficient[]): FigureCheck[] {
  const lines = coefficients.flatMap(({ estimate, se, statistic, p }): Starred[] => {
    if (se === undefined || statistic !== undefined || (p !== undefined && !p.stars)) return [];
    const { low, high } = rangeOfFigure(se, 'any');
    const ratio = size(over(rangeOfFigure(estimate, 'any'), { low: Math.max(0, low), high }));
    return [{ estimate, se, p, stars: p?.values[0].text.length ?? 0, ratio }];
  });
  return lines.flatMap((line) => (line.p === undefined ? [] : [check(line, line.p, lines)]));
}

function check(line: Starred, p: PrintedFigure, lines: readonly Starred[]): FigureCheck {
  const { estimate, se, stars, ratio } = line;
  const level = LOOSEST[Math.min(stars, LOOSEST.length - 1)];
  const least = normalQuantileUpper(level / 2);
  const column = estimate.cell?.column;
  const greater = lines.find(
    (other) => other.estimate.cell?.column === column && other.stars < stars && other.ratio.low > ratio.high,
  );
  const base = { figure: p.id, name: 'stars of a coefficient', from: 'print' } as const;
  const said = `${named(estimate)} over ${named(se)} is at most ${ratio.high.toFixed(2)}`;
  const resolve = 'Look up the coefficient, its error and its stars, and state their levels.';
  if (ratio.high < least)
    return {
      ...base,
      outcome: 'differs',
      working: `${said}; ${p.values[0].text} stands for a p below ${level} at most, which takes ${least.toFixed(2)}.`,
      resolve,
      with: [estimate.id, se.id],
    };
  if (greater !== undefined)
    return {
      ...base,
      outcome: 'differs',
      working: `${said} and has ${stars} stars; ${named(greater.estimate)} over ${named(greater.se)} is at least ${greater.ratio.low.toFixed(2)} and has ${greater.stars}.`,
      resolve,
      with: [estimate.id, se.id, greater.estimate.id],
    };
  return {
    ...base,
    outcome: 'passes',
    working: `${said.replace('at most', 'up to')}, and so many stars may stand there.`,
    with: [estimate.id, se.id],
  };
}

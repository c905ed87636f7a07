import { overlap, size } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { named, printRangeText, rangeOfFigure } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Evidence } from '../evidence.ts';
import { effectWaysOf } from './effect-ways.ts';
import { type PrintedTest, testsOf } from './test-groups.ts';

/**
 * Effect sizes against the statistic that they are printed with: d of t, eta squared and R squared of F,
 * Cramér's V and phi of chi-squared, epsilon squared of H (Cohen 1988; Tomczak & Tomczak 2014, Trends Sport Sci. 1:19).
 * Several formulas are in use, and paired designs have their own, so a misfit only differs.
 */
export function checkEffects({ sets }: Evidence): FigureCheck[] {
  return [...sets.values()].flatMap((set) =>
    testsOf(set).flatMap((test) =>
      set
        .filter(({ quantity, line }) => quantity === 'effect' && line === test.statistic.line)
        .flatMap((effect) => effectCheck(effect, test)),
    ),
  );
}

/** d has the sign of its t, or none; the other way round one of the two is of the groups exchanged. */
function againstSign(effect: PrintedFigure, { method, statistic }: PrintedTest): boolean {
  return method === 't' && rangeOfFigure(effect, 'any').high < 0 && rangeOfFigure(statistic, 'any').low > 0;
}

function effectCheck(effect: PrintedFigure, test: PrintedTest): FigureCheck[] {
  if (againstSign(effect, test))
    return [
      {
        figure: effect.id,
        name: 'sign of the effect size',
        from: 'print',
        outcome: 'differs',
        working: `${named(effect)} is below 0, and ${named(test.statistic)} above.`,
        explained: 'the two groups swapped in one of them',
        resolve: 'Say which group comes first in each.',
        with: [test.statistic.id],
      },
    ];
  const ways = effectWaysOf(effect, test);
  if (ways.length === 0) return [];
  const printed =
    effect.method === 'cohen-d' || effect.method === 'hedges-g'
      ? size(rangeOfFigure(effect, 'any'))
      : rangeOfFigure(effect, 'any');
  const fitting = ways.find(({ range }) => overlap(range('any'), printed));
  const rests = [test.statistic, ...(test.df === undefined ? [] : [test.df]), ...test.sizes];
  const list = ways.map(({ said, range }) => `${printRangeText(range('any'), effect)} (${said})`).join(', ');
  return [
    {
      figure: effect.id,
      name: 'effect size of its statistic',
      from: 'print',
      outcome: fitting === undefined ? 'differs' : 'agrees',
      working: `${rests.map(named).join(', ')} gives ${list}; printed: ${effect.values[0].text.trim()}.`,
      ...(fitting === undefined ? { resolve: 'State the formula of the effect size and the design.' } : {}),
      with: rests.map(({ id }) => id),
    },
  ];
}

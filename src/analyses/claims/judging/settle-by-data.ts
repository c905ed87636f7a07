import type { FigureCheck } from '../found.ts';

/** Checks that rest on what the claims file says of the grid of the readings. */
const ON_A_GRID = new Set(['mean on a grid', 'median on a grid', 'standard deviation on a grid']);

/** What two printed figures say of each other, whichever of both signs the data give to one. */
const BETWEEN_PRINTS: ReadonlySet<string> = new Set(['sign of the effect size']);

/**
 * Where the data give the figure, the readings were not all on the grid that was stated, and what printed figures
 * seem to say against it is said of others: a line of sums takes in what is not printed.
 */
export function settleByData(checks: readonly FigureCheck[]): readonly FigureCheck[] {
  const given = checks.some(({ from, outcome }) => from === 'data' && outcome.startsWith('agrees'));
  if (!given) return checks;
  return checks.map((check) => {
    const onGrid = check.outcome === 'cannot be' && ON_A_GRID.has(check.name);
    if (!onGrid && (check.from === 'data' || check.outcome !== 'differs' || BETWEEN_PRINTS.has(check.name)))
      return check;
    const so = onGrid ? 'the readings are not all on that grid' : 'the others are to be looked at';
    return {
      ...check,
      outcome: 'passes' as const,
      working: `${check.working} But the data give this figure, so ${so}.`,
    };
  });
}

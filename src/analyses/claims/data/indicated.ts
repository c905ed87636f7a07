import { fitOfWays, type Way } from '../conventions/way.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { TestMethod } from '../reading/terms.ts';
import type { Attempt } from './attempt.ts';
import { degreesWays } from './degrees.ts';
import type { View } from './values.ts';

/** By what the print tells which of the ordinary ways it was computed in. */
export interface Indicated {
  /** Names of those ways. */
  readonly names: ReadonlySet<string>;
  /** In words that follow "by": "its degrees of freedom". */
  readonly by: string;
}

/** Tests whose statistic, degrees of freedom and p come in the same ways under the same names. */
const IN_STEP: ReadonlySet<TestMethod> = new Set<TestMethod>(['t', 'F', 'chi-squared', 'G']);

/** Of the ordinary ways those that an indication names; all of them where it names none of these. */
export function waysIndicated(ways: readonly Way[], indicated: Indicated | null): readonly Way[] {
  if (indicated === null) return ways;
  const meant = ways.filter(({ said }) =>
    [...indicated.names].some((name) => said === name || said.startsWith(`${name}, `)),
  );
  return meant.length === 0 ? ways : meant;
}

/**
 * What the other figures of its text say of each figure's way: "t = −3.61, df = 22" is Welch's, and a p or an
 * interval beside it is of that one too. The two ends of an interval were made in one way.
 */
export function indicatedWays(
  line: readonly PrintedFigure[],
  found: ReadonlyMap<PrintedFigure, Attempt>,
  view: View,
): ReadonlyMap<PrintedFigure, Indicated> {
  const result = new Map<PrintedFigure, Indicated>();
  const waysOf = (figure: PrintedFigure): readonly Way[] => {
    const one = found.get(figure);
    return one === undefined || 'why' in one ? [] : one.ways;
  };
  const fitting = (figure: PrintedFigure, ways = waysOf(figure)) =>
    new Set(ways.filter((way) => fitOfWays(figure, [way]) !== null).map(({ said }) => said));
  const set = (figure: PrintedFigure, names: ReadonlySet<string>, by: string) => {
    if (names.size > 0) result.set(figure, { names, by });
  };
  const statistic = line.find(
    ({ quantity, method }) => quantity === 'statistic' && method !== null && IN_STEP.has(method),
  );
  if (statistic !== undefined) {
    const df = line.find(({ quantity }) => quantity === 'df');
    const byDegrees = df === undefined ? new Set<string>() : fittingDegrees(df, waysOf(df), view);
    const named = statistic.manners.includes('welch')
      ? new Set(waysOf(statistic).flatMap(({ said }) => (said === 'Welch' ? [said] : [])))
      : new Set<string>();
    const [names, by] =
      byDegrees.size > 0
        ? ([byDegrees, 'its degrees of freedom'] as const)
        : ([named, 'the name of its test'] as const);
    set(statistic, names, by);
    const both = fitting(statistic, waysIndicated(waysOf(statistic), result.get(statistic) ?? null));
    for (const figure of line) {
      if (figure === statistic || !BESIDE.has(figure.quantity)) continue;
      if (figure.quantity === 'df') set(figure, named, 'the name of its test');
      else if (both.size > 0) set(figure, both, 'its statistic');
      else set(figure, names, by);
    }
  }
  const [low, high] = (['low', 'high'] as const).map((end) => line.find(({ quantity }) => quantity === end));
  if (low !== undefined && high !== undefined)
    set(
      high,
      new Set(
        [...fitting(low, waysIndicated(waysOf(low), result.get(low) ?? null))].map(
          (said) => OTHER_END[said] ?? said,
        ),
      ),
      'its lower end',
    );
  return result;
}

/** Where the print does not say of what the ends are: the upper one that goes with a lower one. */
const OTHER_END: Readonly<Record<string, string>> = {
  q1: 'q3',
  min: 'max',
  'lower end of a range': 'upper end of a range',
};

const BESIDE: ReadonlySet<PrintedFigure['quantity']> = new Set<PrintedFigure['quantity']>([
  'df',
  'p',
  'low',
  'high',
]);

function fittingDegrees(df: PrintedFigure, ways: readonly Way[], view: View): ReadonlySet<string> {
  if (df.values.length === 1)
    return new Set(ways.filter((way) => fitOfWays(df, [way]) !== null).map(({ said }) => said));
  const both = degreesWays(df, view);
  return new Set(
    'why' in both
      ? []
      : both.ways.filter(({ fits }) => fits.every((fit) => fit !== null)).map(({ said }) => said),
  );
}

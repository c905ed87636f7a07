import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { exp, ln } from '../../numerics/foundation/elementary.ts';
import { sharesBlocks } from '../../numerics/tests/blocked-sample.ts';
import { mannWhitney } from '../../numerics/tests/mann-whitney.ts';
import type { Unavailable } from '../contract.ts';
import type { Told } from '../verdicts.ts';
import type { AttributeSamples, MissingShift } from './found.ts';

/** Halvings of the search: a shift is known to 1/256 of the widest one tried. */
const HALVINGS = 8;

interface Verdict {
  readonly told: Told;
  /** Whether the first group tends to be the larger. */
  readonly firstLarger: boolean;
}

/**
 * By how much would the missing of one group have to differ from those recorded there to turn the verdict on place?
 * The missing are set at the quantiles of those recorded, all shifted alike, farther and farther, until the verdict
 * or its direction is another one; without chance.
 *
 * @param toldFor what a p of this attribute says, set among those of the others.
 * @returns one entry for each group with missing values; none for grades, where items have several values (a missing
 * fragment may be of any of them), and for other than two groups.
 */
export function missingShifts(
  { tested, graded, logarithmic }: AttributeSamples,
  told: Told,
  toldFor: (p: number | Unavailable) => Told,
): readonly MissingShift[] {
  if (tested.length !== 2 || graded || told === 'cannot be told') return [];
  if (tested.some(({ points }) => sharesBlocks(points))) return [];
  const values = tested.map(({ points }) =>
    sortedValues(logarithmic ? points.values.map(ln) : points.values),
  );
  const verdictOf = (first: ArrayLike<number>, second: ArrayLike<number>): Verdict => {
    const found = mannWhitney(first, second);
    if ('why' in found) return { told: toldFor(found), firstLarger: false };
    return { told: toldFor(found.p), firstLarger: 2 * found.statistic > first.length * second.length };
  };
  const { firstLarger } = verdictOf(values[0], values[1]);
  const lowest = Math.min(values[0][0], values[1][0]);
  const highest = Math.max(...values.map((own) => own[own.length - 1]));
  const farthest = 2 * (highest - lowest) + Number.EPSILON;
  return tested.flatMap(({ label, unread }, group): MissingShift[] => {
    if (unread === 0) return [];
    const own = values[group];
    const likely = Array.from({ length: unread }, (_, i) => quantileSorted(own, (i + 0.5) / unread));
    const judged = (shift: number) => {
      const filled = [...own, ...likely.map((value) => value + shift)];
      return group === 0 ? verdictOf(filled, values[1]) : verdictOf(values[0], filled);
    };
    const turned = (shift: number) => {
      const now = judged(shift);
      return now.told !== told || (told === 'told apart' && now.firstLarger !== firstLarger);
    };
    // Towards the other group where they are told apart; away from it either way where they are not.
    const ways = told === 'not told apart' ? [-1, 1] : [(group === 0) === firstLarger ? -1 : 1];
    const shifts = ways
      .map((way) => leastTurning((size) => turned(way * size), farthest, way))
      .filter((shift) => shift !== null);
    if (shifts.length === 0) return [{ label, missing: unread, shift: null, becomes: told }];
    const [least] = shifts.sort((a, b) => Math.abs(a) - Math.abs(b));
    return [
      {
        label,
        missing: unread,
        shift: logarithmic ? exp(least) : least,
        becomes: judged(least).told,
      },
    ];
  });
}

/** The least shift that turns the verdict, null where the farthest does not. */
function leastTurning(turned: (size: number) => boolean, farthest: number, way: number): number | null {
  if (turned(0)) return 0;
  if (!turned(farthest)) return null;
  let [stands, turns] = [0, farthest];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (stands + turns) / 2;
    if (turned(middle)) turns = middle;
    else stands = middle;
  }
  return way * turns;
}

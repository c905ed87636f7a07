import { midranks } from '../numerics/foundation/ranks.ts';

/** Records to a class, and classes at most: enough to leave little of a number within one. */
const RECORDS_A_CLASS = 10;
const MOST_CLASSES = 10;

/** Records of like size, as kinds: a number that may stand for a difference is compared within these. */
export interface LikeNumbers {
  /** "12 to 30", from the least on. */
  readonly kinds: readonly string[];
  /** Class of each value, -1 where there is none. */
  readonly of: Int32Array;
}

/**
 * Parts numbers into classes of about equally many, equal numbers always together. Five classes take away about nine
 * tenths of what a number makes of a difference, ten nearly all (Cochran 1968, Biometrics 24:295).
 *
 * @param values NaN where there is none.
 */
export function likeNumbers(values: readonly number[]): LikeNumbers {
  const places = [...values.keys()].filter((at) => Number.isFinite(values[at]));
  const wanted = Math.max(2, Math.min(MOST_CLASSES, Math.floor(places.length / RECORDS_A_CLASS)));
  const { ranks } = midranks(places.map((at) => values[at]));
  const members = Array.from({ length: wanted }, (): number[] => []);
  places.forEach((at, place) => {
    members[Math.min(wanted - 1, Math.floor((wanted * (ranks[place] - 0.5)) / places.length))].push(at);
  });
  const of = new Int32Array(values.length).fill(-1);
  const filled = members.filter((own) => own.length > 0);
  for (const [kind, own] of filled.entries()) for (const at of own) of[at] = kind;
  return {
    kinds: filled.map((own) => {
      const [low, high] = [Math.min, Math.max].map((end) =>
        own.reduce((best, at) => end(best, values[at]), values[own[0]]),
      );
      return low === high ? String(low) : `${low} to ${high}`;
    }),
    of,
  };
}

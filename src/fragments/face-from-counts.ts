import type { DerivedTerm } from './derived/fill.ts';
import type { Interval } from './intervals.ts';
import { isNothing } from './intervals.ts';

/** Where balanced and faced part, as a ratio of the denser system to the other: common practice, no source. */
export interface FaceThresholds {
  readonly balanced: number;
  readonly faced: number;
}

export const FACE_THRESHOLDS: FaceThresholds = { balanced: 1.25, faced: 2 };

/**
 * Balanced or faced, from the counts of both systems; null between the two, and where the readings leave it
 * undecided. Which system hides the other is not said: what is called system 1 need not be the warp.
 *
 * @param balance density of system 1 over that of system 2.
 */
export function faceFromCounts(
  [low, high]: Interval,
  { balanced, faced }: FaceThresholds,
): DerivedTerm | null {
  if (isNothing([low, high])) return null;
  if (low >= 1 / balanced && high <= balanced) return { term: 'balanced', from: ['balance'] };
  return low >= faced || high <= 1 / faced ? { term: 'faced', from: ['balance'] } : null;
}

import type { Unavailable } from './contract.ts';

/**
 * The verdicts that several analyses share. They are made in compute.ts, once, and kept in the findings; no
 * table, figure, sentence or screen compares a number with a level again.
 */

/** Whether a difference, a trend or an association is told apart from chance. */
export type Told = 'told apart' | 'not told apart' | 'cannot be told';

/**
 * What a p value says at a confidence.
 *
 * @param confidence between 0 and 1; 0.95 tells apart what has p of at most 0.05.
 */
export function toldAt(p: number | Unavailable, confidence: number): Told {
  if (typeof p !== 'number') return 'cannot be told';
  return p <= 1 - confidence + ROUNDING ? 'told apart' : 'not told apart';
}

/** 1 - 0.95 is a little more than 0.05 in binary; a p of exactly the level must count. */
const ROUNDING = 1e-12;

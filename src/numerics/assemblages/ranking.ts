import type { Condensed } from '../dissimilarity/condensed.ts';
import type { Random } from '../foundation/random.ts';
import { type ItemKinds, itemDrawer } from './draws.ts';
import { assemblageSimilarity, type SimilarityCoefficient } from './similarity.ts';

/** Which of several values comes first, and how surely. Places are those of the values given. */
export interface First {
  /** The first; several where they tie. */
  readonly leaders: readonly number[];
  readonly value: number;
  /** Share of the draws in which a leader comes first. */
  readonly share: number;
  /** Others that come first in more of the draws than the confidence lets pass, the likeliest first. */
  readonly rivals: readonly { readonly place: number; readonly share: number }[];
}

/** Values that should tie may differ in their last bits. */
const TIE = 1e-9;

/**
 * Which value is the largest, and how often each would be when what they rest on is drawn again. Draws are moved
 * so that their mean is the value found: samples are less alike than what they are drawn from, small ones more
 * so than large ones, and that alone must not make a rival.
 *
 * @param values at least one, finite.
 * @param draws values of each draw, in the same order; NaN counts for none.
 * @param sign 1 where the largest is first, -1 where the least is.
 */
export function firstByDraws(
  values: ArrayLike<number>,
  draws: readonly ArrayLike<number>[],
  sign: 1 | -1,
  confidence: number,
): First {
  const n = values.length;
  const score = Float64Array.from(values, (value) => sign * value);
  const leaders = leadersOf(score);
  const means = Array.from({ length: n }, (_, place) => meanOf(draws, place));
  const wins = new Float64Array(n);
  let counted = 0;
  const moved = new Float64Array(n);
  for (const draw of draws) {
    for (let i = 0; i < n; i++) moved[i] = score[i] + sign * (draw[i] - means[i]);
    const first = leadersOf(moved);
    if (first.length === 0) continue;
    counted++;
    for (const place of first) wins[place] += 1 / first.length;
  }
  const shareOf = (place: number) => (counted === 0 ? 0 : wins[place] / counted);
  return {
    leaders,
    value: values[leaders[0]],
    share: leaders.reduce((sum, place) => sum + shareOf(place), 0),
    rivals: Array.from({ length: n }, (_, place) => ({ place, share: shareOf(place) }))
      .filter(({ place, share }) => !leaders.includes(place) && share > 1 - confidence)
      .sort((a, b) => b.share - a.share || a.place - b.place),
  };
}

function leadersOf(score: Float64Array): number[] {
  let most = Number.NEGATIVE_INFINITY;
  for (const value of score) if (value > most) most = value;
  const near = TIE * Math.max(1, Math.abs(most));
  return Array.from(score, (_, place) => place).filter((place) => score[place] >= most - near);
}

function meanOf(draws: readonly ArrayLike<number>[], place: number): number {
  let sum = 0;
  let known = 0;
  for (const draw of draws) {
    if (Number.isNaN(draw[place])) continue;
    sum += draw[place];
    known++;
  }
  return known === 0 ? Number.NaN : sum / known;
}

/**
 * Likeness of all pairs of assemblages with the items of all of them drawn again at once, so that draws of
 * several pairs can be set against each other.
 */
export function likenessDraws(
  items: readonly ItemKinds[],
  columns: number,
  coefficient: SimilarityCoefficient,
  resamples: number,
  random: Random,
): readonly Condensed[] {
  const drawers = items.map((own) => itemDrawer(own, columns, random));
  return Array.from({ length: resamples }, () =>
    assemblageSimilarity(
      drawers.map((draw) => draw()),
      coefficient,
    ),
  );
}

import { spaceDistances, timeDistances, type WhereWhen } from '../../fragments/where-when.ts';
import { assemblageSimilarity, unlikeness } from '../../numerics/assemblages/similarity.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { mantelTest } from '../../numerics/tests/mantel.ts';
import { toldAt } from '../verdicts.ts';
import type { DistanceTest } from './found.ts';
import type { SimilarityOptions } from './options.ts';

/**
 * Are assemblages that lie far apart in space or time less alike? Mantel's test with each, and with each
 * apart from the other, over the assemblages whose place (or date, or both) is known.
 */
export function distanceTests(
  counts: readonly (readonly number[])[],
  { spans, places, measure }: WhereWhen,
  options: SimilarityOptions,
  random: Random,
): DistanceTest[] {
  const answer = (wanted: 'time' | 'space', apart: 'time' | 'space' | null): Omit<DistanceTest, 'told'> => {
    const needs = new Set([wanted, ...(apart === null ? [] : [apart])]);
    const head = { against: wanted, apartFrom: apart };
    if (needs.has('space') && 'why' in measure) return { ...head, answer: measure };
    const geographic = !('why' in measure) && measure.geographic;
    const known = counts.flatMap((_, row) => {
      const [span, place] = [spans[row], places[row]];
      if (needs.has('time') && span === null) return [];
      if (needs.has('space') && place === null) return [];
      return [{ row, span, place }];
    });
    if (needs.has('time') && spans.every((span) => span === null))
      return { ...head, answer: { why: 'no assemblage is dated' } };
    const distances = (which: 'time' | 'space') =>
      which === 'time'
        ? timeDistances(known.flatMap(({ span }) => (span === null ? [] : [span])))
        : spaceDistances(
            known.flatMap(({ place }) => (place === null ? [] : [place])),
            geographic,
          );
    const likeness = assemblageSimilarity(
      known.map(({ row }) => counts[row]),
      options.coefficient,
    );
    return {
      ...head,
      answer: mantelTest(unlikeness(likeness, options.coefficient), distances(wanted), {
        random: random.stream(`${wanted} ${apart}`),
        relabellings: options.relabellings,
        correlation: 'rank',
        ...(apart === null ? {} : { apartFrom: distances(apart) }),
      }),
    };
  };
  return [answer('space', null), answer('time', null), answer('space', 'time'), answer('time', 'space')].map(
    (one) => ({
      ...one,
      told: toldAt('why' in one.answer ? one.answer : one.answer.p, options.confidence),
    }),
  );
}

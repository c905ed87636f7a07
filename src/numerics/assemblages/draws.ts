import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { bootstrapInterval, type ResampledInterval } from '../resampling/bootstrap.ts';
import { type PermutationTest, permutationTest } from '../resampling/permutation.ts';
import { assemblageSimilarity, isDistance, mostAlike, type SimilarityCoefficient } from './similarity.ts';

/** Counts of the kinds that each item of an assemblage brings: what is drawn again. */
export type ItemKinds = readonly Float64Array[];

/** Counts of the chosen items together; a choice may repeat. */
export function drawnCounts(items: ItemKinds, choice: ArrayLike<number>, columns: number): Float64Array {
  const counts = new Float64Array(columns);
  for (let i = 0; i < choice.length; i++) {
    const item = items[choice[i]];
    for (let column = 0; column < columns; column++) counts[column] += item[column];
  }
  return counts;
}

export interface LikenessDraws {
  readonly coefficient: SimilarityCoefficient;
  readonly resamples: number;
  readonly confidence: number;
  readonly random: Random;
}

/**
 * How alike two assemblages are when their items are drawn again; the others stay as they are.
 *
 * @param rest counts of all other assemblages together: the chi-square distance weighs by them.
 */
export function likenessInterval(
  first: ItemKinds,
  second: ItemKinds,
  rest: Float64Array,
  { coefficient, resamples, confidence, random }: LikenessDraws,
): ResampledInterval | Unavailable {
  const columns = rest.length;
  const rows = coefficient === 'chi-square' && rest.some((count) => count > 0) ? [rest] : [];
  const interval = bootstrapInterval(
    [first.length, second.length],
    ([one, other]) =>
      assemblageSimilarity(
        [drawnCounts(first, one, columns), drawnCounts(second, other, columns), ...rows],
        coefficient,
      ).values[0],
    { random, resamples, level: confidence, method: 'centred' },
  );
  if ('why' in interval) return interval;
  return {
    ...interval,
    low: Math.max(0, interval.low),
    high: Math.min(isDistance(coefficient) ? Infinity : mostAlike(coefficient), interval.high),
  };
}

/**
 * Could both assemblages be draws from one source? p by dealing their items between them, the coefficient
 * as the statistic (after DeBoer, Kintigh & Rostoker 1996, Am. Antiquity 61:263).
 */
export function sameSource(
  first: ItemKinds,
  second: ItemKinds,
  columns: number,
  coefficient: SimilarityCoefficient,
  { random, relabellings }: { readonly random: Random; readonly relabellings: number },
): PermutationTest {
  const both = [...first, ...second];
  const labels = both.map((_, item) => (item < first.length ? 0 : 1));
  const sign = isDistance(coefficient) ? 1 : -1;
  return permutationTest(
    labels,
    (dealt) => {
      const counts = [new Float64Array(columns), new Float64Array(columns)];
      both.forEach((item, place) => {
        const into = counts[dealt[place]];
        for (let column = 0; column < columns; column++) into[column] += item[column];
      });
      return sign * assemblageSimilarity(counts, coefficient).values[0];
    },
    { random, relabellings: Math.min(relabellings, MOST_DEALT), exactLimit: MOST_DEALT },
  );
}

/** Ways to deal the items of one pair: there are many pairs. */
const MOST_DEALT = 1999;

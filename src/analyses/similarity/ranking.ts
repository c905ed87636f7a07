import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { itemCounts } from '../../fragments/items/counts.ts';
import { firstByDraws, likenessDraws } from '../../numerics/assemblages/ranking.ts';
import {
  assemblageSimilarity,
  isDistance,
  type SimilarityCoefficient,
} from '../../numerics/assemblages/similarity.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { isOther, LEAST_RANKED, OF_SHARES, rankOf } from '../likeness-rank.ts';
import type { PairRanking, SimilarityFound } from './found.ts';
import type { SimilarityOptions } from './options.ts';

/** Places, among all pairs in their order, of those that are ranked: both have enough items. */
function rankedPairs(table: CrossedTable): { readonly labels: string[]; readonly places: number[] } {
  const items = itemCounts(table);
  const labels: string[] = [];
  const places: number[] = [];
  let place = 0;
  table.rows.forEach((first, i) => {
    table.rows.slice(i + 1).forEach((second, rest) => {
      if (items[i].length >= LEAST_RANKED && items[i + 1 + rest].length >= LEAST_RANKED) {
        labels.push(`${first} with ${second}`);
        places.push(place);
      }
      place++;
    });
  });
  return { labels, places };
}

/** Which pairs of assemblages are the most and the least alike, and how often when items are drawn again. */
export function rankPairs(table: CrossedTable, options: SimilarityOptions, random: Random): PairRanking {
  const { coefficient, confidence, resamples } = options;
  const { labels, places } = rankedPairs(table);
  if (labels.length === 0) {
    const why = { why: `fewer than two have the ${LEAST_RANKED} items that a ranking needs` };
    return { most: why, least: why };
  }
  const pick = ({ values }: { readonly values: Float64Array }) => places.map((place) => values[place]);
  const values = pick(assemblageSimilarity(table.counts, coefficient));
  const draws = likenessDraws(itemCounts(table), table.columns.length, coefficient, resamples, random).map(
    pick,
  );
  const sign = isDistance(coefficient) ? -1 : 1;
  return {
    most: rankOf(firstByDraws(values, draws, sign, confidence), labels),
    least:
      labels.length < 2
        ? { why: 'there is but one pair to rank' }
        : rankOf(firstByDraws(values, draws, sign === 1 ? -1 : 1, confidence), labels),
  };
}

/** The most alike by other coefficients of shares. */
export function byOtherCoefficients(
  table: CrossedTable,
  { most }: PairRanking,
  { coefficient, confidence }: SimilarityOptions,
): SimilarityFound['otherCoefficients'] {
  const { labels, places } = rankedPairs(table);
  if ('why' in most || labels.length < 2) return [];
  return OF_SHARES.filter((other) => other !== coefficient).map((other: SimilarityCoefficient) => {
    const { values } = assemblageSimilarity(table.counts, other);
    const by = rankOf(
      firstByDraws(
        places.map((place) => values[place]),
        [],
        isDistance(other) ? -1 : 1,
        confidence,
      ),
      labels,
    );
    return { coefficient: other, most: by.labels, overturns: isOther(most, by) };
  });
}

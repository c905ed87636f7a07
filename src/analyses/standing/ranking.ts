import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { itemCounts } from '../../fragments/items/counts.ts';
import { firstByDraws, likenessDraws } from '../../numerics/assemblages/ranking.ts';
import {
  assemblageSimilarity,
  isDistance,
  type SimilarityCoefficient,
} from '../../numerics/assemblages/similarity.ts';
import { type Condensed, condensedIndex } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { Unavailable } from '../contract.ts';
import { isOther, LEAST_RANKED, OF_SHARES, type Rank, rankOf } from '../likeness-rank.ts';
import type { Likeness, Ranking } from './found.ts';
import type { StandingOptions } from './options.ts';

/**
 * Who is the most and the least like the site, among those with enough items to be ranked: with how often each
 * comes first when the items of all are drawn again, and who it is by other coefficients.
 */
export function rankingOf(
  table: CrossedTable,
  site: number,
  likeness: readonly Likeness[],
  options: StandingOptions,
  random: Random,
): Ranking {
  const { coefficient, confidence, resamples } = options;
  const items = itemCounts(table);
  const labels = likeness.filter((one) => one.items >= LEAST_RANKED).map(({ label }) => label);
  const told = (verdict: Likeness['told']) =>
    likeness.filter((one) => one.told === verdict).map(({ label }) => label);
  const verdicts = {
    toldApart: told('told apart'),
    notToldApart: told('not told apart'),
    tooFew: likeness
      .filter((one) => one.items < LEAST_RANKED)
      .map(({ label, items: count }) => ({ label, items: count })),
  };
  const why = cannotRank(table.rows[site], items[site].length, labels.length);
  if (why !== null) return { ...verdicts, most: why, least: why, otherCoefficients: [] };
  const rows = labels.map((label) => table.rows.indexOf(label));
  const toSite = ({ n, values }: Condensed) => rows.map((row) => values[condensedIndex(n, site, row)]);
  const values = toSite(assemblageSimilarity(table.counts, coefficient));
  const draws = likenessDraws(items, table.columns.length, coefficient, resamples, random).map(toSite);
  const sign = isDistance(coefficient) ? -1 : 1;
  const most = rankOf(firstByDraws(values, draws, sign, confidence), labels);
  const leadersBy = (other: SimilarityCoefficient): Pick<Rank, 'labels'> =>
    rankOf(
      firstByDraws(
        toSite(assemblageSimilarity(table.counts, other)),
        [],
        isDistance(other) ? -1 : 1,
        confidence,
      ),
      labels,
    );
  return {
    ...verdicts,
    most,
    least:
      labels.length < 2
        ? { why: 'only one other has enough items to be ranked' }
        : rankOf(firstByDraws(values, draws, sign === 1 ? -1 : 1, confidence), labels),
    otherCoefficients:
      labels.length < 2
        ? []
        : OF_SHARES.filter((other) => other !== coefficient).map((other) => {
            const by = leadersBy(other);
            return { coefficient: other, labels: by.labels, overturns: isOther(most, by) };
          }),
  };
}

function cannotRank(site: string, own: number, others: number): Unavailable | null {
  if (own < LEAST_RANKED)
    return { why: `${site} has ${own} of the ${LEAST_RANKED} items that a ranking needs` };
  if (others === 0) return { why: `no other has the ${LEAST_RANKED} items that a ranking needs` };
  return null;
}

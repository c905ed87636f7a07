import type { Register } from '../../attributes/definition.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { assemblageSimilarity, unlikeness } from '../../numerics/assemblages/similarity.ts';
import { condensedIndex } from '../../numerics/dissimilarity/condensed.ts';
import { lackingKind, leastMissingThatTurns, type MissingKinds } from '../shared/missing/compute.ts';
import type { PairRanking } from './found.ts';
import type { SimilarityOptions } from './options.ts';

/**
 * How far the missing kinds of one assemblage would have to differ for a pair to be the most alike that the answer does
 * not leave open; null where nothing is missing or no pair is called the most alike.
 *
 * @param ranked whether each assemblage has items enough to be ranked.
 */
export function missingFor(
  records: FragmentTable,
  table: CrossedTable,
  most: PairRanking['most'],
  ranked: readonly boolean[],
  { assemblages, of, coefficient }: SimilarityOptions,
  register: Register,
): MissingKinds | null {
  if ('why' in most) return null;
  const n = table.rows.length;
  const open = new Set([...most.labels, ...most.rivals.map(({ label }) => label)]);
  const pairs = table.rows.flatMap((first, at) =>
    table.rows
      .slice(at + 1)
      .flatMap((second, rest) =>
        ranked[at] && ranked[at + 1 + rest]
          ? [{ name: `${first} with ${second}`, place: condensedIndex(n, at, at + 1 + rest) }]
          : [],
      ),
  );
  const leader = (counts: readonly (readonly number[])[]) => {
    const { values } = unlikeness(assemblageSimilarity(counts, coefficient), coefficient);
    return pairs.reduce((best, pair) => (values[pair.place] < values[best.place] ? pair : best)).name;
  };
  if (pairs.length < 2) return null;
  return leastMissingThatTurns(
    table,
    lackingKind(records, table.rows, { across: assemblages, kinds: of }, register),
    (counts) => !open.has(leader(counts)),
  );
}

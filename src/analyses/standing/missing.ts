import type { Register } from '../../attributes/definition.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { itemCounts } from '../../fragments/items/counts.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { assemblageSimilarity, unlikeness } from '../../numerics/assemblages/similarity.ts';
import { condensedIndex } from '../../numerics/dissimilarity/condensed.ts';
import { LEAST_RANKED } from '../likeness-rank.ts';
import { lackingKind, leastMissingThatTurns, type MissingKinds } from '../shared/missing/compute.ts';
import type { Ranking } from './found.ts';
import type { StandingOptions } from './options.ts';

/**
 * How far the missing kinds of one assemblage would have to differ for the site to be most like another that the answer
 * does not leave open; null where nothing is missing or nobody is called the most alike.
 */
export function missingFor(
  items: FragmentTable,
  table: CrossedTable,
  site: number,
  { most }: Ranking,
  { among, of, coefficient }: StandingOptions,
  register: Register,
): MissingKinds | null {
  if ('why' in most) return null;
  const n = table.rows.length;
  const open = new Set([...most.labels, ...most.rivals.map(({ label }) => label)]);
  const counted = itemCounts(table);
  const others = table.rows.flatMap((label, row) =>
    row === site || counted[row].length < LEAST_RANKED
      ? []
      : [{ label, place: condensedIndex(n, row, site) }],
  );
  if (others.length < 2) return null;
  return leastMissingThatTurns(
    table,
    lackingKind(items, table.rows, { across: among, kinds: of }, register),
    (counts) => {
      const { values } = unlikeness(assemblageSimilarity(counts, coefficient), coefficient);
      const nearest = others.reduce((best, one) => (values[one.place] < values[best.place] ? one : best));
      return !open.has(nearest.label);
    },
  );
}

import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { itemCounts } from '../../fragments/items/counts.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { Unavailable } from '../contract.ts';
import { LEAST_RANKED } from '../likeness-rank.ts';
import type { AxisPlaces, Newcomer } from './found.ts';
import { itemsOf, likenessOf, placeLate, type TypedSite } from './newcomers.ts';
import type { SimilarityOptions } from './options.ts';

/** Assemblages that took no part in finding the axes: those of the table that were named, then those typed in. */
export function newcomersOf(
  table: CrossedTable,
  items: ReturnType<typeof itemCounts>,
  axes: AxisPlaces | Unavailable,
  typed: readonly TypedSite[],
  options: SimilarityOptions,
  random: Random,
): readonly Newcomer[] {
  const place = (
    late: Parameters<typeof placeLate>[0],
    stream: Random,
  ): Omit<Newcomer, 'likeness' | 'most'> =>
    'why' in axes
      ? { label: late.label, n: late.items.length, unplaced: 0, at: axes, cloud: [], limits: [] }
      : placeLate(late, axes.found, table.columns.length, options, stream);
  return [
    ...options.supplementary.map((label) => {
      const row = table.rows.indexOf(label);
      return {
        ...place({ label, items: items[row], strange: 0 }, random.stream(label)),
        likeness: [],
        most: { why: 'its likeness stands among the pairs' },
      };
    }),
    ...typed.map((site) => {
      const likeness = likenessOf(site, table, items, options, random.stream(`likeness ${site.label}`));
      const own = itemsOf(site);
      const enough = likeness.filter(({ label }) => items[table.rows.indexOf(label)].length >= LEAST_RANKED);
      return {
        ...place({ label: site.label, items: own, strange: site.strange }, random.stream(site.label)),
        likeness,
        most: mostOf(enough, own.length),
      };
    }),
  ];
}

/** Values that should tie may differ in their last bits. */
const TIE = 1e-9;

/** @param likeness most alike first. */
function mostOf(likeness: Newcomer['likeness'], own: number): Newcomer['most'] {
  if (own < LEAST_RANKED) return { why: `it has ${own} of the ${LEAST_RANKED} items that a ranking needs` };
  if (likeness.length === 0) return { why: `no other has the ${LEAST_RANKED} items that a ranking needs` };
  const [{ value }] = likeness;
  const near = TIE * Math.max(1, Math.abs(value));
  return {
    labels: likeness.filter((one) => Math.abs(one.value - value) <= near).map(({ label }) => label),
    value,
  };
}

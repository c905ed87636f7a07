import { viewRows } from '../../fragments/subset.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Random } from '../../numerics/foundation/random.ts';

/**
 * One fragment of each item, drawn by the seed, in the order in which the items come. A find that is a fragment
 * differs from the middle of an item as fragments do; set among single fragments it is one of their like, and the
 * rest of an item, which would be nearer to its fragments than a find can be, is left out.
 *
 * @returns null where no item has more than one fragment.
 */
export function oneFragmentAnItem(
  fragments: FragmentTable,
  items: ReadonlySet<string>,
  random: Random,
): FragmentTable | null {
  const rowsOf = new Map<string, number[]>();
  fragments.item.forEach((item, row) => {
    if (!items.has(item)) return;
    const rows = rowsOf.get(item);
    if (rows === undefined) rowsOf.set(item, [row]);
    else rows.push(row);
  });
  if ([...rowsOf.values()].every((rows) => rows.length === 1)) return null;
  const drawn = [...rowsOf.values()].map((rows) => rows[random.integer(rows.length)]);
  return viewRows(fragments, drawn);
}

const kept = new WeakMap<FragmentTable, Map<string, FragmentTable | null>>();

/** The same, kept with the table that it was drawn from: the next find of the same study needs the same draw. */
export function keptOneFragment(
  fragments: FragmentTable,
  records: FragmentTable,
  random: Random,
): FragmentTable | null {
  const known = kept.get(records) ?? new Map<string, FragmentTable | null>();
  const key = String(random.stream('sign').next());
  const before = known.get(key);
  if (before !== undefined) return before;
  const drawn = oneFragmentAnItem(fragments, new Set(records.item), random);
  // The item keeps its name: what is listed and picked is the item, whichever fragment stands for it.
  const nameOf = new Map(records.item.map((item, row) => [item, records.id[row]]));
  const isItems = new Set(records.item).size === records.rows;
  const made =
    drawn === null || !isItems ? drawn : { ...drawn, id: drawn.item.map((item) => nameOf.get(item) ?? item) };
  known.set(key, made);
  kept.set(records, known);
  return made;
}

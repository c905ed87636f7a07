import { lookupKey } from '../../attributes/folding.ts';

/** Where the number of an item is unique: within its site and context, or in the source and beyond. */
export const ITEM_NUMBERS = ['in-context', 'everywhere'] as const;
export type ItemNumbers = (typeof ITEM_NUMBERS)[number];

/** "12" of one site is not "12" of another: a name that occurs at more than one gets the site's behind it. */
export function toldApartBySite(names: readonly string[], sites: readonly string[]): readonly string[] {
  const first = new Map<string, string>();
  const several = new Set<string>();
  for (const [row, name] of names.entries()) {
    const known = first.get(name);
    if (known === undefined) first.set(name, sites[row]!);
    else if (known !== sites[row]) several.add(name);
  }
  return names.map((name, row) =>
    name !== '' && sites[row] !== '' && several.has(name) ? `${name} (${sites[row]})` : name,
  );
}

/**
 * Tells apart numbers that restart in every context of a site: one that stands in several contexts gets the name of
 * its context behind it, in the spelling that comes first; where the context is not known, it stays as it is.
 *
 * @param names of the rows, already told apart by site; "" where a row has none.
 * @param contexts of the rows; "" where it is not known.
 */
export function toldApartByContext(names: readonly string[], contexts: readonly string[]): readonly string[] {
  const spelt = new Map<string, string>();
  const found = new Map<string, Set<string>>();
  const keys = contexts.map(lookupKey);
  for (const [row, name] of names.entries()) {
    const key = keys[row]!;
    if (key === '') continue;
    if (!spelt.has(key)) spelt.set(key, contexts[row]!);
    const known = found.get(name);
    if (known === undefined) found.set(name, new Set([key]));
    else known.add(key);
  }
  return names.map((name, row) => {
    const several = name !== '' && keys[row] !== '' && (found.get(name)?.size ?? 0) > 1;
    return several ? `${name} (${spelt.get(keys[row]!)})` : name;
  });
}

import { lookupKey } from '../../attributes/folding.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { nameIn } from '../reading/assemble.ts';
import { toldApartByContext } from '../reading/unique-in-context.ts';

/**
 * Ids and items of tables put one below the other. An id in more than one source gets the source's name
 * behind it. An item in more than one source stays one item where the sites agree (one object kept apart
 * in two lists must not count twice), and is told apart where they differ or are not known, or where the
 * contexts differ. Numbers that are unique everywhere are left alone.
 *
 * @param everywhere whether the numbers of items of each table are unique everywhere.
 */
export function uniqueNames(
  tables: readonly FragmentTable[],
  sources: readonly string[],
  everywhere: readonly boolean[] = [],
): { readonly id: readonly string[]; readonly item: readonly string[] } {
  const idSources = sourcesOf(tables, (table) => table.id);
  const itemSources = sourcesOf(tables, (table) => table.item);
  const taken = new Set<string>();
  const id: string[] = [];
  const item: string[] = [];
  const context: string[] = [];
  for (const [source, table] of tables.entries()) {
    const sites = table.columns.get('site');
    const contexts = table.columns.get('context');
    for (let row = 0; row < table.rows; row++) {
      const own = table.id[row]!;
      const shared = (idSources.get(own)?.size ?? 0) > 1;
      id.push(free(shared ? `${own} (${sources[source]})` : own, taken));
      const object = table.item[row]!;
      const among = [...(itemSources.get(object) ?? [])];
      const told = among.length > 1 && !among.every((one) => everywhere[one]);
      const site = nameIn(sites, row);
      const known = lookupKey(site) !== '';
      item.push(told ? `${object} (${known ? site : sources[source]})` : object);
      context.push(told && known ? nameIn(contexts, row) : '');
    }
  }
  return { id, item: toldApartByContext(item, context) };
}

function sourcesOf(
  tables: readonly FragmentTable[],
  names: (table: FragmentTable) => readonly string[],
): ReadonlyMap<string, ReadonlySet<number>> {
  const found = new Map<string, Set<number>>();
  for (const [source, table] of tables.entries()) {
    for (const name of names(table)) {
      const known = found.get(name);
      if (known === undefined) found.set(name, new Set([source]));
      else known.add(source);
    }
  }
  return found;
}

function free(name: string, taken: Set<string>): string {
  let candidate = name;
  for (let i = 2; taken.has(candidate); i++) candidate = `${name} (${i})`;
  taken.add(candidate);
  return candidate;
}

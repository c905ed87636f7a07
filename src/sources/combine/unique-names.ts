import { lookupKey } from '../../attributes/folding.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { nameIn } from '../assemble.ts';

/**
 * Ids and items of tables put one below the other. An id in more than one source gets the source's name
 * behind it. An item in more than one source stays one item where the sites agree (one object kept apart
 * in two lists must not count twice), and is told apart where they differ or are not known.
 */
export function uniqueNames(
  tables: readonly FragmentTable[],
  sources: readonly string[],
): { readonly id: readonly string[]; readonly item: readonly string[] } {
  const idSources = sourcesOf(tables, (table) => table.id);
  const itemSources = sourcesOf(tables, (table) => table.item);
  const taken = new Set<string>();
  const id: string[] = [];
  const item: string[] = [];
  for (const [source, table] of tables.entries()) {
    const sites = table.columns.get('site');
    for (let row = 0; row < table.rows; row++) {
      const own = table.id[row]!;
      const shared = (idSources.get(own)?.size ?? 0) > 1;
      id.push(free(shared ? `${own} (${sources[source]})` : own, taken));
      const object = table.item[row]!;
      if ((itemSources.get(object)?.size ?? 0) < 2) item.push(object);
      else {
        const site = lookupKey(nameIn(sites, row));
        item.push(site === '' ? `${object} (${sources[source]})` : `${object} (${nameIn(sites, row)})`);
      }
    }
  }
  return { id, item };
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

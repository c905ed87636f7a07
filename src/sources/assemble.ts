import type { AttributeDefinition } from '../attributes/definition.ts';
import { CELL_STATES } from '../cells/reading.ts';
import type { Column, FragmentTable } from '../fragments/table.ts';
import { enter, type Ledger } from './ledger.ts';

/** The text of a row in a column that names things: the term where it has one, else the cell itself. */
export function nameIn(column: Column | undefined, row: number): string {
  if (column === undefined) return '';
  if (column.kind === 'term') return column.codes[row]! < 0 ? '' : column.levels[column.codes[row]!]!;
  if (column.kind === 'text' && column.state[row] !== MEASURED) return '';
  return column.raw[row]!.trim();
}

const MEASURED = CELL_STATES.indexOf('measured');

/** Site and phase as one key; "" where neither is known. */
export function assemblageName(site: string, phase: string): string {
  if (site === '') return phase;
  return phase === '' ? site : `${site}, ${phase}`;
}

/**
 * Puts the columns of one source together. Every row gets an id of its own: that of the source where it
 * has one, else its row number; a second "12" becomes "12 (2)" and both stay fragments of one item unless
 * the source names the items itself.
 */
export function assembleTable(
  columns: ReadonlyMap<string, Column>,
  origins: readonly number[],
  source: string,
  ledger: Ledger,
  names?: Column,
): FragmentTable {
  const rows = origins.length;
  const fragments = columns.get('fragment') ?? distinct(columns.get('catalogueNumber')) ?? distinct(names);
  if (fragments !== undefined && fragments === names) {
    enter(ledger, {
      row: 0,
      column: names.attribute.label,
      raw: names.attribute.label,
      readAs: 'names of the rows',
      level: 'flagged',
      rule: 'names-from-first-column',
      why: 'No column of identifiers was recognised; the first column, whose cells all differ, names the rows.',
    });
  }
  const items = columns.get('item');
  const sites = columns.get('site');
  const phases = columns.get('phase');
  const several = {
    id: namesAtSeveralSites(fragments, sites, rows),
    item: namesAtSeveralSites(items, sites, rows),
  };
  const seen = new Map<string, number>();
  const taken = new Set<string>();
  for (let row = 0; row < rows; row++) taken.add(nameIn(fragments, row));
  const id: string[] = [];
  const item: string[] = [];
  const assemblage: string[] = [];
  for (let row = 0; row < rows; row++) {
    const site = nameIn(sites, row);
    const named = atSite(nameIn(fragments, row), site, several.id);
    const base = named === '' ? unused(`row ${origins[row]}`, taken) : named;
    const before = seen.get(base) ?? 0;
    seen.set(base, before + 1);
    const own = before === 0 ? base : unused(`${base} (${before + 1})`, taken);
    if (before > 0) {
      enter(ledger, {
        row: origins[row]!,
        column: fragments?.attribute.label ?? '',
        raw: nameIn(fragments, row),
        readAs: own,
        level: 'flagged',
        rule: 'duplicate-id',
        why: `The identifier "${named}" stands in more than one row; if each row is one reading of a fragment, set "gather" in the profile.`,
      });
    }
    id.push(own);
    const object = atSite(nameIn(items, row), site, several.item);
    item.push(object === '' ? base : object);
    assemblage.push(assemblageName(site, nameIn(phases, row)));
  }
  return {
    rows,
    id,
    item,
    assemblage,
    origin: origins.map((row) => ({ source: 0, row })),
    sources: [source],
    columns,
  };
}

function unused(name: string, taken: Set<string>): string {
  let candidate = name;
  for (let i = 2; taken.has(candidate); i++) candidate = `${name} (${i})`;
  taken.add(candidate);
  return candidate;
}

/** Names that occur at more than one site: "12" of one site is not "12" of another. */
function namesAtSeveralSites(
  column: Column | undefined,
  sites: Column | undefined,
  rows: number,
): ReadonlySet<string> {
  const first = new Map<string, string>();
  const several = new Set<string>();
  if (column === undefined || sites === undefined) return several;
  for (let row = 0; row < rows; row++) {
    const name = nameIn(column, row);
    const site = nameIn(sites, row);
    const known = first.get(name);
    if (known === undefined) first.set(name, site);
    else if (known !== site) several.add(name);
  }
  return several;
}

function atSite(name: string, site: string, several: ReadonlySet<string>): string {
  return name !== '' && site !== '' && several.has(name) ? `${name} (${site})` : name;
}

/** A catalogue number that no two rows share names them as well as a fragment number does. */
function distinct(column: Column | undefined): Column | undefined {
  if (column?.kind !== 'text') return undefined;
  const texts = column.raw.map((text) => text.trim());
  return new Set(texts).size === texts.length && !texts.includes('') ? column : undefined;
}

/** Prefix of the ids of columns that no attribute claims; kept, shown, never compared. */
export const TEXT_COLUMN_PREFIX = 'column: ';

/** The definition under which an unclaimed column is kept. */
export function textColumnAttribute(header: string): AttributeDefinition {
  return {
    id: `${TEXT_COLUMN_PREFIX}${header}`,
    label: header,
    block: 'context',
    scale: 'text',
    definition: 'A column of a source that no attribute was matched to, as it stands.',
    source: 'the source itself',
  };
}

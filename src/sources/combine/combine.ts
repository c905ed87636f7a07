import type { Register } from '../../attributes/definition.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { append } from '../../numerics/foundation/lists.ts';
import type { DuplicateDecision } from '../profile/decisions.ts';
import { assemblageName, nameIn } from '../reading/assemble.ts';
import type { Fault, LedgerEntry, RowSetAside, SourceReading } from '../source-reading.ts';
import { applyDecisions, pairKey } from './decide.ts';
import { type LikelyDuplicate, likelyDuplicates } from './duplicates.ts';
import { joinAssemblages, type UnmatchedKey } from './join-assemblages.ts';
import { partsOf } from './parts.ts';
import { stackColumns } from './stack-columns.ts';
import { uniqueNames } from './unique-names.ts';

export interface CombinedSources {
  readonly table: FragmentTable;
  /** What combining changed or found; the ledgers of the single sources are not repeated. */
  readonly ledger: readonly LedgerEntry[];
  readonly unmatched: readonly UnmatchedKey[];
  /** Rows that may be one find and that nobody has decided about. */
  readonly duplicates: readonly LikelyDuplicate[];
  readonly faults: readonly Fault[];
  /** Source (of a normalised table, the one that its rows came from) -> rows that a decision about duplicates sets aside. */
  readonly setAside: ReadonlyMap<string, readonly RowSetAside[]>;
}

/**
 * One table from several sources: fragments one below the other, the tables of assemblages (and of
 * periods) joined to them by key. Identifiers that two sources share are told apart by the source's name;
 * an item that two sources name at one site and context stays one item. Likely duplicates are listed until somebody has
 * decided what they are.
 */
export function combineSources(
  readings: readonly SourceReading[],
  register: Register,
  decisions: readonly DuplicateDecision[] = [],
): CombinedSources {
  const fragments = readings.filter(({ role }) => role === 'fragments').flatMap(partsOf);
  const tables = fragments.map(({ table }) => table);
  const ids = new Set(tables.flatMap((table) => [...table.columns.keys()]));
  const stacked = new Map<string, Column>([...ids].map((id) => [id, stackColumns(id, tables)]));
  const origin = tables.flatMap((table, source) => table.origin.map(({ row }) => ({ source, row })));
  const sources = fragments.map(({ name }) => name);
  const everywhere = fragments.map(({ profile }) => profile.itemNumbers === 'everywhere');
  const names = uniqueNames(tables, sources, everywhere);
  const tells = tables.some((table) => table.tells !== undefined)
    ? { tells: tables.map((table) => table.tells?.[0] ?? []) }
    : {};
  const decided = applyDecisions(
    {
      rows: origin.length,
      ...names,
      assemblage: names.id.map(() => ''),
      origin,
      sources,
      ...tells,
      columns: stacked,
    },
    fragments,
    decisions,
  );
  const ledger: LedgerEntry[] = [...decided.ledger];
  let table = withColumns(decided.table, decided.table.columns, register);
  const unmatched: UnmatchedKey[] = [];
  for (const reading of joinOrder(readings.filter(({ role }) => role === 'assemblages'))) {
    const joined = joinAssemblages(table, reading);
    table = withColumns(table, joined.columns, register);
    append(unmatched, joined.unmatched);
    append(ledger, [...joined.ledger, ...joined.unmatched.map(unmatchedEntry)]);
  }
  const duplicates = likelyDuplicates(table, ownNames(table, fragments)).filter(
    ({ rows }) => !decided.settled.has(pairKey(table, rows[0], rows[1])),
  );
  append(
    ledger,
    duplicates.map((pair) => duplicateEntry(table, pair)),
  );
  const { faults, setAside } = decided;
  return { table, ledger, unmatched, duplicates, faults, setAside };
}

/** The identifier that a row has in its own source. */
function ownNames(table: FragmentTable, readings: readonly SourceReading[]): (row: number) => string {
  const names = readings.map(
    (reading) => new Map(reading.table.origin.map(({ row }, at) => [row, reading.table.id[at]!])),
  );
  return (row) => names[table.origin[row]!.source]?.get(table.origin[row]!.row) ?? table.id[row]!;
}

/** Tables that know the site come first: they may bring the period by which the next one is joined. */
function joinOrder(readings: readonly SourceReading[]): SourceReading[] {
  const rank = ({ table }: SourceReading): number => (table.columns.has('site') ? 0 : 1);
  return [...readings].sort((a, b) => rank(a) - rank(b));
}

/** A phase that a join brought in changes the assemblage of a row; columns keep the register's order. */
function withColumns(
  table: FragmentTable,
  columns: ReadonlyMap<string, Column>,
  register: Register,
): FragmentTable {
  const known = [...register.attributes.keys()].filter((id) => columns.has(id));
  const order = [...new Set([...known, ...columns.keys()])];
  const assemblage = table.id.map((_, row) =>
    assemblageName(nameIn(columns.get('site'), row), nameIn(columns.get('phase'), row)),
  );
  return { ...table, assemblage, columns: new Map(order.map((id) => [id, columns.get(id)!])) };
}

function unmatchedEntry({ assemblages, by, key, side, rows }: UnmatchedKey): LedgerEntry {
  const name = key.map((part) => (part === '' ? '(blank)' : part)).join(', ');
  return {
    source: assemblages,
    row: 0,
    column: by.join(', '),
    raw: name,
    readAs: '',
    level: 'flagged',
    rule: 'unmatched-key',
    why:
      side === 'fragments'
        ? `${rows} fragments of "${name}" have no row in this table, so nothing was joined to them.`
        : `No fragment belongs to "${name}".`,
  };
}

function duplicateEntry(table: FragmentTable, { rows, ids, sources, why }: LikelyDuplicate): LedgerEntry {
  return {
    source: sources[1],
    row: table.origin[rows[1]]!.row,
    column: '',
    raw: ids[1],
    readAs: ids[1],
    level: 'flagged',
    rule: 'likely-duplicate',
    why: `Perhaps the same find as "${ids[0]}" in ${sources[0]}: ${why}. Both are kept until "duplicates" of the study says what they are.`,
  };
}

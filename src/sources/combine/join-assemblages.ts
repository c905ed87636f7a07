import { lookupKey } from '../../attributes/folding.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { nameIn } from '../reading/assemble.ts';
import type { LedgerEntry, SourceReading } from '../source-reading.ts';
import { fillColumn, isUnstated, sameCell } from './fill-column.ts';

/** A key on one side of a join that has no partner on the other. */
export interface UnmatchedKey {
  /** The table that was joined. */
  readonly assemblages: string;
  readonly by: readonly string[];
  readonly key: readonly string[];
  /** `fragments`: fragments whose key the table lacks; `assemblages`: a row of it that no fragment names. */
  readonly side: 'fragments' | 'assemblages';
  readonly rows: number;
}

export interface Joined {
  readonly columns: ReadonlyMap<string, Column>;
  readonly unmatched: readonly UnmatchedKey[];
  readonly ledger: readonly LedgerEntry[];
}

const KEYS = ['site', 'phase', 'period'];

/** The attributes by which a table of assemblages is joined: as its profile says, else site and phase. */
export function joinKeys(reading: SourceReading): readonly string[] {
  if (reading.profile.joinBy !== undefined) return reading.profile.joinBy;
  const has = KEYS.filter((id) => reading.table.columns.has(id));
  if (has.includes('site')) return has.filter((id) => id !== 'period');
  return has.includes('period') ? ['period'] : has;
}

/**
 * Adds what is known of each assemblage (region, dates, recovery …) to its fragments, by key. Keys are
 * compared without case, accents and punctuation. What a fragment states itself is kept; where the two
 * differ the ledger says so. Keys without a partner are reported from both sides.
 */
export function joinAssemblages(table: FragmentTable, reading: SourceReading): Joined {
  const by = joinKeys(reading);
  const donor = reading.table;
  const ledger: LedgerEntry[] = [];
  const places = new Map<string, number>();
  for (let row = 0; row < donor.rows; row++) {
    const key = keyOf(donor, by, row);
    if (key === null) continue;
    if (places.has(key)) {
      ledger.push({
        source: reading.name,
        row: donor.origin[row]!.row,
        column: by.join(', '),
        raw: textsOf(donor, by, row).join(', '),
        readAs: '',
        level: 'flagged',
        rule: 'assemblage-twice',
        why: 'An earlier row has the same key; this one was not joined.',
      });
    } else places.set(key, row);
  }
  const from = new Int32Array(table.rows).fill(-1);
  const used = new Set<number>();
  const missing = new Map<string, { key: readonly string[]; rows: number }>();
  for (let row = 0; row < table.rows; row++) {
    const key = keyOf(table, by, row);
    const place = key === null ? undefined : places.get(key);
    if (place !== undefined) {
      from[row] = place;
      used.add(place);
      continue;
    }
    const texts = textsOf(table, by, row);
    const name = key ?? JSON.stringify(texts);
    const known = missing.get(name);
    missing.set(name, { key: texts, rows: (known?.rows ?? 0) + 1 });
  }
  const columns = new Map(table.columns);
  for (const [id, given] of donor.columns) {
    if (by.includes(id) || id === 'fragment' || id === 'item') continue;
    const column = columns.get(id);
    if (column !== undefined && column.kind !== given.kind) continue;
    const take = from.map((place, row) => (place >= 0 && isUnstated(column, row) ? place : -1));
    if (column !== undefined) reportDifferences(table, column, given, from, reading, ledger);
    columns.set(id, fillColumn(column, given, take));
  }
  const base = { assemblages: reading.name, by };
  const unmatched: UnmatchedKey[] = [...missing.values()].map(({ key, rows }) => ({
    ...base,
    key,
    side: 'fragments',
    rows,
  }));
  for (const [, place] of places) {
    if (!used.has(place))
      unmatched.push({ ...base, key: textsOf(donor, by, place), side: 'assemblages', rows: 1 });
  }
  return { columns, unmatched, ledger };
}

function reportDifferences(
  table: FragmentTable,
  column: Column,
  given: Column,
  from: Int32Array,
  reading: SourceReading,
  ledger: LedgerEntry[],
): void {
  for (let row = 0; row < table.rows; row++) {
    const place = from[row]!;
    if (
      place < 0 ||
      isUnstated(column, row) ||
      isUnstated(given, place) ||
      sameCell(column, row, given, place)
    )
      continue;
    const origin = table.origin[row]!;
    ledger.push({
      source: table.sources[origin.source] ?? '',
      row: origin.row,
      column: column.attribute.label,
      raw: column.raw[row]!,
      readAs: column.raw[row]!,
      level: 'flagged',
      rule: 'join-differs',
      why: `${reading.name} says "${given.raw[place]!.trim()}" for this assemblage; what the fragment itself states was kept.`,
    });
  }
}

function textsOf(table: FragmentTable, by: readonly string[], row: number): string[] {
  return by.map((id) => nameIn(table.columns.get(id), row));
}

/** Null where a part of the key is not known. */
function keyOf(table: FragmentTable, by: readonly string[], row: number): string | null {
  const texts = textsOf(table, by, row);
  return texts.length === 0 || texts.some((text) => text === '')
    ? null
    : JSON.stringify(texts.map(lookupKey));
}

import { foldText } from '../../attributes/folding.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { TEXT_COLUMN_PREFIX } from '../reading/assemble.ts';
import type { SourceReading } from '../source-reading.ts';

/** Columns of several tables that mean the same, side by side. */
export interface AlignedColumn {
  /** Attribute id, or the folded header of columns that nothing claims. */
  readonly id: string;
  readonly label: string;
  /** Header in each table, "" where it has none; in the order of the readings. */
  readonly headers: readonly string[];
}

/** Two tables whose key columns meet. */
export interface ProposedJoin {
  /** The table whose rows are described, and the one that describes each key once. */
  readonly finds: string;
  readonly describing: string;
  readonly by: string;
  readonly label: string;
  /** Different keys of the finds, and how many of them the other table has. */
  readonly keys: number;
  readonly matched: number;
}

/** Columns of the same meaning in at least two of the tables, those in most tables first. */
export function alignColumns(readings: readonly SourceReading[]): AlignedColumn[] {
  const rows = new Map<string, { label: string; headers: string[] }>();
  for (const [place, reading] of readings.entries()) {
    for (const { header, attributes, status } of reading.columns) {
      if (status === 'empty' || status === 'ignored') continue;
      const ids = attributes.length > 0 ? attributes : [`${TEXT_COLUMN_PREFIX}${foldText(header)}`];
      for (const id of ids) {
        const label = reading.table.columns.get(id)?.attribute.label ?? header;
        const row = rows.get(id) ?? { label, headers: readings.map(() => '') };
        row.headers[place] = header;
        rows.set(id, row);
      }
    }
  }
  const tables = (headers: readonly string[]) => headers.filter((header) => header !== '').length;
  return [...rows]
    .map(([id, row]) => ({ id, ...row }))
    .filter(({ headers }) => tables(headers) > 1)
    .sort((a, b) => tables(b.headers) - tables(a.headers));
}

/** Share of the keys that must be met for a join to be proposed. */
const ENOUGH = 0.5;

/**
 * Tables that may be joined: one describes each key in a single row, and the other's rows name those keys. The
 * key is an attribute that both have (site, context, find) or an unclaimed column of one header.
 */
export function proposeJoins(readings: readonly SourceReading[]): ProposedJoin[] {
  const joins: ProposedJoin[] = [];
  for (const finds of readings) {
    for (const describing of readings) {
      if (finds === describing) continue;
      const best = keysOf(describing.table)
        .flatMap((id) => joinBy(id, finds, describing))
        .sort((a, b) => b.matched / b.keys - a.matched / a.keys || b.keys - a.keys)[0];
      if (best !== undefined) joins.push(best);
    }
  }
  return joins;
}

/**
 * Of several tables, those that say only where and when, each place or period once, are tables of assemblages, if
 * nearly all that the finds name is in them; their profile says so then.
 */
export function withRoles(readings: readonly SourceReading[]): readonly SourceReading[] {
  const joins = proposeJoins(readings).filter(
    ({ by, keys, matched }) => ['site', 'phase', 'period'].includes(by) && matched >= NEARLY_ALL * keys,
  );
  return readings.map((reading) =>
    reading.role === 'fragments' &&
    joins.some(({ describing }) => describing === reading.name) &&
    [...reading.table.columns.values()].every(({ attribute }) => attribute.block === 'context')
      ? { ...reading, role: 'assemblages', profile: { ...reading.profile, role: 'assemblages' } }
      : reading,
  );
}

const NEARLY_ALL = 0.8;

/** Columns of names in which each row differs. */
function keysOf(table: FragmentTable): string[] {
  return [...table.columns].flatMap(([id, column]) => {
    if (column.kind === 'numeric') return [];
    const keys = namesOf(column).filter((key) => key !== '');
    return keys.length === table.rows && new Set(keys).size === keys.length && keys.length > 1 ? [id] : [];
  });
}

function joinBy(id: string, finds: SourceReading, describing: SourceReading): ProposedJoin[] {
  const own = finds.table.columns.get(id);
  const other = describing.table.columns.get(id);
  if (own === undefined || other === undefined || own.kind === 'numeric' || other.kind === 'numeric')
    return [];
  const keys = new Set(namesOf(own).filter((key) => key !== ''));
  const known = new Set(namesOf(other));
  const matched = [...keys].filter((key) => known.has(key)).length;
  // Where each find is named once too, the tables stand side by side rather than one describing the other.
  if (keys.size < 2 || matched < ENOUGH * keys.size || finds.table.rows <= describing.table.rows) return [];
  // Two catalogues that each number their rows from 1 on have the numbers in common and nothing else.
  if (keys.size === finds.table.rows && areRunning(keys) && areRunning(known)) return [];
  if (tellOtherSites(id, finds.table, describing.table)) return [];
  return [
    {
      finds: finds.name,
      describing: describing.name,
      by: id,
      label: own.attribute.label,
      keys: keys.size,
      matched,
    },
  ];
}

/** Whole numbers from 1 on, few of which are left out. */
function areRunning(names: ReadonlySet<string>): boolean {
  const numbers = [...names]
    .filter((name) => name !== '')
    .map((name) => (/^\d+$/.test(name) ? Number(name) : NaN));
  const most = numbers.reduce((greatest, number) => Math.max(greatest, number), 0);
  return numbers.length > 0 && numbers.every(Number.isInteger) && most <= numbers.length * FEW_LEFT_OUT;
}

const FEW_LEFT_OUT = 1.25;

/** Whether most of what the two tables name alike is of another site in the one than in the other. */
function tellOtherSites(id: string, finds: FragmentTable, describing: FragmentTable): boolean {
  const sites = [finds, describing].map(({ columns }) => columns.get('site'));
  const keys = [finds, describing].map(({ columns }) => columns.get(id));
  const [ownSites, otherSites, ownKeys, otherKeys] = [...sites, ...keys].map((column) =>
    column === undefined || column.kind === 'numeric' ? null : namesOf(column),
  );
  if (id === 'site' || !ownSites || !otherSites || !ownKeys || !otherKeys) return false;
  const siteOf = new Map(otherKeys.map((key, row) => [key, otherSites[row] ?? '']));
  const both = ownKeys.flatMap((key, row) => {
    const [own, other] = [ownSites[row] ?? '', siteOf.get(key) ?? ''];
    return own === '' || other === '' ? [] : [own === other];
  });
  return both.filter((same) => !same).length > both.length / 2;
}

const namesOf = (column: Exclude<Column, { readonly kind: 'numeric' }>): string[] =>
  column.raw.map((text) => foldText(text));

import { lookupKey } from '../../attributes/folding.ts';
import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { nameIn } from '../reading/assemble.ts';
import { sameWithin } from './within-source.ts';

/** Two rows that may be one find: published twice in two sources, or written down twice in one. */
export interface LikelyDuplicate {
  readonly rows: readonly [first: number, second: number];
  readonly ids: readonly [first: string, second: string];
  /** The identifiers in their own sources, by which a decision names them. */
  readonly names: readonly [first: string, second: string];
  readonly sources: readonly [first: string, second: string];
  /** Measurements that both have, and how many of them are equal. */
  readonly comparable: number;
  readonly equal: number;
  readonly why: string;
}

/** A value shared by more rows than this says little about any two of them. */
const COMMONEST = 60;
const LEAST_EQUAL = 3;

/**
 * Rows of different sources that share an identifier at one site, or at least three equal measurements
 * that make up three quarters of those that both have; and rows of one source that agree in everything that
 * both have, where chance would hardly do it (`sameWithin`). They are listed, never merged: a person decides.
 * @param nameOf the identifier of a row in its own source; that of the table where left out.
 */
export function likelyDuplicates(
  table: FragmentTable,
  nameOf: (row: number) => string = (row) => table.id[row]!,
): LikelyDuplicate[] {
  const sites = siteKeys(table);
  const apart = (a: number, b: number): boolean =>
    table.origin[a]!.source === table.origin[b]!.source ||
    (sites[a] !== sites[b] && sites[a] !== '' && sites[b] !== '');
  /** Pair (smaller row times number of rows, plus larger row) -> whether an identifier made it. */
  const pairs = new Map<number, boolean>();
  const keyOf = (a: number, b: number): number => Math.min(a, b) * table.rows + Math.max(a, b);
  for (const rows of byIdentifier(table)) {
    everyPair(rows, (a, b) => {
      if (!apart(a, b)) pairs.set(keyOf(a, b), true);
    });
  }
  const numeric = [...table.columns.values()].filter(
    (column): column is NumericColumn => column.kind === 'numeric' && column.attribute.block !== 'context',
  );
  const counts = new Map<number, number>();
  const within = sameWithin(table);
  const inside = new Map<number, number>();
  for (const column of numeric) {
    for (const rows of byValue(column)) {
      everyPair(rows, (a, b) => {
        const one = table.origin[a]!.source === table.origin[b]!.source;
        if (!one && apart(a, b)) return;
        const key = keyOf(a, b);
        const count = (counts.get(key) ?? 0) + 1;
        counts.set(key, count);
        if (one) {
          const equal = count === LEAST_EQUAL ? within(a, b) : null;
          if (equal !== null) inside.set(key, equal);
          return;
        }
        if (count === LEAST_EQUAL && !pairs.has(key)) pairs.set(key, false);
      });
    }
  }
  const rowsOf = (key: number): [number, number] => [Math.floor(key / table.rows), key % table.rows];
  return [
    ...[...pairs].map(([key, named]) => describe(table, numeric, ...rowsOf(key), named)),
    ...[...inside].map(([key, equal]) => describeWithin(table, ...rowsOf(key), equal)),
  ]
    .filter((pair) => pair !== null)
    .sort((a, b) => a.rows[0] - b.rows[0] || a.rows[1] - b.rows[1])
    .map((pair) => ({ ...pair, names: [nameOf(pair.rows[0]), nameOf(pair.rows[1])] }));
}

function describe(
  table: FragmentTable,
  numeric: readonly NumericColumn[],
  a: number,
  b: number,
  named: boolean,
): Omit<LikelyDuplicate, 'names'> | null {
  let comparable = 0;
  let equal = 0;
  for (const { low, high } of numeric) {
    if (Number.isNaN(low[a]!) || Number.isNaN(low[b]!)) continue;
    comparable++;
    if (low[a] === low[b] && high[a] === high[b]) equal++;
  }
  const alike = equal >= LEAST_EQUAL && equal >= 0.75 * comparable;
  if (!alike && !(named && equal >= 0.5 * comparable)) return null;
  const measured =
    comparable === 0 ? 'no measurement in common' : `${equal} of ${comparable} measurements equal`;
  return {
    rows: [a, b],
    ids: [table.id[a]!, table.id[b]!],
    sources: [table.sources[table.origin[a]!.source]!, table.sources[table.origin[b]!.source]!],
    comparable,
    equal,
    why: named ? `the same identifier at one site, ${measured}` : `${measured} at one site`,
  };
}

function describeWithin(
  table: FragmentTable,
  a: number,
  b: number,
  equal: number,
): Omit<LikelyDuplicate, 'names'> {
  const source = table.sources[table.origin[a]!.source]!;
  return {
    rows: [a, b],
    ids: [table.id[a]!, table.id[b]!],
    sources: [source, source],
    comparable: equal,
    equal,
    why: `all ${equal} measurements equal and nothing else different, which chance would hardly do`,
  };
}

function siteKeys(table: FragmentTable): string[] {
  const column = table.columns.get('site');
  const cache = new Map<string, string>();
  return table.id.map((_, row) => {
    const name = nameIn(column, row);
    let key = cache.get(name);
    if (key === undefined) {
      key = lookupKey(name);
      cache.set(name, key);
    }
    return key;
  });
}

function byIdentifier(table: FragmentTable): number[][] {
  const groups = new Map<string, number[]>();
  for (const id of ['fragment', 'catalogueNumber']) {
    const column = table.columns.get(id);
    if (column === undefined) continue;
    for (let row = 0; row < table.rows; row++) {
      const key = lookupKey(nameIn(column, row));
      // A bare number names a row of its own list, not a find.
      if (key === '' || /^\d{1,4}$/.test(key)) continue;
      push(groups, key, row);
    }
  }
  return [...groups.values()]
    .map((rows) => [...new Set(rows)])
    .filter((rows) => rows.length > 1 && rows.length <= COMMONEST);
}

function byValue(column: NumericColumn): number[][] {
  const groups = new Map<string, number[]>();
  for (let row = 0; row < column.low.length; row++) {
    if (!Number.isNaN(column.low[row]!)) push(groups, `${column.low[row]} ${column.high[row]}`, row);
  }
  // In a large table a value must be rarer to tell rows apart, and the pairs must stay countable.
  const commonest = Math.min(COMMONEST, Math.max(2, Math.floor(2e5 / column.low.length)));
  return [...groups.values()].filter((rows) => rows.length > 1 && rows.length <= commonest);
}

function push(groups: Map<string, number[]>, key: string, row: number): void {
  const rows = groups.get(key);
  if (rows === undefined) groups.set(key, [row]);
  else rows.push(row);
}

function everyPair(rows: readonly number[], use: (a: number, b: number) => void): void {
  for (let i = 0; i < rows.length; i++) for (let j = i + 1; j < rows.length; j++) use(rows[i]!, rows[j]!);
}

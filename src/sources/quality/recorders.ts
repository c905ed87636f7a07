import { midpoint } from '../../fragments/accessors.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { quantile } from '../../numerics/describing/quantile.ts';
import { append } from '../../numerics/foundation/lists.ts';
import { adjustP } from '../../numerics/tests/adjust.ts';
import { mannWhitney } from '../../numerics/tests/mann-whitney.ts';
import { nameIn } from '../reading/assemble.ts';

/** Two recorders (or sources) whose readings of one attribute differ on the same assemblages. */
export interface RecorderDifference {
  readonly by: 'recorder' | 'source';
  readonly attribute: string;
  /** Assemblage that both recorded. */
  readonly assemblage: string;
  readonly names: readonly [first: string, second: string];
  readonly n: readonly [first: number, second: number];
  readonly medians: readonly [first: number, second: number];
  readonly p: number;
  /** Adjusted over all comparisons made (Holm 1979). */
  readonly pAdjusted: number;
}

const FEWEST = 5;
const LEVEL = 0.05;

/**
 * Do recorders, or sources, differ systematically? Only like is compared with like: items of one
 * assemblage that both recorded, at least five each, by the Mann-Whitney test on one median an item.
 * What remains at 5 % after Holm's adjustment is listed. Finds are not shared out at random, so a
 * difference may lie in the finds as well as in the recorders.
 */
export function recorderDifferences(table: FragmentTable): RecorderDifference[] {
  const all: Omit<RecorderDifference, 'pAdjusted'>[] = [];
  for (const by of ['recorder', 'source'] as const) {
    const column = table.columns.get('recorder');
    if (by === 'recorder' && column === undefined) continue;
    const nameOf = (row: number): string =>
      by === 'recorder' ? nameIn(column, row) : (table.sources[table.origin[row]!.source] ?? '');
    for (const [attribute, values] of table.columns) {
      if (values.kind !== 'numeric' || values.attribute.block === 'context') continue;
      const groups = new Map<string, Map<string, Map<string, number[]>>>();
      for (let row = 0; row < table.rows; row++) {
        const value = midpoint(values, row);
        const name = nameOf(row);
        const assemblage = table.assemblage[row]!;
        if (!Number.isFinite(value) || name === '' || assemblage === '') continue;
        const names = within(groups, assemblage, () => new Map<string, Map<string, number[]>>());
        const items = within(names, name, () => new Map<string, number[]>());
        within(items, table.item[row]!, () => [] as number[]).push(value);
      }
      for (const [assemblage, names] of groups) append(all, compare(by, attribute, assemblage, names));
    }
  }
  const adjusted = adjustP(
    all.map(({ p }) => p),
    'holm',
  );
  return all
    .map((one, i) => ({ ...one, pAdjusted: adjusted[i]! }))
    .filter(({ pAdjusted }) => pAdjusted < LEVEL);
}

function compare(
  by: RecorderDifference['by'],
  attribute: string,
  assemblage: string,
  names: ReadonlyMap<string, ReadonlyMap<string, readonly number[]>>,
): Omit<RecorderDifference, 'pAdjusted'>[] {
  const samples = [...names]
    .map(([name, items]) => ({ name, values: [...items.values()].map((list) => medianOf(list)) }))
    .filter(({ values }) => values.length >= FEWEST);
  const found: Omit<RecorderDifference, 'pAdjusted'>[] = [];
  for (const [i, first] of samples.entries()) {
    for (const second of samples.slice(i + 1)) {
      const test = mannWhitney(first.values, second.values);
      if ('why' in test) continue;
      found.push({
        by,
        attribute,
        assemblage,
        names: [first.name, second.name],
        n: [first.values.length, second.values.length],
        medians: [medianOf(first.values), medianOf(second.values)],
        p: test.p,
      });
    }
  }
  return found;
}

function within<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const fresh = make();
  map.set(key, fresh);
  return fresh;
}

/** Of at least one number. */
function medianOf(values: readonly number[]): number {
  const median = quantile(values, 0.5);
  return typeof median === 'number' ? median : Number.NaN;
}

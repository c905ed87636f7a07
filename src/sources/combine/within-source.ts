import type { Column, FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { ln } from '../../numerics/foundation/elementary.ts';

/** Rows of one source that may be one find, written down twice under two identifiers. */

/** Measurements that must agree, and none that both have may differ. */
const LEAST_MEASURED = 4;
/**
 * How much rarer than one chance pair a source the agreement must be, in bits: 1 in 64. Each equal
 * measurement counts as log2 of one over the share of rows that have its value.
 */
const MARGIN = 6;

const log2 = (value: number) => ln(value) / Math.LN2;

/** How often each value of a measurement occurs in each source: share of the rows with a reading. */
type Shares = (column: NumericColumn, row: number) => number;

/**
 * Says whether two rows of one source agree so far that chance would hardly do it: at least four equal
 * measurements, no attribute that both have (kinds and dates included) different, and values so rare that
 * fewer than one pair in sixty sources of this size would agree by chance. Rows of one item are no
 * duplicates, and rows of one identifier are asked about elsewhere (`repeatedIds`).
 *
 * The chance is reckoned as if attributes were independent, which they are not (a fine cloth is fine both ways):
 * hence the margin, and measurements alone are counted. Own rule; measured in docs/reading-sources.md.
 */
export function sameWithin(table: FragmentTable): (a: number, b: number) => number | null {
  const columns = [...table.columns.values()].filter(({ kind }) => kind !== 'text');
  const measured = columns.filter(
    (column): column is NumericColumn => column.kind === 'numeric' && column.attribute.block !== 'context',
  );
  const shareOf = valueShares(table);
  const rowsOf = new Map<number, number>();
  for (const { source } of table.origin) rowsOf.set(source, (rowsOf.get(source) ?? 0) + 1);
  return (a, b) => {
    const source = table.origin[a]!.source;
    if (source !== table.origin[b]!.source || table.item[a] === table.item[b]) return null;
    if (columns.some((column) => differs(column, a, b))) return null;
    const equal = measured.filter(({ low }) => !Number.isNaN(low[a]!) && !Number.isNaN(low[b]!));
    if (equal.length < LEAST_MEASURED) return null;
    const bits = equal.reduce((sum, column) => sum - log2(shareOf(column, a)), 0);
    const rows = rowsOf.get(source) ?? 0;
    return bits >= log2((rows * (rows - 1)) / 2) + MARGIN ? equal.length : null;
  };
}

function differs(column: Column, a: number, b: number): boolean {
  if (column.kind === 'text') return false;
  if (column.kind === 'term') {
    const [one, other] = [column.codes[a]!, column.codes[b]!];
    return one >= 0 && other >= 0 && one !== other;
  }
  const { low, high } = column;
  if (Number.isNaN(low[a]!) || Number.isNaN(low[b]!)) return false;
  return low[a] !== low[b] || high[a] !== high[b];
}

function valueShares({ origin }: FragmentTable): Shares {
  const known = new Map<NumericColumn, { counts: Map<string, number>; rows: Map<number, number> }>();
  return (column, row) => {
    let seen = known.get(column);
    if (seen === undefined) {
      seen = { counts: new Map(), rows: new Map() };
      for (let at = 0; at < column.low.length; at++) {
        if (Number.isNaN(column.low[at]!)) continue;
        const { source } = origin[at]!;
        const key = valueKey(column, at, source);
        seen.counts.set(key, (seen.counts.get(key) ?? 0) + 1);
        seen.rows.set(source, (seen.rows.get(source) ?? 0) + 1);
      }
      known.set(column, seen);
    }
    const { source } = origin[row]!;
    return (seen.counts.get(valueKey(column, row, source)) ?? 1) / (seen.rows.get(source) ?? 1);
  };
}

const valueKey = ({ low, high }: NumericColumn, row: number, source: number): string =>
  `${source} ${low[row]} ${high[row]}`;

import { takeRows } from '../../fragments/subset.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { addTo } from '../../numerics/foundation/lists.ts';
import type { DuplicateDecision } from '../profile/decisions.ts';
import { nameIn } from '../reading/assemble.ts';
import type { Fault, LedgerEntry, RowSetAside, SourceReading } from '../source-reading.ts';

export interface Decided {
  readonly table: FragmentTable;
  readonly ledger: readonly LedgerEntry[];
  readonly faults: readonly Fault[];
  /** Source -> rows that a decision sets aside. */
  readonly setAside: ReadonlyMap<string, readonly RowSetAside[]>;
  /** Pairs of rows of the table that somebody has decided about, as `pairKey` names them. */
  readonly settled: ReadonlySet<string>;
}

/** Names two rows by the places they came from, in either order. */
export function pairKey(table: FragmentTable, a: number, b: number): string {
  const place = (row: number): string => `${table.origin[row]!.source}:${table.origin[row]!.row}`;
  return [place(a), place(b)].sort().join(' ');
}

/**
 * Applies what was decided about rows that may be one find: rows are set aside, joined to one item, or
 * told apart. Where a column names the items, "two finds" leaves them as the column says.
 */
export function applyDecisions(
  table: FragmentTable,
  readings: readonly SourceReading[],
  decisions: readonly DuplicateDecision[],
): Decided {
  const ledger: LedgerEntry[] = [];
  const faults: Fault[] = [];
  const setAside = new Map<string, RowSetAside[]>();
  const settled = new Set<string>();
  const dropped = new Set<number>();
  const item = [...table.item];
  const find = rowFinder(readings);
  for (const decision of decisions) {
    const first = find(decision.first);
    const second = find(decision.second);
    if (first === undefined || second === undefined) {
      faults.push(unknownFind(first === undefined ? decision.first : decision.second));
      continue;
    }
    settled.add(pairKey(table, first, second));
    switch (decision.decision) {
      case 'one-item': {
        const joined = item[second]!;
        for (let row = 0; row < item.length; row++) if (item[row] === joined) item[row] = item[first]!;
        ledger.push(decided(table, second, first, 'counts as a fragment of the same item as'));
        break;
      }
      case 'two-finds':
        if (item[first] === item[second] && nameIn(table.columns.get('item'), second) === '')
          item[second] = table.id[second]!;
        ledger.push(decided(table, second, first, 'is another find than'));
        break;
      default: {
        const gone = decision.decision === 'first-only' ? second : first;
        const kept = gone === second ? first : second;
        if (dropped.has(gone)) break;
        dropped.add(gone);
        drop(table, gone, kept, readings, setAside, ledger);
      }
    }
  }
  const named = { ...table, item };
  if (dropped.size === 0) return { table: named, ledger, faults, setAside, settled };
  const rows = item.map((_, row) => row).filter((row) => !dropped.has(row));
  return { table: takeRows(named, rows), ledger, faults, setAside, settled };
}

/** Rows by the identifier that they have in their own source. */
function rowFinder(
  readings: readonly SourceReading[],
): (find: DuplicateDecision['first']) => number | undefined {
  const places = new Map<string, number>();
  let at = 0;
  for (const reading of readings) {
    for (const id of reading.table.id) places.set(JSON.stringify([reading.name, id]), at++);
  }
  return ({ source, id }) => places.get(JSON.stringify([source, id]));
}

function unknownFind({ source, id }: DuplicateDecision['first']): Fault {
  return {
    what: `a decision about duplicates names the find "${id}", which is not there`,
    where: { file: source },
    mend: 'correct the source or the identifier under "duplicates" in the study, or take the decision out',
  };
}

function decided(table: FragmentTable, row: number, other: number, what: string): LedgerEntry {
  return {
    source: sourceOf(table, row),
    row: table.origin[row]!.row,
    column: '',
    raw: table.id[row]!,
    readAs: table.id[row]!,
    level: 'read',
    rule: 'duplicate-decided',
    why: `By decision it ${what} "${table.id[other]}" in ${sourceOf(table, other)}.`,
  };
}

function drop(
  table: FragmentTable,
  gone: number,
  kept: number,
  readings: readonly SourceReading[],
  setAside: Map<string, RowSetAside[]>,
  ledger: LedgerEntry[],
): void {
  const source = sourceOf(table, gone);
  const { row } = table.origin[gone]!;
  const reason = `the same find as row ${table.origin[kept]!.row} of ${sourceOf(table, kept)}, by decision`;
  addTo(setAside, source, { row, reason });
  const columns = readings.find(({ name }) => name === source)?.columns ?? [];
  for (const [id, column] of table.columns) {
    const raw = column.raw[gone]!;
    if (raw.trim() === '') continue;
    ledger.push({
      source,
      row,
      column: columns.find(({ attributes }) => attributes.includes(id))?.header ?? column.attribute.label,
      raw,
      readAs: '',
      level: 'read',
      rule: 'row-set-aside',
      why: `The row was set aside: ${reason}.`,
    });
  }
}

function sourceOf(table: FragmentTable, row: number): string {
  return table.sources[table.origin[row]!.source]!;
}

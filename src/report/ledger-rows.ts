import type { LedgerEntry } from '../sources/source-reading.ts';

/** The columns of the ledger as CSV. */
export const LEDGER_COLUMNS = ['source', 'row', 'column', 'raw', 'readAs', 'level', 'rule', 'why'] as const;

/** The ledger as rows of text under a header, for CSV; each is made when it is asked for. */
export function* ledgerRows(ledger: Iterable<LedgerEntry>): Generator<readonly string[]> {
  yield LEDGER_COLUMNS;
  for (const entry of ledger)
    yield LEDGER_COLUMNS.map((name) => (name === 'row' ? String(entry.row) : entry[name]));
}

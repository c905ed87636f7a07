import type { LedgerEntry } from '../sources/source-reading.ts';

/** The ledger as rows of text under a header, for CSV. */
export function ledgerRows(ledger: readonly LedgerEntry[]): string[][] {
  const head = ['source', 'row', 'column', 'raw', 'readAs', 'level', 'rule', 'why'];
  return [
    head,
    ...ledger.map(({ source, row, column, raw, readAs, level, rule, why }) => [
      source,
      String(row),
      column,
      raw,
      readAs,
      level,
      rule,
      why,
    ]),
  ];
}

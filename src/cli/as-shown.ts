import type { SourceReading } from '../sources/source-reading.ts';
import { applyRestrictions } from '../study/restriction/restrict.ts';

/**
 * A reading as it is printed or handed on: of rows that their source withholds, no cell stands in the ledger, in the
 * faults or in what was found out about the table. What was read itself stays whole for whoever saves a profile of it.
 */
export function asShown(reading: SourceReading): SourceReading {
  const { table, ledger, faults } = applyRestrictions(
    { table: reading.table, duplicates: [], faults: reading.faults, unmatched: [] },
    reading.ledger,
  );
  return { ...reading, table, ledger, faults };
}

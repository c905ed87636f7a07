import type { Register } from '../../attributes/definition.ts';
import { splitHeader } from '../../attributes/header.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { crossChecks } from '../quality/cross-checks.ts';
import { countedOver } from '../reading/counted-over.ts';
import type { ColumnReading } from '../source-reading.ts';
import { enter, type Ledger } from './ledger.ts';

/** Enters every pair of cells that do not go together, with both of them. */
export function enterCrossChecks(
  table: FragmentTable,
  counted: ReadonlyMap<string, number>,
  register: Register,
  ledger: Ledger,
): void {
  for (const { row, rule, cells, why } of crossChecks(table, register, counted)) {
    const label = (id: string) => register.attributes.get(id)?.label ?? id;
    enter(ledger, {
      row: table.origin[row]!.row,
      column: cells.map(({ attribute }) => label(attribute)).join(', '),
      raw: cells.map(({ raw }) => raw).join(' | '),
      readAs: '',
      level: 'flagged',
      rule,
      why,
    });
  }
}

/** Attribute -> mm over which its column says that it was counted: "rows per 5 cm" is 50. */
export function fieldsCounted(
  columns: readonly Pick<ColumnReading, 'header' | 'unit' | 'attributes'>[],
): ReadonlyMap<string, number> {
  const fields = new Map<string, number>();
  for (const { header, unit, attributes } of columns) {
    const field = countedOver(unit ?? splitHeader(header).unit ?? '');
    if (field !== null) for (const id of attributes) fields.set(id, field);
  }
  return fields;
}

import { read } from '../support.ts';
import type { FieldTable } from './field-table.ts';

/** The attributes that a column may be taken for; null where Thrum has none. */
export const mayBe = (table: FieldTable, header: string) => [table.right[header] ?? null].flat();

/** Columns taken without a question for what they are not. */
export function silentlyWrong(table: FieldTable, accept: boolean): readonly string[] {
  return read(table.text, {}, { accept })
    .columns.filter(
      ({ header, status, attributes }) =>
        status === 'matched' && !attributes.every((id) => mayBe(table, header).includes(id)),
    )
    .map(({ header, attributes }) => `${table.sort}: "${header}" read as ${attributes.join(', ')}`);
}

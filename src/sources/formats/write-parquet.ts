import type { FragmentTable } from '../../fragments/table.ts';
import { type NormalisedField, normalisedFields } from './normalised-table.ts';

/**
 * The normalised table as Parquet, the same fields as in its CSV: numbers as doubles (open ends infinite), row numbers
 * as whole numbers, all else as text; no number is a null. Read as a source it gives the same table back.
 */
export async function writeParquet(table: FragmentTable): Promise<Uint8Array> {
  const { parquetWriteBuffer } = await import('hyparquet-writer');
  const columns = normalisedFields(table);
  const rows = Array.from({ length: table.rows }, (_, row) => row);
  const columnData = columns.map(({ field, text }) => ({
    name: field.name,
    type: TYPES[field.type],
    nullable: field.type !== 'string',
    data: rows.map((row) => storedOf(text(row), field.type)),
  }));
  return new Uint8Array(parquetWriteBuffer({ columnData }));
}

const TYPES = { string: 'STRING', number: 'DOUBLE', integer: 'INT32' } as const;

function storedOf(text: string, type: NormalisedField['type']): string | number | null {
  if (type === 'string') return text;
  if (text === '') return null;
  return Number(text.replace('INF', 'Infinity'));
}

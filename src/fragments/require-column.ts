import type { Register } from '../attributes/definition.ts';
import { InputError } from '../errors.ts';
import type { Column, FragmentTable } from './table.ts';

/** The table's column of this attribute; InputError where no source records it. */
export function requireColumn(table: FragmentTable, id: string, register: Register): Column {
  const column = table.columns.get(id);
  if (column !== undefined) return column;
  const known = register.attributes.get(id);
  if (known === undefined) {
    throw new InputError(
      `there is no attribute "${id}"`,
      {},
      'name one of the default attributes, or define it under "attributes" in the study',
    );
  }
  throw new InputError(
    `no source records the attribute "${known.label}" (${id})`,
    {},
    known.composed === true
      ? 'it is composed of structures: map a column of a source to those, or name another attribute'
      : 'map a column of a source to it in the source profile, or leave it out',
  );
}

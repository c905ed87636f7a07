import { CLOTH } from './field/cloth.ts';
import { CLOTH_ABROAD } from './field/cloth-abroad.ts';
import { COUNTS } from './field/counts.ts';
import { FINDS } from './field/finds.ts';
import { FINDS_ABROAD } from './field/finds-abroad.ts';
import type { FieldTable } from './field-table.ts';

/** Whole small tables in the image of the field’s, in six languages. */
export const FIELD_TABLES: readonly FieldTable[] = [
  ...CLOTH,
  ...CLOTH_ABROAD,
  ...COUNTS,
  ...FINDS,
  ...FINDS_ABROAD,
];

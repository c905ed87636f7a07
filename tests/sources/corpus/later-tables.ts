import type { FieldTable } from './field-table.ts';
import { CLOTH } from './later/cloth.ts';
import { CLOTH_ABROAD } from './later/cloth-abroad.ts';
import { COUNTS } from './later/counts.ts';
import { FINDS } from './later/finds.ts';
import { FINDS_ABROAD } from './later/finds-abroad.ts';
import { HEADERS_CUT_SHORT } from './later/headers-cut-short.ts';

/** A third set: heads over two rows, words that name another thing beside other columns, other spellings of nothing. */
export const LATER_TABLES: readonly FieldTable[] = [
  ...CLOTH,
  ...CLOTH_ABROAD,
  ...FINDS,
  ...FINDS_ABROAD,
  ...COUNTS,
  ...HEADERS_CUT_SHORT,
];

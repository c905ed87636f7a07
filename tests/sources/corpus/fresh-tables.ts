import type { FieldTable } from './field-table.ts';
import { CLOTH } from './fresh/cloth.ts';
import { CLOTH_ABROAD } from './fresh/cloth-abroad.ts';
import { COUNTS } from './fresh/counts.ts';
import { FINDS } from './fresh/finds.ts';

/** A second set of the same sort, of other finds, other hands and other habits. */
export const FRESH_TABLES: readonly FieldTable[] = [...CLOTH, ...CLOTH_ABROAD, ...COUNTS, ...FINDS];

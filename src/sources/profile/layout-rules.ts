import { z } from 'zod';

/** What a profile says of where the table stands in the sheet and how it is laid out. */

const text = z.string();
const rowNumber = z.number().int().min(1);

/** The id of an attribute, or its printed label. */
export const attributeId = z.string().min(1).describe('Id of an attribute, e.g. "rowSpacing"');

export const longForm = z
  .strictObject({
    attribute: text.describe('Header of the column that names what was measured'),
    value: text.describe('Header of the column with the reading'),
    unit: text.optional().describe('Header of the column with the unit'),
    by: z.array(text).optional().describe('Headers that together name the fragment; default: all others'),
  })
  .describe('Several rows a fragment, one reading a row');

export const countsRule = z
  .strictObject({
    attribute: attributeId.optional().describe('Attribute whose kinds the columns count, e.g. "structure"'),
    place: attributeId.default('site').describe('Attribute that the first column names'),
    columns: z
      .array(text)
      .min(1)
      .optional()
      .describe('Headers of the columns that count; default: all of whole or half counts but totals'),
    base: text
      .optional()
      .describe('Header of the column with the number of objects of which the columns give per cent'),
  })
  .describe('A table of counts, one row a place and one column a kind');

export const layoutRule = z.strictObject({
  headerRow: z
    .number()
    .int()
    .min(0)
    .optional()
    .describe('Row of the header (the lower one of two), 1 = first; 0 = there is none'),
  headerRows: z
    .union([z.literal(1), z.literal(2), z.literal(3)])
    .optional()
    .describe('Rows that the header takes up: names; groups or units with them; or all three'),
  lastRow: rowNumber.optional().describe('Last row that belongs to the table'),
  setAside: z.array(rowNumber).optional().describe('Rows that are notes, totals or headings, not fragments'),
  keep: z.array(rowNumber).optional().describe('Rows that are fragments although they look like notes'),
  transposed: z.boolean().optional().describe('One row an attribute, one column a fragment'),
  keyValue: z.boolean().optional().describe('Blocks of "key: value" lines, one block a fragment'),
  longForm: z.union([longForm, z.literal(false)]).optional(),
  counts: countsRule.optional(),
  gather: z.boolean().optional().describe('Rows with the same fragment id are readings of one fragment'),
  raggedRows: z
    .enum(['pad', 'set-aside', 'join-last'])
    .optional()
    .describe(
      'Rows with too few or too many cells: read what is there, set them aside, or join what stands beyond the ' +
        'last column to it; where nothing is said, it is joined where only the last column can hold the sign',
    ),
});

export type LayoutRule = z.infer<typeof layoutRule>;
export type CountsRule = z.infer<typeof countsRule>;
export type LongForm = z.infer<typeof longForm>;

import { z } from 'zod';
import { CELL_STATES } from '../../cells/reading.ts';
import { ITEM_NUMBERS } from '../reading/unique-in-context.ts';
import { repeatedIds } from './decisions.ts';
import { attributeId, layoutRule } from './layout-rules.ts';
import { schemaFault } from './schema-fault.ts';

/**
 * The source profile: JSON beside a table that says how it is to be read. Everything in it is optional;
 * what it leaves out is detected, and a reading gives back a profile with every choice written out.
 */

const text = z.string();
const unit = z.string().describe('Unit of the numbers in the source, e.g. "cm" or "per 5 cm"');
const decimal = z.enum([',', '.']).describe('Decimal mark of the numbers');
const missing = z
  .record(z.string(), z.enum(CELL_STATES))
  .describe('Text of a cell -> what it stands for, e.g. { "-": "absent", "x": "not-observed" }');
const terms = z
  .record(z.string(), z.string())
  .describe('Wording in the source -> id of the term it means, e.g. { "Lindenbast": "lime" }');

const target = z.strictObject({
  attribute: attributeId.nullable().describe('Attribute that this part feeds; null keeps it as text'),
  unit: unit.optional(),
  name: text.optional().describe('Name of the text column that a part without an attribute gets'),
  before: z
    .array(text)
    .optional()
    .describe('Phrases: words of which one must follow the number ("warps per inch")'),
  after: z.array(text).optional().describe('Phrases: words of which one must stand before the number'),
});

const split = z
  .strictObject({
    by: z
      .enum(['systems', 'separator', 'number', 'phrases'])
      .describe(
        'systems: "14 x 12", "Z/S", "8-10 Z / 7 S"; separator: parts between a sign of your own; ' +
          'number: a number and the rest ("21.5K"); phrases: numbers found in prose by the words beside them',
      ),
    separator: text.min(1).optional().describe('For by: separator'),
    align: z
      .enum(['start', 'end'])
      .default('start')
      .describe('With fewer parts than targets: whether the first or the last targets are filled'),
    into: z.array(target).min(1).describe('One target a part, in order'),
  })
  .describe('Parts of one cell that feed several attributes');

export const columnRule = z.strictObject({
  header: z
    .union([text, z.array(text).min(1)])
    .describe('Header of the column, or several wordings of which the first met is taken'),
  optional: z.boolean().optional().describe('No complaint where the file lacks this column'),
  attribute: attributeId
    .nullable()
    .optional()
    .describe('Attribute that the column feeds; null keeps it as text'),
  unit: unit.optional(),
  decimal: decimal.optional(),
  bound: z
    .enum(['low', 'high'])
    .optional()
    .describe('The column holds only the lower or upper end, as in "from" and "to", "min" and "max"'),
  era: z.enum(['BCE', 'CE', 'BP']).optional().describe('How the plain numbers of a date column are counted'),
  missing: missing.optional(),
  terms: terms.optional(),
  split: split.optional(),
  copyDown: z
    .boolean()
    .optional()
    .describe('A blank cell means "as above"; without this only "idem", "ditto" and their like do'),
  ignore: z.boolean().optional().describe('Leave the column out; its cells are listed in the ledger'),
  plyOrder: z
    .enum(['final-first', 'singles-first'])
    .optional()
    .describe('How ply letters all in capitals ("ZS") are to be read; without it they are questioned'),
  oneFacet: z
    .boolean()
    .optional()
    .describe(
      'The cells hold terms of this one attribute; what they say beside it is listed and not read into others',
    ),
  tells: z
    .array(attributeId)
    .optional()
    .describe('As for the whole source, for the descriptions of this column'),
  undecided: z
    .strictObject({
      mayBe: z.array(attributeId).min(1).describe('Attributes that the column may feed, the likeliest first'),
      because: text.describe('What speaks for it'),
    })
    .optional()
    .describe(
      'Written for whoever edits the profile, and not read: nobody has decided what the column holds. Name the ' +
        'attribute ("attribute"), or null to keep the column as text; until then it is asked about',
    ),
  circa: z
    .number()
    .min(0)
    .max(1)
    .optional()
    .describe('How far "c." widens a number, as a share; default 0.1'),
});

export const PIECES = ['largest', 'first', 'unread'] as const;

export const sourceProfile = z.strictObject({
  role: z
    .enum(['fragments', 'assemblages'])
    .default('fragments')
    .describe('One row a fragment, or one row a site, phase or period that is joined to the fragments'),
  encoding: z.enum(['utf-8', 'utf-16le', 'utf-16be', 'windows-1252']).optional(),
  delimiter: z.enum([',', ';', '\t', '|']).optional(),
  decimal: decimal.optional(),
  quotes: z.boolean().optional().describe('false: quotation marks are ordinary characters'),
  layout: layoutRule.default({}),
  columns: z.array(columnRule).default([]),
  constants: z
    .record(attributeId, text)
    .default({})
    .describe('Attribute -> text that holds for every row, e.g. { "site": "Grebe Holm" }'),
  missing: missing.default({}).describe('As in a column, for every column of the source'),
  terms: z.record(attributeId, terms).default({}).describe('Attribute -> translations of its terms'),
  repeatedIds: repeatedIds.optional(),
  itemNumbers: z
    .enum(ITEM_NUMBERS)
    .optional()
    .describe(
      'in-context (so it is where nothing is said): the number of an item is unique within source, site and context, ' +
        'as where numbers restart in every grave; everywhere: one number is one item wherever it stands',
    ),
  tells: z
    .array(z.string().min(1))
    .optional()
    .describe(
      'What the source tells apart: ids of attributes that its descriptions mention wherever there is something to ' +
        'mention, so that silence means "none" or "plain" ("pile", "engagement"); and ids of broader terms whose ' +
        'narrower ones it names wherever it can ("cordage"), so that the broader term is a kind of its own',
    ),
  pieces: z
    .enum(PIECES)
    .optional()
    .describe(
      'Cells that list the sizes of several pieces ("12 x 8; 5 x 3 cm"), where a row is one fragment: the piece ' +
        'of the greatest area is read, the first one, or none; without it the largest is read with a flag',
    ),
  normalised: z
    .union([
      z.literal(false),
      z.strictObject({
        tells: z
          .record(text, z.array(z.string().min(1)))
          .default({})
          .describe('Source that the rows came from -> what it tells apart, as under "tells"'),
      }),
    ])
    .optional()
    .describe(
      'The table is one that was written normalised, and is taken as it stands; found by its fields where ' +
        'nothing is said. false: read it like any other table',
    ),
  joinBy: z
    .array(attributeId)
    .optional()
    .describe(
      'Role assemblages: the attributes that must agree; default site and phase, else site, else period',
    ),
});

export type SourceProfile = z.infer<typeof sourceProfile>;
export type ColumnRule = z.infer<typeof columnRule>;
export type SplitRule = NonNullable<ColumnRule['split']>;
export type SplitTarget = SplitRule['into'][number];
export type ProfileInput = z.input<typeof sourceProfile>;

/**
 * Checks a profile that came out of a file.
 * @throws InputError naming the first part that is wrong.
 */
export function checkProfile(value: unknown, file: string): SourceProfile {
  const parsed = sourceProfile.safeParse(value);
  if (parsed.success) return parsed.data;
  throw schemaFault(parsed.error.issues[0]!, sourceProfile, value, file);
}

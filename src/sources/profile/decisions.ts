import { z } from 'zod';

/** What a person decides about rows that may be one find. */

export const REPEATED_ID = ['one-item', 'two-finds', 'first-only', 'last-only'] as const;

const repeated = z.enum(REPEATED_ID);

/** One source: an identifier in more than one row. Part of the source profile. */
export const repeatedIds = z
  .strictObject({
    all: repeated
      .optional()
      .describe(
        'What rows that share an identifier are, where "ids" does not say; without it they are asked',
      ),
    ids: z
      .record(z.string(), repeated)
      .optional()
      .describe('Identifier -> what its rows are, e.g. { "12": "first-only" }'),
  })
  .describe(
    'An identifier in several rows. one-item: fragments of one item; two-finds: different finds; ' +
      'first-only, last-only: the same find written down again, of which one row is kept',
  );

export type RepeatedIdDecision = (typeof REPEATED_ID)[number];
export type RepeatedIdRule = z.infer<typeof repeatedIds>;

const find = z
  .strictObject({
    source: z.string().min(1).describe('Name of the source, as the study writes it'),
    id: z.string().min(1).describe('Identifier of the fragment in that source'),
  })
  .describe('One row of one source');

export const PAIR_DECISIONS = ['two-finds', 'one-item', 'first-only', 'second-only'] as const;

/** Two sources: rows that may be one find, published twice. Part of the study file. */
export const duplicateDecision = z
  .strictObject({
    first: find,
    second: find,
    decision: z
      .enum(PAIR_DECISIONS)
      .describe(
        'two-finds: different finds, both kept; one-item: fragments of one item, both kept; ' +
          'first-only, second-only: one find published twice, of which one row is kept',
      ),
  })
  .describe('What two rows that look alike are');

export type DuplicateDecision = z.infer<typeof duplicateDecision>;
export type PairDecision = (typeof PAIR_DECISIONS)[number];

import { z } from 'zod';

/** One condition of a selection: its schema, and in words. */

const words = z.array(z.string().min(1)).min(1);

/** One condition of a selection; a fragment must meet all of them. */
export const condition = z
  .strictObject({
    attribute: z
      .string()
      .min(1)
      .meta({ description: 'Id of the attribute, or "assemblage"', refersTo: 'grouping' }),
    in: words.optional().describe('Terms to keep, each with everything below it in the vocabulary'),
    notIn: words.optional().describe('Terms to leave out, each with everything below it'),
    atLeast: z.number().optional().describe('Smallest number to keep, in the unit of the attribute'),
    atMost: z.number().optional().describe('Largest number to keep, in the unit of the attribute'),
    below: z.number().optional().describe('Keep only what is smaller than this number'),
    certainty: z
      .enum(['certain', 'probable', 'possible'])
      .optional()
      .describe(
        'Keep only attributions that are at least this sure; "certain" leaves out every "?" and "cf."',
      ),
    known: z.boolean().optional().describe('true keeps what has a value, false what has none'),
  })
  .describe('Which fragments to keep, by one attribute');

export type Condition = z.infer<typeof condition>;

/** "at least 2 and at most 4"; empty where there is no limit. */
export function describeLimits({ atLeast, atMost, below }: Condition): string {
  const parts = [
    atLeast === undefined ? undefined : `at least ${atLeast}`,
    atMost === undefined ? undefined : `at most ${atMost}`,
    below === undefined ? undefined : `below ${below}`,
  ];
  return parts.filter((part) => part !== undefined).join(' and ');
}

const CERTAINTY_WORDS = {
  certain: 'is certain',
  probable: 'is at least probable',
  possible: 'is at least possible',
};

/** A condition in words, as it stands in reasons and on screens. */
export function describeCondition(one: Condition): string {
  const limits = describeLimits(one);
  const parts = [
    one.in === undefined ? undefined : `is ${one.in.join(' or ')}`,
    one.notIn === undefined ? undefined : `is not ${one.notIn.join(' or ')}`,
    limits === '' ? undefined : limits,
    one.certainty === undefined ? undefined : CERTAINTY_WORDS[one.certainty],
    one.known === undefined ? undefined : one.known ? 'is recorded' : 'is not recorded',
  ].filter((part) => part !== undefined);
  return `${one.attribute} ${parts.join(' and ')}`;
}

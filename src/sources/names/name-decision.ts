import { z } from 'zod';

/** What somebody said of names that look alike; kept with the study. */
export const nameDecision = z
  .strictObject({
    attribute: z
      .string()
      .min(1)
      .meta({ description: 'Attribute whose names these are', refersTo: 'attribute' }),
    name: z.string().min(1).meta({ description: 'The name that is used' }),
    also: z.array(z.string().min(1)).default([]).meta({ description: 'Other spellings of the same' }),
    not: z.array(z.string().min(1)).default([]).meta({ description: 'Names that look alike and are others' }),
    oneOf: z.array(z.string().min(1)).optional().meta({
      description:
        'The name is no name of its own: a record that bears it is of one of these, and it is not known of which',
    }),
  })
  .describe('One name of a place, phase, period, region or person, with its other spellings');

export type NameDecision = z.output<typeof nameDecision>;

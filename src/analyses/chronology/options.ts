import { z } from 'zod';
import { levelOption } from '../shared/level/option.ts';
import { attributeId, groupingId, kindsId } from '../shared/options/shared.ts';

export const chronologyOptions = z.strictObject({
  date: attributeId().default('date').meta({
    title: 'Date',
    description: 'The attribute that holds the span of years of a find.',
  }),
  places: groupingId().default('site').meta({
    title: 'Places',
    description: 'What is set out by itself, and within which a change is looked for again: sites, regions.',
  }),
  of: kindsId().meta({
    title: 'Kinds',
    description: 'The attribute of kinds that may change through time, such as structure or fibre.',
  }),
  phases: groupingId().default('phase').meta({
    title: 'Phases',
    description: 'Groups put in the order of their dates, such as phases; left out where not recorded.',
  }),
  level: levelOption,
  within: z.array(groupingId()).max(6).default(['preservation']).meta({
    title: 'Looked at within',
    description:
      'Groups that could feign a change by differing in date and kind, such as preservation; those not recorded are passed over.',
  }),
  slice: z.int().min(1).exactOptional().meta({
    title: 'Slices of time',
    description: 'Years of a slice; a round number that makes at most twelve where not given.',
  }),
  from: z.int().exactOptional().meta({
    title: 'From',
    description:
      'Astronomical year (0 is 1 BC) from which slices are counted; before the first date where not given.',
  }),
  to: z.int().exactOptional().meta({
    title: 'To',
    description: 'Astronomical year up to which slices are counted; after the last date where not given.',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description: 'Confidence of the limits of counts; a p of at most 1 minus it is called a change.',
  }),
  relabellings: z.int().min(99).max(99_999).default(1999).meta({
    title: 'Relabellings',
    description: 'Random ways to deal the kinds to the dates where not all can be tried.',
  }),
  draws: z.int().min(0).max(999).default(199).meta({
    title: 'Draws within the spans',
    description: 'How often a date is drawn within each span, to see how the answer moves.',
  }),
});

/** Most slices of time: more would be a table nobody reads. */
export const MOST_SLICES = 200;

export type ChronologyOptions = z.output<typeof chronologyOptions>;

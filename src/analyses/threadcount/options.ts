import { z } from 'zod';
import { attributeId, groupingId, kindsId } from '../shared/options/shared.ts';

export const threadcountOptions = z.strictObject({
  x: attributeId().default('density1').meta({
    title: 'Across',
    description: 'The measurement drawn across: the count of system 1 unless another is named.',
  }),
  y: attributeId().default('density2').meta({
    title: 'Up',
    description: 'The measurement drawn up: the count of system 2 unless another is named.',
  }),
  by: kindsId().meta({
    title: 'Symbols by',
    description: 'What the symbols stand for, and within which groups the two are looked at again.',
  }),
  within: z.array(groupingId()).max(6).default(['preservation']).meta({
    title: 'Looked at within',
    description:
      'Groups that could feign a relation by differing in both measurements, such as charring; those not recorded are passed over.',
  }),
  find: z.record(attributeId(), z.string()).default({}).meta({
    title: 'The find',
    description: 'A find to mark among the others, as texts: {"density1": "12", "density2": "9-10"}',
  }),
  scale: z.enum(['log', 'plain']).default('log').meta({
    title: 'Axes',
    description: 'log: logarithmic where all readings are above 0; plain: equal differences',
  }),
  contoursFrom: z.int().min(30).max(100_000).default(150).meta({
    title: 'Contours from',
    description: 'Points from which on lines are drawn round the densest half and the densest nine tenths.',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description: 'Confidence of limits; a p of at most 1 minus it is called a relation.',
  }),
  draws: z.int().min(0).max(999).default(199).meta({
    title: 'Draws within the ranges',
    description: 'How often values are drawn within the ranges of the readings, to see how the answer moves.',
  }),
});

export type ThreadcountOptions = z.output<typeof threadcountOptions>;

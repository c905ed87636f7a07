import { z } from 'zod';
import { levelOption } from '../shared/level/option.ts';
import { comparisonOptions } from '../shared/options/comparison.ts';
import { attributeId, groupingId } from '../shared/options/shared.ts';

const { of: _comparedByDefault, ...together } = comparisonOptions;

export const contrastOptions = z.strictObject({
  of: z.array(attributeId()).min(1).meta({
    title: 'Attributes',
    description: 'Numbers or grades to contrast; of several, each on its own and all together.',
  }),
  by: groupingId().meta({
    title: 'Groups',
    description: 'The attribute of kinds whose groups are set against each other.',
  }),
  level: levelOption,
  means: z.boolean().default(false).meta({
    title: 'Means as well',
    description:
      'Analysis of variance, ordinary and by Welch, beside the rank tests; on logarithms where ratios matter.',
  }),
  trend: z.boolean().default(false).meta({
    title: 'Trend over time',
    description:
      'Asks whether values rise or fall with the recorded dates, whose spans are drawn again and again.',
  }),
  within: z.number().gt(0).lt(1).default(0.2).meta({
    title: 'Alike within',
    description: 'Share within which two groups count as alike: 0.2 is "within 20 %", factors 1/1.2 to 1.2.',
  }),
  adjust: z.enum(['holm', 'benjamini-hochberg']).default('holm').meta({
    title: 'Many tests',
    description:
      'How p values of one family are adjusted: holm guards against any false alarm, benjamini-hochberg limits their share.',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description: 'Confidence of intervals; a p of at most 1 minus it is called a difference.',
  }),
  power: z.number().gt(0.5).lt(1).default(0.8).meta({
    title: 'Power',
    description: 'Chance of being found that the smallest detectable difference is to have.',
  }),
  relabellings: z.int().min(99).max(99_999).default(4999).meta({
    title: 'Relabellings',
    description: 'Random relabellings of items where not all can be tried.',
  }),
  resamples: z.int().min(199).max(19_999).default(1999).meta({
    title: 'Resamples',
    description: 'Draws of items for each interval; fewer a pair where there are many pairs.',
  }),
  ...together,
});

export type ContrastOptions = z.output<typeof contrastOptions>;

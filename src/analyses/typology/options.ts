import { z } from 'zod';
import { levelOption } from '../shared/level/option.ts';
import { comparisonOptions } from '../shared/options/comparison.ts';
import { fileName, groupingId } from '../shared/options/shared.ts';

export const typologyOptions = z.strictObject({
  rules: fileName().meta({ title: 'Rule file', description: 'JSON file with the types and their rules' }),
  rivals: z.array(fileName()).default([]).meta({
    title: 'Rivals',
    description: 'Rule files of other typologies, to be set side by side with the first',
  }),
  fold: groupingId().default('assemblage').meta({
    title: 'Left out together',
    description:
      'Attribute whose labels are left out in turn, such as site: types are predicted for the records of each from all the others',
  }),
  against: z.array(groupingId()).default(['site', 'period', 'phase', 'fibre', 'preservation']).meta({
    title: 'Set against',
    description: 'Attributes that the types may go with; those not recorded are passed over',
  }),
  level: levelOption,
  within: groupingId().default('preservation').meta({
    title: 'Like with like',
    description:
      'The types are compared once more within each kind of this attribute, which could pass for them',
  }),
  neighbours: z.number().int().min(1).max(50).default(5).meta({
    title: 'Neighbours',
    description: 'How many nearest records predict a type',
  }),
  resamples: z.number().int().min(19).max(9999).default(499).meta({
    title: 'Resamples',
    description: 'Draws of items for the interval of a threshold',
  }),
  relabellings: z.number().int().min(99).max(99_999).default(999).meta({
    title: 'Relabellings',
    description: 'Shuffles of the types against which separation and prediction are held',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description: 'Confidence of intervals; a p of at most 1 minus it tells apart',
  }),
  ...comparisonOptions,
});

export type TypologyOptions = z.output<typeof typologyOptions>;

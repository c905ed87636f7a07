import { z } from 'zod';
import { condition } from '../../fragments/select-condition.ts';
import { levelOption } from '../shared/level/option.ts';
import { comparisonOptions, skewedOption } from '../shared/options/comparison.ts';
import { attributeId, groupingId } from '../shared/options/shared.ts';

/** Ways to spread records out on a few axes. The texts are shown wherever a method is chosen. */
export const METHODS = {
  pcoa: 'principal coordinates of the block dissimilarity; takes every kind of attribute, and gaps',
  pca: 'principal components of numbers',
  mca: 'multiple correspondence analysis of kinds',
  mixed: 'factor analysis of mixed data: numbers and kinds together',
  ca: 'correspondence analysis of a table of counts, such as structures by site',
} as const;
export type OrdinationMethod = keyof typeof METHODS;

/** The first words of a method's text: its name. */
export function methodName(method: OrdinationMethod): string {
  return METHODS[method].split(';')[0];
}

const methods = Object.keys(METHODS) as [OrdinationMethod, ...OrdinationMethod[]];

export const ordinationOptions = z.strictObject({
  method: z
    .enum(methods)
    .default('pcoa')
    .meta({
      title: 'Method',
      description: Object.entries(METHODS)
        .map(([id, text]) => `${id}: ${text}`)
        .join('; '),
    }),
  ...comparisonOptions,
  skewed: skewedOption,
  axes: z.int().min(2).max(10).default(3).meta({
    title: 'Axes',
    description: 'How many are given; fewer when there are no more',
  }),
  by: groupingId().exactOptional().meta({
    title: 'Symbols show',
    description: 'An attribute whose labels are shown by symbol, with the centre of each',
  }),
  correction: z.enum(['none', 'square-root', 'lingoes', 'cailliez']).default('none').meta({
    title: 'Correction',
    description: 'How dissimilarities are made Euclidean, if they are to be (pcoa)',
  }),
  scale: z.boolean().default(true).meta({
    title: 'Equal say',
    description: 'Divide each attribute by its standard deviation (pca)',
  }),
  gaps: z.enum(['set-aside', 'mean']).default('set-aside').meta({
    title: 'Gaps',
    description:
      'Records with a gap are set aside, or a missing number takes the mean of the attribute and is counted (pca, mca, mixed)',
  }),
  rows: groupingId().exactOptional().meta({
    title: 'Rows',
    description: 'ca: the attribute whose labels are the rows, such as site',
  }),
  columns: groupingId().exactOptional().meta({
    title: 'Columns',
    description: 'ca: the attribute whose labels are the columns, such as structure',
  }),
  supplementary: z.array(z.string()).default([]).meta({
    title: 'Supplementary',
    description: 'ca: labels of rows or columns that are shown but have no say',
  }),
  supplementaryRecords: z.array(condition).default([]).meta({
    title: 'Supplementary records',
    description:
      'pcoa, pca, mca, mixed: conditions; records that meet all of them are placed on the axes but have no say in them, such as those of one site',
  }),
  supplementaryAttributes: z.array(attributeId()).default([]).meta({
    title: 'Supplementary attributes',
    description: 'pcoa, pca, mca, mixed: attributes that are laid over the axes but have no say in them',
  }),
  level: levelOption,
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description: 'Confidence of the ellipses around centres',
  }),
  resamples: z.int().min(0).max(2000).default(200).meta({
    title: 'Resamples',
    description: 'How often records are drawn anew for the ellipse around each centre; 0 leaves it out',
  }),
});

export type OrdinationOptions = z.output<typeof ordinationOptions>;

import { z } from 'zod';
import type { ComparisonSettings } from '../../../fragments/comparison/comparison.ts';
import { attributeId } from './shared.ts';

/** Options of every analysis that rests on how unlike records are. Spread them into its schema. */

const weight = () => z.number().min(0).exactOptional();

export const comparisonOptions = {
  of: z.array(attributeId()).default([]).meta({
    title: 'Attributes',
    description:
      'Attributes to compare; none named = all of structure, spacing and fibre that are recorded, a computed one (a row gap, a balance) where some record has it and not what it follows from. It is compared only of two records that do not both have that, so that nothing counts twice',
  }),
  weights: z
    .strictObject({
      structure: weight(),
      spacing: weight(),
      fibre: weight(),
      find: weight(),
      context: weight(),
    })
    .default({})
    .meta({
      title: 'Weights of the blocks',
      description:
        'How much each block counts: {"spacing": 2, "fibre": 0}; 1 where not named, 0 leaves it out',
    }),
  attributeWeights: z.record(attributeId(), z.number().min(0)).default({}).meta({
    title: 'Weights of attributes',
    description: 'How much single attributes count within their block: {"rowSpacing": 2}; 1 where not named',
  }),
  mode: z.enum(['blocks', 'plain']).default('blocks').meta({
    title: 'Dissimilarity',
    description: 'blocks: mean of the block means; plain: the coefficient of Gower 1971 over all attributes',
  }),
  intervals: z.enum(['midpoint', 'expected', 'least', 'greatest']).default('midpoint').meta({
    title: 'Ranges',
    description:
      'How far two ranges are apart: by midpoints, by the mean distance of values within them, or the least or greatest possible',
  }),
  broad: z.enum(['expected', 'place', 'least', 'greatest']).default('expected').meta({
    title: 'Broad terms',
    description:
      'How far a term that says less than a kind is from others ("tree bast" beside lime bast). expected: the mean over its kinds, as often as they are recorded; place: where it stands in the tree; least, greatest: as its kinds allow',
  }),
  ordinal: z.enum(['ranks', 'grades']).default('ranks').meta({
    title: 'Grades',
    description: 'ranks: by the ranks of the records (Podani 1999); grades: as equal steps',
  }),
  scaling: z.enum(['range', 'quartiles']).default('range').meta({
    title: 'Scaling',
    description:
      'Difference that counts as 1: the range of the values, or twice their interquartile range (robust against outliers)',
  }),
  minimumOverlap: z.number().min(0).max(1).default(0).meta({
    title: 'Least overlap',
    description: 'Share of the weight that two records must both have; a pair below it is unknown',
  }),
} as const;

/** For analyses that would take the tail of a skewed attribute for a group. */
export const skewedOption = z.enum(['log', 'plain']).default('log').meta({
  title: 'Skewed attributes',
  description:
    'Ratios whose definition names no scale. log: by logarithm where the readings are spread like a lognormal, and said; plain: as measured',
});

/** The part of an analysis's options that says how to compare. */
export type ComparisonOptions = z.output<z.ZodObject<typeof comparisonOptions>>;

/** The same as the comparison takes it. */
export function comparisonSettings(
  options: ComparisonOptions & Pick<ComparisonSettings, 'skewed'>,
): ComparisonSettings {
  const { of, weights, attributeWeights, mode, intervals, broad, ordinal, scaling, minimumOverlap, skewed } =
    options;
  return {
    ...(skewed === undefined ? {} : { skewed }),
    of,
    weights,
    attributeWeights,
    mode,
    intervals,
    broad,
    ordinal,
    scaling,
    minimumOverlap,
  };
}

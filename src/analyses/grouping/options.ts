import { z } from 'zod';
import { comparisonOptions, skewedOption } from '../shared/options/comparison.ts';
import { groupingId } from '../shared/options/shared.ts';

/** How groups can be made. The texts are shown wherever a method is chosen. */
export const METHODS = {
  medoids: 'each group around the fragment that stands best for it (k-medoids)',
  kmeans: 'each group around its mean (k-means); complete numbers only, round groups',
  density: 'dense regions, with records in none (HDBSCAN); the number of groups follows from the data',
  average: 'tree by mean dissimilarity (UPGMA)',
  complete: 'tree by greatest dissimilarity',
  single: 'tree by least dissimilarity; finds chains',
  mcquitty: 'tree by the mean of the two joined parts (WPGMA)',
  ward: 'tree by least growth of the squares within groups, from plain dissimilarities',
  'ward-squared': 'the same recurrence without squaring, for dissimilarities that are squares already',
  centroid: 'tree by distance of centroids; for Euclidean distances, heights may fall',
  median: 'tree by distance of midpoints; for Euclidean distances, heights may fall',
} as const;
export type GroupingMethod = keyof typeof METHODS;

const methods = Object.keys(METHODS) as [GroupingMethod, ...GroupingMethod[]];

export const groupingOptions = z.strictObject({
  ...comparisonOptions,
  skewed: skewedOption,
  method: z
    .enum(methods)
    .default('medoids')
    .meta({
      title: 'Method',
      description: Object.entries(METHODS)
        .map(([id, text]) => `${id}: ${text}`)
        .join('; '),
    }),
  k: z
    .union([z.int().min(2).max(50), z.literal('choose')])
    .default('choose')
    .meta({
      title: 'Number of groups',
      description: '"choose" takes the number with the greatest mean silhouette width (Rousseeuw 1987)',
    }),
  mostGroups: z.int().min(2).max(20).default(8).meta({
    title: 'Most groups to try',
    description: 'With "choose", every number from 2 to this one is tried',
  }),
  smallestGroup: z.int().min(2).default(5).meta({
    title: 'Smallest group',
    description: 'By density: fewest records that make a group',
  }),
  neighbours: z.int().min(1).default(5).meta({
    title: 'Neighbours',
    description: 'By density: records, itself included, within whose reach a record is dense',
  }),
  starts: z.int().min(1).max(1000).default(100).meta({
    title: 'Most starts',
    description:
      'By k-means: seeded starts are tried until the best is met twice, or this many are spent; the answer says which',
  }),
  resamples: z.int().min(0).max(2000).default(100).meta({
    title: 'Resamples for stability',
    description: 'How often items are drawn anew to see whether each group is found again; 0 leaves it out',
  }),
  permutations: z.int().min(0).max(9999).default(39).meta({
    title: 'Tables without groups',
    description:
      'How many shuffled tables, even clouds and single heaps each are grouped to see whether noise would give groups as good; 0 leaves them out',
  }),
  variants: z.boolean().default(true).meta({
    title: 'Other ways',
    description:
      'Whether the same records are also grouped by other methods, weights and numbers of groups, and without each assemblage in turn',
  }),
  fuzziness: z.number().gt(1).max(10).default(2).meta({
    title: 'Fuzziness',
    description:
      'How evenly a record is shared out among the groups in the table of graded membership: towards 1 all to the nearest medoid, large values evenly',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description:
      'Groups are claimed when at most 1 minus this of the tables without groups give groups as good',
  }),
  compareWith: groupingId().exactOptional().meta({
    title: 'Compare with',
    description: 'A recorded classification to set the groups against',
  }),
});

export type GroupingOptions = z.output<typeof groupingOptions>;

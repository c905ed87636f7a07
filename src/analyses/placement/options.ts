import { z } from 'zod';
import { comparisonOptions } from '../shared/options/comparison.ts';
import { attributeId, groupingId } from '../shared/options/shared.ts';

/** Levels of certainty at which sets of labels are given. */
export const LEVELS = [0.8, 0.9, 0.95] as const;

export const placementOptions = z.strictObject({
  find: z.record(attributeId(), z.string()).default({}).meta({
    title: 'The find',
    description: 'What is known of it, as texts: {"rowSpacing": "c. 32 mm", "structure": "open twining"}',
  }),
  ...comparisonOptions,
  findIs: z.enum(['fragment', 'item']).default('fragment').meta({
    title: 'The find is',
    description:
      'fragment: comparanda stand by one fragment of each item, so that like is judged with like; item: by their items as a whole',
  }),
  findFrom: z.enum(['another site', 'a site of the study']).default('another site').meta({
    title: 'The find may come from',
    description:
      'another site: labels that several sites share (region, period, use) are judged by whole sites, one record of each; a site of the study: by their records',
  }),
  labels: z.array(groupingId()).max(6).default([]).meta({
    title: 'Labels to judge',
    description:
      'Attributes whose labels are judged; none named = site, region and period (or phase), as far as recorded. A recorded use is judged only when named, from records whose use rests on the piece itself (shape, seam, place on a body, wear)',
  }),
  nearest: z.int().min(1).max(50).default(8).meta({
    title: 'Nearest comparanda',
    description: 'How many are listed',
  }),
  neighbours: z.int().min(1).max(25).default(3).meta({
    title: 'Neighbours behind a p value',
    description: 'Strangeness is the mean dissimilarity to this many nearest records of a label',
  }),
  level: z.number().min(0.5).max(0.99).default(0.9).meta({
    title: 'Level',
    description: 'Certainty at which the sentence speaks, and at which changes are looked for',
  }),
  noneLevel: z.number().min(0.5).max(0.99).default(0.95).meta({
    title: 'Level of "none of these"',
    description:
      'Certainty at which every label must be excluded before the find is said to be unlike all; stricter than the level, because it says more',
  }),
  calibration: z.int().min(20).max(2000).default(300).meta({
    title: 'Records behind a label',
    description: 'Of a label with more records, this many are drawn by the seed to judge by',
  }),
  draws: z.int().min(0).max(500).default(60).meta({
    title: 'Draws within the ranges',
    description: 'How often values are drawn within the ranges of the find, to see how the answer moves',
  }),
  moves: z.boolean().default(true).meta({
    title: 'How it moves',
    description: 'Also under other weights, and with each assemblage left out',
  }),
  next: z.boolean().default(true).meta({
    title: 'What to measure next',
    description: 'For each missing attribute, how far it is expected to shrink the sets',
  }),
  map: z.boolean().default(true).meta({
    title: 'Map',
    description: 'Places the find among its comparanda in principal coordinates',
  }),
});

export type PlacementOptions = z.output<typeof placementOptions>;

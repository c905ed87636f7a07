import { z } from 'zod';
import { levelOption } from '../shared/level/option.ts';
import { attributeId, groupingId } from '../shared/options/shared.ts';

export const summaryOptions = z.strictObject({
  of: z.array(attributeId()).min(1).meta({
    title: 'Attributes',
    description: 'Attributes to describe: numbers by centre and spread, kinds by counts and shares.',
  }),
  by: z.array(groupingId()).max(2).default([]).meta({
    title: 'Grouped by',
    description: 'None, one or two attributes of kinds; each group is described on its own.',
  }),
  level: levelOption,
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence of limits',
    description: 'Confidence of the limits around shares, means and medians.',
  }),
  limits: z.enum(['wilson', 'exact', 'jeffreys']).default('wilson').meta({
    title: 'Limits of shares',
    description:
      'wilson: score limits; exact: binomial limits that cover at least the confidence; jeffreys: between the two',
  }),
  resamples: z.int().min(0).max(19_999).default(999).meta({
    title: 'Resamples',
    description: 'Draws of items for the limits of mean and median; 0 leaves them out.',
  }),
  timeBins: z
    .strictObject({ from: z.int(), to: z.int(), width: z.int().min(1) })
    .exactOptional()
    .meta({
      title: 'Bins of time',
      description:
        'Astronomical years (0 is 1 BC): {"from": -400, "to": 400, "width": 100}. Each record is shared out evenly over its span of years.',
    }),
});

/** Most bins of time: more would be a table nobody reads. */
export const MOST_BINS = 200;

export type SummaryOptions = z.output<typeof summaryOptions>;

import { z } from 'zod';
import { attributeId, groupingId } from '../shared-options.ts';

export const summaryOptions = z.strictObject({
  of: z.array(attributeId()).min(1).meta({
    title: 'Attributes',
    description: 'Attributes to describe: numbers by centre and spread, kinds by counts and shares.',
  }),
  by: z.array(groupingId()).max(2).default([]).meta({
    title: 'Grouped by',
    description: 'None, one or two attributes of kinds; each group is described on its own.',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence of limits',
    description: 'Confidence of the limits around shares.',
  }),
});

export type SummaryOptions = z.output<typeof summaryOptions>;

import { z } from 'zod';
import { levelOption } from '../shared/level/option.ts';
import { mixturesOption } from '../shared/options/mixtures.ts';
import { groupingId } from '../shared/options/shared.ts';

export const crosstabOptions = z.strictObject({
  rows: groupingId().meta({
    title: 'Rows',
    description: 'Attribute of kinds whose values make the rows, such as site.',
  }),
  columns: groupingId().meta({
    title: 'Columns',
    description: 'Attribute of kinds whose values make the columns, such as structure.',
  }),
  level: levelOption,
  mixtures: mixturesOption,
  test: z.enum(['choose', 'chi-square', 'exact']).default('choose').meta({
    title: 'Test',
    description:
      'choose: chi-square where the expected counts carry it, otherwise the exact test; items with several fragments are always dealt whole',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description:
      "Confidence of the interval of Cramér's V; a p of at most 1 minus it is called an association.",
  }),
  relabellings: z.int().min(99).max(99_999).default(9999).meta({
    title: 'Random tables',
    description: 'Random tables or relabellings of items where not all can be tried.',
  }),
  resamples: z.int().min(199).max(19_999).default(1999).meta({
    title: 'Resamples',
    description: 'Deals of items for the interval, where items have several fragments; 499 at most.',
  }),
});

export type CrosstabOptions = z.output<typeof crosstabOptions>;

import { z } from 'zod';
import { levelOption } from '../shared/level/option.ts';
import { coefficientOption } from '../shared/options/coefficient.ts';
import { mixturesOption } from '../shared/options/mixtures.ts';
import { attributeId, groupingId } from '../shared/options/shared.ts';

export const similarityOptions = z.strictObject({
  assemblages: groupingId().default('assemblage').meta({
    title: 'Assemblages',
    description: 'What is compared: sites, phases, or "assemblage" for site and phase as one.',
  }),
  of: groupingId().meta({
    title: 'Kinds',
    description: 'The attribute of kinds in whose counts they are compared, such as structure or fibre.',
  }),
  level: levelOption,
  mixtures: mixturesOption,
  coefficient: coefficientOption,
  supplementary: z.array(z.string().min(1)).default([]).meta({
    title: 'Placed afterwards',
    description:
      'Labels of assemblages that take no part in finding the axes and are placed on them afterwards.',
  }),
  newSites: z
    .array(
      z.strictObject({
        label: z.string().min(1).max(80),
        counts: z.record(z.string(), z.int().min(0).max(5000)),
      }),
    )
    .max(4)
    .default([])
    .meta({
      title: 'New sites',
      description:
        'Assemblages known by their counts alone, placed on the axes afterwards and compared with all: [{"label": "Trench 9", "counts": {"tabby": 7, "twill": 2}}]',
    }),
  places: z.tuple([attributeId(), attributeId()]).exactOptional().meta({
    title: 'Places',
    description:
      'Two attributes that say where an assemblage lies (east, north); latitude and longitude where not named.',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description: 'Confidence of intervals; a p of at most 1 minus it is called a relation.',
  }),
  relabellings: z.int().min(99).max(99_999).default(9999).meta({
    title: 'Relabellings',
    description:
      'Random orders of the assemblages, and deals of the items of a pair (1999 at most), where not all can be tried.',
  }),
  resamples: z.int().min(199).max(19_999).default(999).meta({
    title: 'Resamples',
    description: 'Draws of items within the assemblages for each interval.',
  }),
});

export type SimilarityOptions = z.output<typeof similarityOptions>;

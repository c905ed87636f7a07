import { z } from 'zod';
import { attributeId, fileName } from '../shared/options/shared.ts';
import { stepText } from './reading/claim.ts';

export const claimsOptions = z.strictObject({
  file: fileName().exactOptional().meta({
    title: 'Claims',
    description:
      'CSV with one printed figure a row; "thrum check --template" prints one to fill in. May be left out where printed tables are given.',
  }),
  tables: z
    .array(
      z.strictObject({
        file: fileName().meta({ description: 'The table as it is printed, as CSV with labels.' }),
        rows: attributeId().exactOptional().meta({ description: 'Attribute whose terms label the rows.' }),
        columns: attributeId().exactOptional().meta({
          description: 'Attribute whose terms head the columns, of a table of counts or percentages.',
        }),
        attribute: attributeId().exactOptional().meta({
          description: 'Attribute that a table of means describes.',
        }),
        step: stepText().exactOptional().meta({
          description: 'Grid of the single readings of a table of means: "1", "0.5", "0.1".',
        }),
        roles: z.record(z.string(), z.string()).exactOptional().meta({
          description:
            'What columns hold, by their head, where the reading is to be corrected: "n", "count", "share", "mean", "sd", "not part" …',
        }),
      }),
    )
    .default([])
    .meta({
      title: 'Printed tables',
      description:
        'Whole tables of counts, percentages or means; claims refer to one by its file name without ending, as their set.',
    }),
  paper: z.string().exactOptional().meta({
    title: 'Paper',
    description: 'Title and source of the paper that the figures are from; heads the letter and the page.',
  }),
  data: z.boolean().default(true).meta({
    title: 'Against the data',
    description:
      'Also recompute each figure from the data of the study; false holds the figures against each other only.',
  }),
});

export type ClaimsOptions = z.output<typeof claimsOptions>;

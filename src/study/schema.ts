import { z } from 'zod';
import { ANALYSES } from '../analyses/register.ts';
import { KIND_LANGUAGES } from '../attributes/naming/languages.ts';
import { condition } from '../fragments/select-condition.ts';
import { nameDecision } from '../sources/names/name-decision.ts';
import { duplicateDecision } from '../sources/profile/decisions.ts';
import { addedTerm, attributeDefinition, identifier } from './schema-parts/added.ts';
import { facetLimits } from './schema-parts/facet-limits.ts';

/** The study file: the whole state of a piece of work, saved by the app, run by the command line. */

const studySource = z.strictObject({
  file: z.string().min(1).meta({ description: 'Table, relative to the study file' }),
  profile: z
    .string()
    .min(1)
    .exactOptional()
    .meta({ description: 'Source profile, relative to the study file' }),
  sheet: z.string().min(1).exactOptional().meta({
    description: 'Sheet of an .xlsx workbook; needed where more than one holds anything',
  }),
  role: z.enum(['fragments', 'assemblages']).exactOptional().meta({
    description:
      'assemblages: one row a site or phase, joined to the fragments; as the profile says if left out',
  }),
  citation: z.string().min(1).exactOptional().meta({
    description: 'How the table is to be cited: author, year, title, place',
  }),
  licence: z.string().min(1).exactOptional().meta({
    description: 'Under which licence it may be used, such as "CC BY 4.0"',
  }),
});

const entryHead = {
  id: identifier.meta({ description: 'Name of the analysis in the results; unique in the study' }),
  title: z.string().exactOptional().meta({ description: 'Heading in reports' }),
  note: z.string().exactOptional().meta({ description: 'A remark on the finding, shown with it' }),
};

const entries = ANALYSES.map((analysis) =>
  analysis.options
    .safeExtend({ ...entryHead, kind: z.literal(analysis.kind) })
    .meta({ description: analysis.question }),
);

/** One analysis asked of the study; the options are those of its kind. */
const analysisEntry = z.discriminatedUnion('kind', entries as [(typeof entries)[number], ...typeof entries]);

export const study = z
  .strictObject({
    $schema: z.string().exactOptional(),
    title: z.string().min(1),
    seed: z.int().min(0).max(0xffffffff).default(1).meta({
      description: 'All chance of the study comes from this number',
    }),
    unit: z.enum(['item', 'fragment']).default('item').meta({
      description:
        'item: the fragments of one original object count as one record, once "witness" says what names it',
    }),
    witness: z
      .strictObject({
        is: z.enum(['column', 'row']).meta({
          description:
            'column: the item column names the object that a fragment is of; row: each row is an object',
        }),
        noun: z
          .string()
          .min(1)
          .max(40)
          .default('item')
          .meta({ description: 'What one is called: vessel, grave' }),
        plural: z
          .string()
          .min(1)
          .max(40)
          .exactOptional()
          .meta({ description: 'Where it is not the noun with an s' }),
      })
      .exactOptional()
      .meta({
        description:
          'What counts as one, said by somebody who knows the tables; left out, every fragment counts for itself',
      }),
    note: z.string().exactOptional(),
    authors: z.string().min(1).exactOptional().meta({
      description: 'Who answers for the study, as they are to be cited',
    }),
    brief: z.array(identifier).min(1).max(5).exactOptional().meta({
      description:
        'The analyses whose answers stand in the brief of two pages; the first five that can be shown if left out',
    }),
    subject: z.string().min(1).exactOptional().meta({
      description:
        'What the finds are, such as "textiles" or "pottery"; outside textiles short and common headers name nothing of cloth',
    }),
    attributes: z.array(attributeDefinition).default([]),
    terms: z.array(addedTerm).default([]),
    sources: z.array(studySource).meta({
      description: 'The tables; may be empty only where all that is asked is about printed figures',
    }),
    duplicates: z.array(duplicateDecision).default([]).meta({
      description: 'What was decided about rows of two sources that may be one find',
    }),
    names: z.array(nameDecision).default([]).meta({
      description: 'Places, phases and people that the tables spell in several ways',
    }),
    shrinkage: z
      .strictObject({
        preservation: z.array(z.string().min(1)).min(1).meta({
          description: 'Modes of preservation that shrank the pieces, such as charred',
        }),
        upTo: z.number().gt(0).max(1).meta({
          description: 'By how much at most: 0.2 says that a piece of 100 mm may have been 120 mm',
        }),
      })
      .exactOptional()
      .meta({
        description:
          'A shrinkage that verdicts on lengths and counts are asked again with; no reading is ever changed by it',
      }),
    coarsenPlaces: z.number().min(0.1).max(1000).exactOptional().meta({
      description:
        'Kilometres of the grid to which all coordinates are coarsened before anything is handed on; places marked as unguarded are without it',
    }),
    limits: facetLimits.exactOptional(),
    marks: z
      .record(z.string().min(1), z.array(z.string().min(1)).max(40))
      .default({})
      .meta({
        description:
          'Orders of labels for symbols and colours, the first label having the first symbol: {"site": ["Trench 9"]}; the others follow by their number of fragments',
      }),
    kind: z
      .array(z.string().min(1))
      .min(1)
      .exactOptional()
      .meta({
        description:
          'What the kind of a fabric is composed of: "structure" and facets of it by name or id (openness, slant, ' +
          'strands, face, grouping, pattern, engagement, orientation, wrapping, pile, pileFixing, supplementary); ' +
          'if left out, those that every place has recorded. A name ends at the first facet that a find lacks; those that most finds have go first',
      }),
    kindLanguage: z.enum(KIND_LANGUAGES).default('en').meta({
      description:
        'Language in which kinds of fabric are shown; they are counted and asked for by their English names',
    }),
    select: z.array(condition).default([]).meta({ description: 'Conditions that a fragment must all meet' }),
    analyses: z.array(analysisEntry).default([]),
  })
  .refine(({ sources, analyses }) => sources.length > 0 || onlyClaims(analyses), {
    path: ['sources'],
    message: 'no table is named',
    params: { mend: 'name at least one, or ask about printed figures alone' },
  })
  .meta({ id: 'study', title: 'Study file' });

/** Printed figures can be held against each other without any data. */
function onlyClaims(analyses: readonly Readonly<Record<string, unknown>>[]): boolean {
  return analyses.length > 0 && analyses.every(({ kind }) => kind === 'claims');
}

export type Study = z.output<typeof study>;
export type StudyInput = z.input<typeof study>;

/** What every entry of `analyses` holds beside the options of its kind. */
export interface AnalysisEntry {
  readonly id: string;
  readonly kind: string;
  readonly title?: string;
  readonly note?: string;
  readonly [option: string]: unknown;
}

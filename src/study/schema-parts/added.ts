import { z } from 'zod';

/** What a study adds to the register: attributes, and terms of vocabularies. */

const synonyms = z
  .partialRecord(z.enum(['en', 'de', 'fr', 'it', 'es', 'da', 'no', 'la']), z.array(z.string().min(1)))
  .meta({ description: 'Wordings by language under which a header or a cell may name it' });

const bounds = z.tuple([z.number(), z.number()]);

export const identifier = z
  .string()
  .regex(/^[a-zA-Z][a-zA-Z0-9-]*$/, 'must start with a letter and hold letters, digits and hyphens only');

export const attributeDefinition = z
  .strictObject({
    id: identifier.meta({ description: 'Unique name, in camelCase' }),
    label: z.string().min(1).meta({ description: 'Name shown to people' }),
    block: z.enum(['structure', 'spacing', 'fibre', 'find', 'context']).meta({
      description: 'structure, spacing and fibre are weighed in a dissimilarity; find and context describe',
    }),
    scale: z.enum(['ratio', 'interval', 'ordinal', 'nominal', 'binary', 'presence', 'text']),
    unit: z.string().exactOptional().meta({ description: 'Unit of the stored numbers, such as "g"' }),
    vocabulary: z.string().exactOptional().meta({ description: 'Vocabulary whose terms it takes' }),
    levels: z.array(z.string()).exactOptional().meta({ description: 'Grades, lowest first' }),
    plausible: z
      .strictObject({ usual: bounds.exactOptional(), limit: bounds.exactOptional() })
      .exactOptional()
      .meta({ description: 'Bounds that flag a reading; they never exclude it' }),
    appliesTo: z
      .array(z.string())
      .exactOptional()
      .meta({ description: 'Structures that it makes sense for' }),
    transform: z.literal('log').exactOptional().meta({ description: 'log: ratios matter' }),
    synonyms: synonyms.exactOptional(),
    definition: z.string().exactOptional().meta({ description: 'How it is measured' }),
    source: z.string().default('defined by the study'),
  })
  .meta({ description: 'An attribute that the study adds' });

export const addedTerm = z
  .strictObject({
    vocabulary: z.string().min(1),
    id: identifier,
    label: z.string().min(1),
    parent: z.string().exactOptional().meta({ description: 'The broader term' }),
    definition: z.string().exactOptional(),
    synonyms: synonyms.exactOptional(),
    source: z.string().default('defined by the study'),
  })
  .meta({ description: 'A term that the study adds to a vocabulary' });

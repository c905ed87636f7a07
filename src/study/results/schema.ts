import { z } from 'zod';

/** The shape of results.json, for those who read it elsewhere. `results.ts` holds the same as types. */

const unavailable = z
  .strictObject({ why: z.string() })
  .meta({ description: 'Stands where a number cannot be computed, and says why' });

const cell = z.union([
  z.number(),
  z.enum(['Infinity', '-Infinity']).meta({ description: 'An end that is open' }),
  z.string(),
  z.boolean(),
  z.null(),
  unavailable,
]);

const counts = z.strictObject({
  fragments: z.int().min(0),
  items: z.int().min(0).meta({ description: 'Distinct original objects' }),
  setAside: z.array(z.strictObject({ reason: z.string(), fragments: z.int().min(0) })),
});

const table = z.strictObject({
  title: z.string(),
  columns: z.array(
    z.strictObject({
      id: z
        .string()
        .meta({ description: 'The standard name of the statistic: n, missing, mean, sd, median, p …' }),
      label: z.string(),
      unit: z.string().exactOptional(),
    }),
  ),
  rows: z.array(z.array(cell)),
  note: z.string().exactOptional(),
  briefly: z
    .array(z.string())
    .exactOptional()
    .meta({ description: 'Columns that a narrow place shows, where not all fit' }),
});

const figure = z.strictObject({
  data: z.array(z.record(z.string(), z.unknown())).meta({ description: 'Traces of a plotly figure' }),
  layout: z.record(z.string(), z.unknown()),
  caption: z.string(),
});

const answer = z.strictObject({
  answer: z.string().meta({ description: 'The verdict in one sentence, made after the cautions' }),
  because: z.array(z.string()).meta({ description: 'The evidence: n, effects with their intervals, p' }),
  unless: z
    .array(
      z.strictObject({
        what: z.string().meta({ description: 'What is done or known otherwise' }),
        size: z.string().meta({ description: 'What the verdict then is, or how far it moves' }),
        overturns: z.boolean().meta({ description: 'Whether it was tried and does change the verdict' }),
      }),
    )
    .meta({ description: 'What would change this verdict, worst first' }),
  next: z.array(z.string()).exactOptional().meta({ description: 'What would settle it' }),
});

const source = z.strictObject({
  file: z.string(),
  role: z.enum(['fragments', 'assemblages']),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  rowsRead: z.int().min(0),
  rowsKept: z.int().min(0),
  rowsSetAside: z.int().min(0).meta({ description: 'rowsRead is always rowsKept + rowsSetAside' }),
  ledger: z
    .strictObject({ read: z.int().min(0), flagged: z.int().min(0), notUnderstood: z.int().min(0) })
    .meta({ description: 'Cells that a rule changed, cells to look at again, cells without a reading' }),
});

export const resultsSchema = z
  .strictObject({
    study: z.strictObject({
      title: z.string(),
      seed: z.int().min(0),
      unit: z.enum(['item', 'fragment']),
      witness: z
        .strictObject({
          status: z.enum(['confirmed', 'suggested', 'absent']),
          one: z.string(),
          many: z.string(),
        })
        .meta({ description: 'What counts as one, and whether somebody confirmed what names it' }),
      version: z.string().meta({ description: 'Version of Thrum' }),
      sources: z.array(source),
      n: counts,
      disagreements: z
        .array(z.strictObject({ attribute: z.string(), label: z.string(), items: z.int().min(1) }))
        .meta({ description: 'Attributes in which fragments of one item contradict each other' }),
      readiness: z
        .array(
          z.strictObject({
            topic: z.enum([
              'witness',
              'names',
              'compounds',
              'labels',
              'level',
              'certainty',
              'identification',
              'gaps',
              'recorders',
              'columns',
              'shrinkage',
            ]),
            state: z.enum(['ready', 'mind', 'ask']),
            says: z.string(),
            mend: z.string().exactOptional(),
          }),
        )
        .meta({ description: 'Whether the data are ready for a verdict, before any is given' }),
      cautions: z.array(z.string()),
      always: z
        .array(z.string())
        .meta({ description: 'What holds of every answer of the kinds that were asked' }),
    }),
    analyses: z.record(
      z.string(),
      z.strictObject({
        kind: z.string(),
        title: z.string(),
        note: z.string().exactOptional().meta({ description: 'What the reader remarked on the finding' }),
        options: z.record(z.string(), z.unknown()),
        n: counts,
        tables: z.record(z.string(), table),
        figures: z.record(z.string(), figure),
        words: answer,
        why: z
          .string()
          .exactOptional()
          .meta({ description: 'Present where the analysis could not be computed' }),
      }),
    ),
  })
  .meta({ title: 'Results of a study' });

import { z } from 'zod';
import { claimRow } from '../../src/analyses/claims/reading/claim.ts';
import { typologyFile } from '../../src/analyses/typology/rules.ts';
import { sourceProfile } from '../../src/sources/profile/profile.ts';
import { resultsSchema } from '../../src/study/results/schema.ts';
import { study } from '../../src/study/schema.ts';

/** File name -> text of every JSON Schema that Thrum publishes, made from the schemas that check the files. */
export function schemaFiles(): Map<string, string> {
  return new Map([
    ['study.schema.json', schemaText(study, 'input')],
    ['results.schema.json', schemaText(resultsSchema, 'output')],
    ['source-profile.schema.json', schemaText(sourceProfile, 'input')],
    ['type-rules.schema.json', schemaText(typologyFile, 'input')],
    ['claims.schema.json', schemaText(claimRow, 'input')],
  ]);
}

function schemaText(schema: z.ZodType, io: 'input' | 'output'): string {
  return `${JSON.stringify(z.toJSONSchema(schema, { io }), null, 2)}\n`;
}

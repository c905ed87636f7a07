import { mkdirSync, writeFileSync } from 'node:fs';
import { schemaFiles } from './schemas.ts';

/** Writes docs/schemas; run with `npm run schemas` after any change of a schema. */
const folder = new URL('../schemas/', import.meta.url);
mkdirSync(folder, { recursive: true });
for (const [name, text] of schemaFiles()) writeFileSync(new URL(name, folder), text);

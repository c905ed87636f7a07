import { mkdirSync, writeFileSync } from 'node:fs';
import { structureFiles, structuresPage } from './structures-page.ts';

/** `npm run structures`: writes docs/structures.md and the pictures on it from the data under src/attributes/. */
const folder = new URL('../images/structures/', import.meta.url);
mkdirSync(folder, { recursive: true });
for (const [name, text] of structureFiles()) writeFileSync(new URL(name, folder), text);
writeFileSync(new URL('../structures.md', import.meta.url), structuresPage());

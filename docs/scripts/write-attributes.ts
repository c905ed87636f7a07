import { writeFileSync } from 'node:fs';
import { attributesPage } from './attributes-page.ts';

/** `npm run attributes`: writes docs/attributes.md from the data under src/attributes/. */
writeFileSync(new URL('../attributes.md', import.meta.url), attributesPage());

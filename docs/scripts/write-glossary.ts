import { writeFileSync } from 'node:fs';
import { glossaryPage } from './glossary-page.ts';

/** `npm run glossary`: writes docs/glossary.md from src/analyses/glossary.ts. */
writeFileSync(new URL('../glossary.md', import.meta.url), glossaryPage());

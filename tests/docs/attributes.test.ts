import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { attributesPage } from '../../docs/scripts/attributes-page.ts';

it('docs/attributes.md is what `npm run attributes` writes', () => {
  expect(readFileSync(new URL('../../docs/attributes.md', import.meta.url), 'utf8')).toBe(attributesPage());
});

import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { structureFiles, structuresPage } from '../../docs/scripts/structures-page.ts';

const docs = new URL('../../docs/', import.meta.url);

it('docs/structures.md and its pictures are what `npm run structures` writes', () => {
  expect(readFileSync(new URL('structures.md', docs), 'utf8')).toBe(structuresPage());
  const files = structureFiles();
  expect(readdirSync(new URL('images/structures/', docs)).sort()).toEqual([...files.keys()].sort());
  for (const [name, text] of files)
    expect(readFileSync(new URL(`images/structures/${name}`, docs), 'utf8'), name).toBe(text);
});

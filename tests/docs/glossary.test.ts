import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { glossaryPage } from '../../docs/scripts/glossary-page.ts';
import { GLOSSARY } from '../../src/analyses/glossary.ts';
import { structureDrawing } from '../../src/attributes/drawing/structure-drawing.ts';
import { defaultRegister } from '../../src/attributes/register.ts';

it('docs/glossary.md is what `npm run glossary` writes', () => {
  expect(readFileSync(new URL('../../docs/glossary.md', import.meta.url), 'utf8')).toBe(glossaryPage());
});

it('explains each word once', () => {
  const words = GLOSSARY.flatMap((section) => section.words.flatMap(({ word }) => word.split(', ')));
  expect(words.length).toBeGreaterThan(40);
  expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
});

it('draws every structure that it says it draws', () => {
  const drawn = GLOSSARY.flatMap(({ words }) => words.flatMap((word) => word.drawn ?? []));
  expect(drawn.length).toBeGreaterThan(10);
  for (const { structure, facets } of drawn)
    expect(structureDrawing(defaultRegister(), structure, facets), structure).not.toBeNull();
});

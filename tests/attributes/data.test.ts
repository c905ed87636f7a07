import { describe, expect, it } from 'vitest';
import { AMBIGUOUS_TERMS } from '../../src/attributes/ambiguous/terms.ts';
import { lookupKey, splitWords } from '../../src/attributes/folding.ts';
import { splitHeader, unitKind } from '../../src/attributes/header.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import { ancestors } from '../../src/attributes/tree.ts';
import { wordingsOf } from '../../src/attributes/wording-index.ts';

const { attributes, vocabularies } = defaultRegister();

/** Wordings that more than one entry claims, as "wording: id, id". */
function shared(entries: readonly (readonly [key: string, id: string])[]): string[] {
  const owners = new Map<string, Set<string>>();
  for (const [key, id] of entries) owners.set(key, (owners.get(key) ?? new Set()).add(id));
  return [...owners].filter(([, ids]) => ids.size > 1).map(([key, ids]) => `${key}: ${[...ids].join(', ')}`);
}

describe('attributes', () => {
  it.each([...attributes.values()])('$id has what its scale needs, and a source', (attribute) => {
    expect(attribute.source).not.toBe('');
    expect(attribute.id).toMatch(/^[a-z][A-Za-z0-9]*$/);
    if (attribute.scale === 'ordinal') expect(attribute.levels?.length).toBeGreaterThan(1);
    if (attribute.vocabulary !== undefined) expect(vocabularies.has(attribute.vocabulary)).toBe(true);
    for (const structure of attribute.appliesTo ?? []) {
      expect(vocabularies.get('structure')?.terms.map((term) => term.id)).toContain(structure);
    }
    const { usual, limit } = attribute.plausible ?? {};
    if (usual && limit) {
      expect(usual[0]).toBeGreaterThanOrEqual(limit[0]);
      expect(usual[1]).toBeLessThanOrEqual(limit[1]);
    }
  });

  it('no header serves two attributes', () => {
    const entries = [...attributes.values()].flatMap((attribute) =>
      wordingsOf(attribute.id, attribute.label, attribute.synonyms).map((wording): [string, string] => {
        const { name, unit } = splitHeader(wording);
        const kind = unit === undefined ? '' : unitKind(unit);
        return [`${lookupKey(splitWords(name))} [${kind}]`, attribute.id];
      }),
    );
    expect(shared(entries)).toEqual([]);
  });
});

describe.each([...vocabularies.values()])('vocabulary $id', ({ id, terms }) => {
  it('has unique ids and parents that exist, without circles', () => {
    const ids = terms.map((term) => term.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const term of terms) {
      if (term.parent !== undefined) expect(ids).toContain(term.parent);
      expect(ancestors({ id, label: id, terms }, term.id)).not.toContain(term.id);
      expect(term.source).not.toBe('');
      expect(term.definition).not.toBe('');
    }
  });

  it('no wording stands for two terms', () => {
    const entries = terms.flatMap((term) =>
      wordingsOf(term.id, term.label, term.synonyms).map((wording): [string, string] => [
        lookupKey(wording),
        term.id,
      ]),
    );
    expect(shared(entries)).toEqual([]);
  });

  it('no ambiguous word is also an exact one, and its candidates exist', () => {
    const exact = new Set(
      terms.flatMap((term) => wordingsOf(term.id, term.label, term.synonyms).map(lookupKey)),
    );
    for (const entry of AMBIGUOUS_TERMS.filter((word) => word.vocabulary === id)) {
      for (const candidate of entry.candidates) expect(terms.map((term) => term.id)).toContain(candidate);
      for (const word of entry.words) expect(exact.has(lookupKey(word)), `${word} is exact too`).toBe(false);
    }
  });
});

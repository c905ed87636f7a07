import { describe, expect, it } from 'vitest';
import { read } from '../support.ts';
import { CORPUS } from './corpus-tables.ts';

interface Outcome {
  readonly silent: readonly string[];
  readonly suggestions: readonly { readonly what: string; readonly right: boolean }[];
}

/** What a reading takes without asking and should not have, and what it asks. */
function outcomeOf({ sort, text, right }: (typeof CORPUS)[number], accept: boolean): Outcome {
  const reading = read(text, {}, { accept });
  const silent: string[] = [];
  const suggestions: { what: string; right: boolean }[] = [];
  for (const { header, status, attributes, suggestion } of reading.columns) {
    const meant = right[header] ?? null;
    if (status === 'matched' && attributes.some((id) => id !== meant))
      silent.push(
        `${sort}: "${header}" read as ${attributes.join(', ')}, which is ${meant ?? 'no attribute'}`,
      );
    if (status === 'suggested' && suggestion !== undefined)
      suggestions.push({ what: `${header}: ${suggestion.attribute}`, right: suggestion.attribute === meant });
  }
  return { silent, suggestions };
}

describe('tables in the image of those that others keep', () => {
  it('are sixty at least, of ten classes', () => {
    expect(CORPUS.length).toBeGreaterThanOrEqual(60);
    expect(new Set(CORPUS.map(({ sort }) => sort)).size).toBeGreaterThanOrEqual(10);
  });

  it('are never read wrongly without a question, and no row is lost', () => {
    expect(CORPUS.flatMap((one) => outcomeOf(one, false).silent)).toEqual([]);
    for (const { text } of CORPUS) {
      const reading = read(text);
      expect(reading.rowsRead).toBe(text.trimEnd().split('\n').length - 1);
      expect(reading.rowsKept + reading.rowsSetAside.length).toBe(reading.rowsRead);
    }
  });

  it('are asked about rightly, four times in five or more', () => {
    const asked = CORPUS.flatMap((one) => outcomeOf(one, false).suggestions);
    expect(asked.length).toBeGreaterThan(5);
    const wrong = asked.filter(({ right }) => !right).map(({ what }) => what);
    expect({ share: 1 - wrong.length / asked.length, wrong }).toSatisfy(
      ({ share }: { share: number }) => share >= 0.8,
    );
  });

  it('are read no worse when all that is beyond doubt is taken', () => {
    expect(CORPUS.flatMap((one) => outcomeOf(one, true).silent)).toEqual([]);
  });

  it('of cloth are read as cloth', () => {
    for (const one of CORPUS.filter(({ sort }) => sort === 'cloth')) {
      const { columns } = read(one.text);
      const found = columns.map(({ header, attributes, suggestion }) => [
        header,
        attributes[0] ?? suggestion?.attribute,
      ]);
      expect(Object.fromEntries(found)).toEqual(one.right);
    }
  });
});

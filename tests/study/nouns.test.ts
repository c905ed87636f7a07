import { describe, expect, it } from 'vitest';
import { inNounsOf, nounsIn } from '../../src/study/nouns.ts';

describe('what a study counts as one', () => {
  it.each([
    [
      '6 items of 72 fragments; an item is one. Items move together.',
      'vessel',
      'vessels',
      '6 vessels of 72 fragments; a vessel is one. Vessels move together.',
    ],
    ['An item alone', 'urn', 'urns', 'An urn alone'],
    ['72 fragments of 72 items', 'fragment', 'fragments', '72 fragments'],
    ['72 fragments of 6 items', 'grave', 'graves', '72 fragments of 6 graves'],
    ['itemised', 'grave', 'graves', 'itemised'],
  ])('%s', (text, one, many, said) => {
    expect(nounsIn(text, one, many)).toBe(said);
  });

  const shown = {
    words: {
      answer: 'Two items differ.',
      because: ['2 items'],
      unless: [{ what: 'An item is left out', size: '1 item', overturns: false }],
    },
    tables: {
      t: {
        title: 'Items',
        columns: [{ id: 'items', label: 'items' }],
        rows: [['Item House']],
        note: 'by item',
      },
    },
    figures: { f: { data: [], layout: {}, caption: '2 items.' } },
  };

  it('is named in answers, heads, notes and captions, while cells and ids stay', () => {
    const said = inNounsOf({ status: 'confirmed', one: 'grave', many: 'graves' }, shown);
    expect(said).toEqual({
      words: {
        answer: 'Two graves differ.',
        because: ['2 graves'],
        unless: [{ what: 'A grave is left out', size: '1 grave', overturns: false }],
      },
      tables: {
        t: {
          title: 'Graves',
          columns: [{ id: 'items', label: 'graves' }],
          rows: [['Item House']],
          note: 'by grave',
        },
      },
      figures: { f: { data: [], layout: {}, caption: '2 graves.' } },
    });
  });

  it('is the fragment while nobody has said', () => {
    expect(inNounsOf({ status: 'suggested', one: 'item', many: 'items' }, shown).words.answer).toBe(
      'Two fragments differ.',
    );
  });

  it('is the item where that is what was confirmed', () => {
    expect(inNounsOf({ status: 'confirmed', one: 'item', many: 'items' }, shown)).toBe(shown);
  });
});

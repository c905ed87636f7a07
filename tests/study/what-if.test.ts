import { describe, expect, it } from 'vitest';
import type { Answered } from '../../src/analyses/register.ts';
import type { Witness } from '../../src/fragments/witness.ts';
import { changeOf, type WhatIf, withTurns } from '../../src/study/otherwise.ts';

const confirmed: Witness = { status: 'confirmed', one: 'item', many: 'items' };
const absent: Witness = { ...confirmed, status: 'absent' };

const answered = (verdict: string | null, answer: string): Answered => ({
  n: { fragments: 72, items: 6, setAside: [] },
  tables: {},
  figures: {},
  words: { answer, because: ['a', 'b', 'c', 'd'], unless: [{ what: 'w', size: 's', overturns: false }] },
  verdict,
});

const whatIf: WhatIf = {
  what: 'Counted by objects',
  open: 'what counts as one',
  hangsOn: 'Cannot be told yet.',
  next: 'Confirm the column.',
  prepared: () => {
    throw new Error('not asked');
  },
};

const apart = answered('told apart', 'Spacing differs.');

describe('a verdict that turns with how finds were counted', () => {
  it('is no verdict: what it hangs on is the answer, the first verdict its evidence', () => {
    const other = answered('not told apart', 'The sites are not told apart.');
    const { words } = withTurns(apart, confirmed, [{ whatIf, other }]);
    expect(words).toEqual({
      answer: 'Cannot be told yet.',
      because: ['Spacing differs.', 'a', 'b', 'c'],
      unless: [
        { what: 'Counted by objects', size: 'the sites are not told apart', overturns: true },
        { what: 'w', size: 's', overturns: false },
      ],
      next: ['Confirm the column.'],
    });
  });

  it('stands where it is the same, and says that it was tried', () => {
    const { words } = withTurns(apart, confirmed, [{ whatIf, other: answered('told apart', 'x') }]);
    expect(words.answer).toBe('Spacing differs.');
    expect(words.unless.at(-1)).toEqual({
      what: 'Counted by objects',
      size: 'the answer is the same',
      overturns: false,
    });
  });
});

describe('where nobody has said what an object is', () => {
  it('a verdict says what it takes as independent', () => {
    expect(withTurns(apart, absent, []).words.answer).toBe(
      'Spacing differs, if each fragment is a find of its own.',
    );
  });

  it('a description takes nothing as independent and stays as it is', () => {
    const described = answered(null, 'Most are twined.');
    expect(withTurns(described, absent, [])).toBe(described);
  });
});

describe('a set of labels that stay', () => {
  const set = (...labels: string[]) => [{ attribute: 'Site', labels }];
  it('is the same in any order, moves where it shares some, and turns where it shares none', () => {
    expect(changeOf(set('A', 'B'), set('B', 'A'))).toBe('the same');
    expect(changeOf(set('A', 'B'), set('A'))).toBe('moved');
    expect(changeOf(set('A'), set('B'))).toBe('turned');
    expect(changeOf(set('A'), set())).toBe('turned');
    expect(changeOf(set(), set())).toBe('the same');
    expect(changeOf(set('A'), 'cannot be told')).toBe('turned');
  });
  it('that only moves keeps its answer, which says on what it hangs', () => {
    const here = { ...apart, verdict: set('A', 'B') };
    const other = { ...answered(null, 'By site one of three is left.'), verdict: set('A') };
    const { words } = withTurns(here, confirmed, [{ whatIf, other }]);
    expect(words.answer).toBe('Spacing differs; which stay hangs on what counts as one.');
    expect(words.unless[0]).toEqual({
      what: 'Counted by objects',
      size: 'by site one of three is left',
      overturns: true,
    });
    expect(words.next).toEqual(['Confirm the column.']);
  });
});

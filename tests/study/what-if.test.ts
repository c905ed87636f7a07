import { describe, expect, it } from 'vitest';
import type { Answered } from '../../src/analyses/register.ts';
import type { Witness } from '../../src/fragments/items/witness.ts';
import { changeOf } from '../../src/study/otherwise/change-of.ts';
import { type WhatIf, withTurns } from '../../src/study/otherwise/otherwise.ts';

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

describe('two names taken as one', () => {
  const kept: WhatIf = {
    ...whatIf,
    what: 'Kept apart',
    open: 'which names are one',
    onlyIf: [', if Holm and Holmby are one name', ', near names as one'],
  };
  it('are a condition where the verdict would be another, and not where it would not', () => {
    const other = answered('not told apart', 'The sites are not told apart.');
    const { words } = withTurns(apart, confirmed, [{ whatIf: kept, other }]);
    expect(words.answer).toBe('Spacing differs, if Holm and Holmby are one name.');
    expect(words.unless[0]).toEqual({
      what: 'Kept apart',
      size: 'the sites are not told apart',
      overturns: true,
    });
    expect(withTurns(apart, confirmed, [{ whatIf: kept, other: apart }]).words.answer).toBe(
      'Spacing differs.',
    );
  });
  it('gives way to what the verdict hangs on, and is then the first of what would turn it', () => {
    const long = answered(
      'told apart',
      'Spacing differs between four groups by site, most from Holm to Ness, three of six pairs told apart, but not among those found in the sieve.',
    );
    const other = answered('not told apart', 'x');
    const { words } = withTurns(long, absent, [{ whatIf: kept, other }]);
    expect(words.answer).toBe(
      'Spacing differs between four groups by site, most from Holm to Ness, three of six pairs told apart, but not among those found in the sieve, counted by fragments.',
    );
    expect(words.unless[0]).toMatchObject({ what: 'Kept apart', overturns: true });
  });
});

describe('where there is no room', () => {
  it('that others cannot be ruled out is said without their names before it is left out', () => {
    const long =
      'In structure most alike are Keshem Quay and Yarrin Field, though Ostrel Hollow with Vanmere Gate and 1 more cannot be ruled out; least Keshem Quay and Vanmere Gate.';
    const { words } = withTurns(answered('x', long), absent, []);
    expect(words.answer).toBe(
      'In structure most alike are Keshem Quay and Yarrin Field, though Ostrel Hollow with Vanmere Gate and 1 more cannot be ruled out, counted by fragments.',
    );
    const longer = long.replace('1 more', 'Tull Barrow with the Place of Many Words');
    expect(withTurns(answered('x', longer), absent, []).words.answer).toBe(
      'In structure most alike are Keshem Quay and Yarrin Field, but not for sure; least Keshem Quay and Vanmere Gate, if each fragment is a find of its own.',
    );
  });
});

describe('a ranking asked otherwise', () => {
  const rank = (first: string[], open: string[] = [], end: 'most' | 'least' = 'most') => [
    { rank: end, which: 'which are most alike', first, open },
  ];
  it.each([
    ['the same leaders, in any order', rank(['A', 'B']), rank(['B', 'A'], ['C']), 'the same'],
    ['each leader left open by the other', rank(['A'], ['B']), rank(['B'], ['A']), 'within'],
    ['a leader that the other does not leave open', rank(['A']), rank(['B'], ['A']), 'moved'],
    ['neither left open by the other', rank(['A'], ['C']), rank(['B'], ['C']), 'turned'],
    ['nobody first here', rank([]), rank(['B']), 'within'],
    ['nobody first there', rank(['A']), rank([]), 'moved'],
    ['the least alike alone', rank(['A'], [], 'least'), rank(['B'], [], 'least'), 'moved'],
  ])('%s', (_, here, there, how) => {
    expect(changeOf(here, there).how).toBe(how);
  });
  it('takes spellings of one name as one', () => {
    const calls = (name: string) => (name === 'B ldg' ? 'B' : name);
    expect(changeOf(rank(['B']), rank(['B ldg']), calls).how).toBe('the same');
    expect(changeOf(rank(['B']), rank(['B ldg'])).how).toBe('turned');
  });
  it('that moves stands, and says which place hangs on what', () => {
    const here = { ...apart, verdict: rank(['A']) };
    const other = { ...answered(null, 'B is most alike.'), verdict: rank(['B'], ['A']) };
    expect(withTurns(here, confirmed, [{ whatIf, other }]).words.answer).toBe(
      'Spacing differs; which are most alike hangs on what counts as one.',
    );
  });
});

describe('a test asked otherwise', () => {
  const told = (says: string, ...under: string[]) => [{ of: 'spacing', told: says, under }];
  it.each([
    ['another thing told', told('apart'), told('not apart'), 'turned'],
    ['a condition more', told('apart'), told('apart', 'structure'), 'moved'],
    ['a condition less', told('apart', 'structure'), told('apart'), 'within'],
    ['the same under the same', told('apart', 'structure'), told('apart', 'structure'), 'the same'],
    ['an attribute more', told('apart'), [...told('apart'), { of: 'x', told: 'apart', under: [] }], 'moved'],
  ])('%s', (_, here, there, how) => {
    expect(changeOf(here, there).how).toBe(how);
  });
});

describe('a set of labels that stay', () => {
  const set = (...labels: string[]) => [{ attribute: 'Site', labels }];
  it('is the same in any order, moves where it shares some, and turns where it shares none', () => {
    expect(changeOf(set('A', 'B'), set('B', 'A')).how).toBe('the same');
    expect(changeOf(set('A', 'B'), set('A')).how).toBe('moved');
    expect(changeOf(set('A'), set('B')).how).toBe('turned');
    expect(changeOf(set('A'), set()).how).toBe('turned');
    expect(changeOf(set(), set()).how).toBe('the same');
    expect(changeOf(set('A'), 'cannot be told').how).toBe('turned');
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

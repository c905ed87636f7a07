import { describe, expect, it } from 'vitest';
import { checkProfile } from '../../../src/sources/profile/profile.ts';
import { read } from '../support.ts';

const TEXT =
  'Find no.,Site,Technique,Row dist (mm),L x W (cm),Zzyx\nA1,Harrow,open twining,4,12 x 8,q\nA2,Harrow,open twining,5,11 x 7,r\nA3,Kelder,close twining,3,9 x 4,q\nA4,Kelder,close twining,3.5,8 x 3,q\n';

describe('a column that nobody has decided about', () => {
  const first = read(TEXT);
  const rules = new Map(first.profile.columns.map((rule) => [rule.header, rule]));

  it('stands in the profile with what it may be, for somebody to decide', () => {
    expect(rules.get('Row dist (mm)')).toEqual({
      header: 'Row dist (mm)',
      undecided: { mayBe: ['rowSpacing'], because: expect.stringContaining('may be short for') },
    });
    expect(rules.get('L x W (cm)')?.undecided?.mayBe).toEqual(['length', 'width']);
    expect(rules.get('Zzyx')).toEqual({ header: 'Zzyx', attribute: null });
    expect([...rules.keys()]).toEqual(first.columns.map(({ header }) => header));
  });

  it('is asked about again when the profile is read back, and nothing else changes', () => {
    const saved = checkProfile(JSON.parse(JSON.stringify(first.profile)), 'p.json');
    const again = read(TEXT, saved);
    expect(again.columns.map(({ status, suggestion }) => [status, suggestion?.attribute])).toEqual(
      first.columns.map(({ status, suggestion }) => [status, suggestion?.attribute]),
    );
    expect(again.profile).toEqual(first.profile);
    expect(again.table.columns).toEqual(first.table.columns);
  });

  it('is decided by its attribute, and then no longer undecided', () => {
    const columns = first.profile.columns.map((rule) =>
      rule.header === 'Row dist (mm)' ? { ...rule, attribute: 'rowSpacing' } : rule,
    );
    const decided = read(TEXT, { ...first.profile, columns });
    expect(decided.columns[3]).toMatchObject({ status: 'matched', attributes: ['rowSpacing'] });
    expect(decided.profile.columns.find(({ header }) => header === 'Row dist (mm)')).not.toHaveProperty(
      'undecided',
    );
  });

  it('is not missed in another file of the kind', () => {
    const other = read('Find no.,Site\nB1,Harrow\nB2,Kelder\n', {
      columns: [{ header: 'Row dist (mm)', undecided: { mayBe: ['rowSpacing'], because: 'x' } }],
    });
    expect(other.faults).toEqual([]);
  });
});

describe('a wording that a profile settles with its mark of doubt', () => {
  const certaintyOf = (attribute: string, cells: readonly string[], terms: Record<string, string>) => {
    const text = `Find no.,Col\n${cells.map((cell, row) => `${row + 1},${cell}`).join('\n')}\n`;
    const column = read(text, { columns: [{ header: 'Col', attribute, terms }] }).table.columns.get(
      attribute,
    );
    return column?.kind === 'term'
      ? cells.map((_, row) => [column.levels[column.codes[row]!], column.certainty[row]])
      : [];
  };

  it.each([
    ['fibre', 'Zottel', 'wool'],
    ['structure', 'Flurz', 'tabby'],
    ['spacingClass', 'weitlich', 'open'],
    ['recordedUse', 'Tasche', 'bag'],
    ['site', 'Hrw', 'Harrow'],
  ])('keeps the doubt, which is in the cell: %s', (attribute, word, term) => {
    const told = certaintyOf(attribute, [`${word}?`, word], { [`${word}?`]: term, [word]: term });
    expect(told.map(([name]) => name)).toEqual([term, term]);
    expect(told[0]?.[1]).toBeGreaterThan(0);
    expect(told[1]?.[1]).toBe(0);
  });

  it('and a mark alone is a code that doubts nothing', () => {
    expect(certaintyOf('fibre', ['?', 'wool'], { '?': 'wool' })).toEqual([
      ['wool', 0],
      ['wool', 0],
    ]);
  });
});

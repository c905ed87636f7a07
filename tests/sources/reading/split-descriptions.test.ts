import { describe, expect, it } from 'vitest';
import type { ProfileInput } from '../../../src/sources/profile/profile.ts';
import { read, termsOf } from '../support.ts';

/** Columns that hold more, or less, than one description each; common practice, no source. */

const SPLIT: ProfileInput = {
  columns: [
    {
      header: 'Fabric',
      split: { by: 'separator', separator: ';', into: [{ attribute: 'structure' }, { attribute: 'fibre' }] },
    },
  ],
};
const TEXT = `id,site,Fabric
1,Holm,open diagonal twining with pile; lime bast
2,Holm,"Köper 2/2, kettbetont; wool"
3,Holm,tabby; wool
`;

describe('a description that is one part of a cell', () => {
  it('is parted into the structure and its facets', () => {
    const reading = read(TEXT, SPLIT);
    expect(termsOf(reading, 'structure')).toEqual(['twined', 'twill22', 'tabby']);
    expect(termsOf(reading, 'spacingClass')).toEqual(['open', null, null]);
    expect(termsOf(reading, 'engagement')).toEqual(['diagonal', null, null]);
    expect(termsOf(reading, 'pile')).toEqual(['present', null, null]);
    expect(termsOf(reading, 'face')).toEqual([null, 'warpFaced', null]);
    expect(termsOf(reading, 'fibre')).toEqual(['limeBast', 'wool', 'wool']);
  });

  it('fills the gaps of a column of its own, which goes before it', () => {
    const more = TEXT.replace('Fabric', 'Fabric,Openness class')
      .replace('bast\n', 'bast,close\n')
      .replace('wool"\n', 'wool",\n')
      .replace('3,Holm,tabby; wool', '3,Holm,close twining; wool,');
    const reading = read(more, {
      columns: [...SPLIT.columns!, { header: 'Openness class', attribute: 'spacingClass' }],
    });
    expect(termsOf(reading, 'spacingClass')).toEqual(['close', null, 'close']);
    expect(reading.ledger.filter(({ rule }) => rule === 'facet-contradiction')).toHaveLength(1);
  });

  it('is left at its structure where the profile says that the column holds that alone', () => {
    const [rule] = SPLIT.columns!;
    const reading = read(TEXT, { columns: [{ ...rule!, oneFacet: true }] });
    expect(termsOf(reading, 'structure')).toEqual(['twined', 'twill22', 'tabby']);
    expect(reading.table.columns.has('engagement')).toBe(false);
    expect(reading.ledger.filter(({ rule: why }) => why === 'one-facet')).toHaveLength(2);
  });
});

it('a column of one facet may name the whole, of which that facet is taken', () => {
  const text =
    'id,Rows,Flor\n1,open twining,with pile\n2,Zwirnbindung dicht,ohne Flor\n3,close,ja\n4,gridelin,nein\n';
  const reading = read(text, {
    columns: [
      { header: 'Rows', attribute: 'spacingClass' },
      { header: 'Flor', attribute: 'pile' },
    ],
  });
  expect(termsOf(reading, 'spacingClass')).toEqual(['open', 'close', 'close', null]);
  expect(termsOf(reading, 'pile')).toEqual(['present', 'absent', 'present', 'absent']);
  expect(reading.table.columns.has('structure')).toBe(false);
});

import { describe, expect, it } from 'vitest';
import { numbers, read, termsOf } from '../support.ts';

const TEXT = 'Nr,Abst,Art\n1,35,Lb\n2,40,Kp\n';

describe('a profile that names things as they are printed', () => {
  const reading = read(TEXT, {
    columns: [
      { header: 'Abst', attribute: 'Row spacing', unit: 'mm' },
      { header: 'Art', attribute: 'structure', terms: { Lb: 'Tabby', Kp: 'twill' } },
    ],
    constants: { 'Recorded use': 'bag' },
  });

  it('reads as with ids', () => {
    expect([...numbers(reading, 'rowSpacing').low]).toEqual([35, 40]);
    expect(termsOf(reading, 'structure')).toEqual(['tabby', 'twill']);
    expect(reading.table.columns.has('recordedUse')).toBe(true);
  });

  it('comes back with ids, and reads the same again', () => {
    expect(reading.profile.columns.map(({ attribute }) => attribute)).toContain('rowSpacing');
    expect(Object.keys(reading.profile.constants)).toEqual(['recordedUse']);
    expect(read(TEXT, reading.profile).table).toEqual(reading.table);
  });

  it('names the attribute of translations for the whole source and the parts of a split', () => {
    const split = read('Nr,Dichte,Art\n1,14 x 12,Lb\n2,16 x 11,Lb\n', {
      columns: [
        {
          header: 'Dichte',
          split: {
            by: 'systems',
            into: [{ attribute: 'Density of system 1' }, { attribute: 'Density of system 2' }],
          },
        },
        { header: 'Art', attribute: 'structure' },
      ],
      terms: { structure: { Lb: 'Tabby' } },
    });
    expect([...numbers(split, 'density1').low]).toEqual([14, 16]);
    expect(termsOf(split, 'structure')).toEqual(['tabby', 'tabby']);
  });

  it('is told what is no name at all', () => {
    expect(() => read(TEXT, { columns: [{ header: 'Abst', attribute: 'Row spacings' }] })).toThrow(
      /"Row spacings", which is not known/,
    );
    expect(() =>
      read(TEXT, { columns: [{ header: 'Art', attribute: 'structure', terms: { Lb: 'Tubby' } }] }),
    ).toThrow(/Tubby/);
  });
});

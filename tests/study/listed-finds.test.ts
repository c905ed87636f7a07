import { describe, expect, it } from 'vitest';
import { defaultRegister } from '../../src/attributes/register.ts';
import { checkProfile } from '../../src/sources/profile/profile.ts';
import { listedFinds } from '../../src/study/listed-finds.ts';

const register = defaultRegister();
const bytes = (text: string) => new TextEncoder().encode(text);

describe('finds of a table', () => {
  it('takes grades, kinds and numbers as they stand, the unit of the header with a bare number', () => {
    const { finds, notes } = listedFinds(
      bytes('item;structure;spacing class;row spacing (cm)\nA1;open twining;semi-open;3,2\nA2;tabby;;\n'),
      'f.csv',
      register,
    );
    expect(finds).toEqual([
      {
        name: 'A1',
        row: 2,
        given: { structure: 'open twining', spacingClass: 'semi-open', rowSpacing: '3,2 cm' },
      },
      { name: 'A2', row: 3, given: { structure: 'tabby' } },
    ]);
    expect(notes).toEqual([]);
  });
  it('splits a column between two attributes where a profile says so', () => {
    const profile = checkProfile(
      {
        columns: [
          {
            header: 'count',
            split: { by: 'systems', into: [{ attribute: 'density1' }, { attribute: 'density2' }] },
          },
        ],
      },
      'f.profile.json',
    );
    const { finds } = listedFinds(bytes('item;count\nA1;14 x 12\nA2;9\n'), 'f.csv', register, profile);
    expect(finds.map(({ given }) => given)).toEqual([{ density1: '14', density2: '12' }, { density1: '9' }]);
  });
  it('says of a column of two values without a profile what it holds and what would help', () => {
    const { finds, notes } = listedFinds(
      bytes('item;structure;thread count warp x weft\nA1;tabby;14 x 12\nA2;tabby;9 x 8\n'),
      'f.csv',
      register,
    );
    expect(finds[0].given).toEqual({ structure: 'tabby' });
    expect(notes.join()).toContain(
      'its cells hold two values: give a profile that splits it into "density1" and "density2"',
    );
  });
});

import { describe, expect, it } from 'vitest';
import { nearMatches, suggest } from '../../src/attributes/near-matches.ts';

const known = ['rowSpacing', 'rowSlant', 'density1', 'density2', 'summary', 'placement'];

describe('near matches of a name', () => {
  it.each([
    ['rowSpaceing', ['rowSpacing']],
    ['rowspacing', ['rowSpacing']],
    ['density', ['density1', 'density2']],
    ['sumary', ['summary']],
    ['row spacing', ['rowSpacing']],
    ['colour', []],
  ])('of "%s"', (name, expected) => {
    expect(nearMatches(name, known)).toEqual(expected);
  });

  it('become a remedy, or the fallback where nothing looks alike', () => {
    expect(suggest('density', known, 'look it up')).toBe('write "density1" or "density2" if that is meant');
    expect(suggest('zzz', known, 'look it up')).toBe('look it up');
  });
});

import { describe, expect, it } from 'vitest';
import { shortNames } from '../../../../src/analyses/shared/figure/short-names.ts';

const most = (letters: number) => (text: string) => text.length <= letters;

describe('names that are cut', () => {
  it('stand whole where they fit', () => {
    expect(shortNames(['tabby', 'twill'], most(5))).toEqual(['tabby', 'twill']);
  });

  it('end in dots where they do not, and keep their count', () => {
    expect(shortNames(['open diagonal twining (12)', 'netting (3)'], most(16))).toEqual([
      'open diago… (12)',
      'netting (3)',
    ]);
  });

  it('keep to the least room, down to one letter and dots', () => {
    expect(shortNames(['Quorrimel', 'Drommavel'], most(4))).toEqual(['Quo…', 'Dro…']);
    expect(shortNames(['Quorrimel', 'Drommavel'], most(2))).toEqual(['Q…', 'D…']);
  });

  it('show where they differ when their beginnings are the same', () => {
    const short = shortNames(
      ['Settlement at the Upper Marrowfield, north bank', 'Settlement at the Upper Marrowfield, south bank'],
      most(20),
    );
    expect(short[0]).toMatch(/^Settle.*…north bank$/);
    expect(short[1]).toMatch(/^Settle.*…south bank$/);
  });

  it('are numbered in their order where even that has no room', () => {
    const tail = (word: string) => `${'x'.repeat(30)}${word}${'y'.repeat(30)}`;
    const short = shortNames([tail('a'), tail('b'), tail('c')], most(12));
    expect(short.map((name) => name.slice(-2))).toEqual([' 1', ' 2', ' 3']);
  });

  it.each([6, 9, 14, 20, 33])('never become alike, with %d letters of room', (room) => {
    const names = [
      ...Array.from({ length: 40 }, (_, at) => `Long barrow of the eastern terrace, trench ${at + 1}`),
      ...Array.from({ length: 9 }, (_, at) => `Long barrow of the eastern terrace, trench ${at + 1} (${at})`),
      'Long barrow',
      'Long barrow of the eastern terrace',
      'Long …',
    ];
    const short = shortNames(names, most(room));
    expect(new Set(short).size).toBe(names.length);
    if (room >= 9) expect(short.filter((name) => name.length > room)).toEqual([]);
  });

  it('give one name that stands twice the same short form', () => {
    const [first, second, other] = shortNames(['abcdefghij1', 'abcdefghij1', 'abcdefghij2'], most(6));
    expect(first).toBe(second);
    expect(other).not.toBe(first);
  });
});

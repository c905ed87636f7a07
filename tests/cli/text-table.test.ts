import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clipped, textTable, wrap } from '../../src/cli/text-table.ts';

const columns = [
  { head: 'site', align: 'left' },
  { head: 'n', align: 'right' },
  { head: 'remark', align: 'left' },
] as const;

describe('a table in the terminal', () => {
  it('stands in aligned columns, numbers to the right', () => {
    expect(
      textTable(
        columns,
        [
          ['Grebe Holm', '7', 'x'],
          ['Ness', '12', ''],
        ],
        80,
      ),
    ).toBe(
      ['site         n  remark', '──────────  ──  ──────', 'Grebe Holm   7  x', 'Ness        12', ''].join(
        '\n',
      ),
    );
  });

  it('stays within the width and loses no letter', () => {
    const word = fc.string({ unit: fc.constantFrom(...'abcde'), minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(word, fc.nat(9999).map(String), word), { minLength: 1 }),
        fc.integer({ min: 40, max: 120 }),
        (rows, width) => {
          const text = textTable(columns, rows, width);
          for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(width);
          const letters = (value: string) => [...value.replace(/[^a-e0-9]/g, '')].sort().join('');
          expect(letters(text)).toBe(letters(['site', 'n', 'remark', ...rows.flat()].join('')));
        },
      ),
    );
  });

  it('lets no control character of a source reach the terminal', () => {
    const text = textTable(columns, [['\u001b[31mred', '1', 'a\nb\u0007']], 80);
    expect([...text].filter((letter) => letter < ' ' && letter !== '\n')).toEqual([]);
  });
});

describe('a text that is wrapped or shortened', () => {
  it('breaks a long word anywhere and keeps every letter, those of two units too', () => {
    expect(wrap('ab abcdefgh c', 3)).toEqual(['ab', 'abc', 'def', 'gh', 'c']);
    expect(wrap('a bc d', 4)).toEqual(['a bc', 'd']);
    expect(wrap('𝔸𝔹ℂ𝔻 x', 2)).toEqual(['𝔸𝔹', 'ℂ𝔻', 'x']);
    expect(wrap('', 5)).toEqual(['']);
    expect(wrap('x'.repeat(50_000), 100)).toHaveLength(500);
  });

  it('says how long it is', () => {
    expect(clipped('twined')).toBe('twined');
    expect(clipped('x'.repeat(50_000))).toBe(`${'x'.repeat(160)}… (50000 letters)`);
  });
});

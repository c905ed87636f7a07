import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textTable } from '../../src/cli/text-table.ts';

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

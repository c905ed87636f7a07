import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { neutralise, restoreText } from '../../../src/sources/formats/safe-csv.ts';

/**
 * What starts a formula, after OWASP, "CSV Injection" (=, +, -, @, tab, carriage return, and the full-width
 * signs that spreadsheets of East Asian languages take for them). That cells begin at ";" or a tab in other
 * languages is common practice of spreadsheets.
 */
const SIGNS = ['=', '+', '-', '@', '＝', '＋', '－', '＠'];

describe('a text that a spreadsheet would run', () => {
  it('gets an apostrophe, also behind spaces and marks that nobody sees', () => {
    for (const sign of SIGNS)
      for (const before of ['', ' ', '\u00a0', '\u200b', '\ufeff', "'", " ' "]) {
        const text = `${before}${sign}cmd|x`;
        expect(neutralise(text), JSON.stringify(text)).toBe(`'${text}`);
      }
    expect(neutralise('\tsum')).toBe("'\tsum");
  });

  it('gets one wherever a spreadsheet of another language begins a cell', () => {
    expect(neutralise('twill; =1+1')).toBe("twill;' =1+1");
    expect(neutralise('twill\t@x')).toBe("twill\t'@x");
    expect(neutralise('twill\r\n=x')).toBe("twill\r\n'=x");
  });

  it('numbers and lists of numbers stay as they are', () => {
    for (const text of ['-5', ' +3.2e-4', '-1; -2; 3', 'c. 3-4', '2;3', '-', 'a = b', 'x@y'])
      expect(neutralise(text)).toBe(text);
  });

  it('comes back as it was', () => {
    const part = fc.constantFrom(...SIGNS, "'", ' ', ';', '\t', '\r', '\n', 'a', '5', '\u200b', '.');
    fc.assert(
      fc.property(fc.array(part, { maxLength: 12 }), (parts) => {
        const text = parts.join('');
        expect(restoreText(neutralise(text))).toBe(text);
      }),
      { numRuns: 5000, seed: 7 },
    );
  });
});

import type { Found, Sign } from './token.ts';

const SIGNS: readonly (readonly [string, Sign])[] = [
  ['+/-', '+-'],
  ['+-', '+-'],
  ['±', '+-'],
  ['...', '-'],
  ['..', '-'],
  ['…', '-'],
  ['<=', '<'],
  ['=<', '<'],
  ['≤', '<'],
  ['⩽', '<'],
  ['<', '<'],
  ['>=', '>'],
  ['=>', '>'],
  ['≥', '>'],
  ['⩾', '>'],
  ['>', '>'],
  ['~', '~'],
  ['≈', '~'],
  ['≅', '~'],
  ['--', '--'],
  ['-', '-'],
  ['/', '/'],
  ['×', 'x'],
  ['✕', 'x'],
  ['*', 'x'],
  ['x', 'x'],
  [':', ':'],
  ['+', '+'],
  ['(', '('],
  ['[', '('],
  ['{', '('],
  [')', ')'],
  [']', ')'],
  ['}', ')'],
  [',', ','],
  ['、', ','],
  ['，', ','],
  [';', ';'],
  ['\n', ';'],
  ['&', '&'],
  ['†', '†'],
  ['‡', '†'],
  ['?', '?'],
  ['=', '='],
];

/** The sign at this place, the longest first. */
export function signAt(folded: string, at: number, tight: boolean): Found | null {
  for (const [text, sign] of SIGNS) {
    if (!folded.startsWith(text, at)) continue;
    if (text === 'x' && /\p{L}/u.test(folded[at + 1] ?? '')) continue;
    // A star at the end points to a footnote; between numbers it multiplies.
    if (text === '*' && folded.slice(at + 1).trim() === '') {
      return { tokens: [{ kind: 'sign', sign: '†', tight }], length: 1 };
    }
    return { tokens: [{ kind: 'sign', sign, tight }], length: text.length };
  }
  return null;
}

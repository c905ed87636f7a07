import { describe, expect, it } from 'vitest';
import { sourceFiles, withoutComments } from './source-files.ts';

/**
 * ECMAScript leaves the last digits of Math.log, Math.exp and their like to the engine (ECMA-262,
 * "Function Properties of the Math Object"); these are the ones that every engine computes exactly.
 */
const EXACT = new Set(
  'abs ceil clz32 floor fround imul max min round sign sqrt trunc E LN10 LN2 LOG10E LOG2E PI SQRT1_2 SQRT2'.split(
    ' ',
  ),
);

/** What differs between machines, engines or moments. */
const FORBIDDEN: readonly (readonly [name: string, pattern: RegExp])[] = [
  ['Math', /\bMath\s*\.\s*([A-Za-z0-9_]+)/g],
  ['Math by name', /\bMath\s*\[|[{,]\s*[a-z0-9]+\s*[^}]*}\s*=\s*Math\b/g],
  ['Date', /\bDate\b\s*[.(]|\bnew Date\b/g],
  ['Intl or locale', /\bIntl\b|\.toLocale[A-Z]|\.localeCompare\b/g],
  ['crypto or performance', /\bcrypto\b|\bperformance\b/g],
  ['a power with a changing exponent', /\*\*(?!\s*-?\d)/g],
];

function faultsOf(path: string, text: string): string[] {
  return FORBIDDEN.flatMap(([name, pattern]) =>
    [...text.matchAll(pattern)]
      .filter((match) => name !== 'Math' || !EXACT.has(match[1]))
      .map((match) => `${path}: ${name} (${match[0].trim()})`),
  );
}

describe('the same study gives the same bytes on every machine', () => {
  const computing = sourceFiles().filter(({ path }) =>
    /^(?:numerics|analyses|fragments|cells|sources|study)\//.test(path),
  );

  it('nothing that computes reaches for chance, clocks, locales or inexact functions', () => {
    expect(computing.length).toBeGreaterThan(80);
    expect(computing.flatMap(({ path, text }) => faultsOf(path, text))).toEqual([]);
  });

  it('the check itself sees each of them', () => {
    const bad = 'Math.log(x); Math["exp"](1); new Date(); a.localeCompare(b); x ** y; const { exp } = Math;';
    expect(faultsOf('x', bad).length).toBe(6);
    expect(faultsOf('x', withoutComments('// Math.log\nMath.sqrt(2) + x ** 2'))).toEqual([]);
  });
});

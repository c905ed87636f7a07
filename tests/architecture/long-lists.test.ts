import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';

/** A list of values handed over as arguments, for which an engine has room for some hundred thousand. */
const SPREADS = [
  /\bMath\s*\.\s*(?:max|min|hypot)\((?:[^()]|\([^()]*\))*\.\.\./g,
  /\.(?:push|unshift)\((?:[^()]|\([^()]*\))*?(?<![[{(,]\s*|\w\s*:\s*)\.\.\.|\.(?:push|unshift)\(\s*\.\.\./g,
  /\b(?:fromCharCode|fromCodePoint)\(\s*\.\.\./g,
  /\.(?:push|fromCharCode|max|min)\.apply\(/g,
];

/** Folders whose tables may be of any length. */
const LONG = /^(?:app|attributes|cells|cli|fragments|frames|numerics|report|sources|study)\//;

function spreadsOf(text: string): string[] {
  return SPREADS.flatMap((pattern) => [...text.matchAll(pattern)].map(([found]) => found));
}

describe('lists of any length', () => {
  const files = sourceFiles().filter(
    ({ path }) => LONG.test(path) && path !== 'numerics/foundation/lists.ts',
  );

  it('are never handed over as arguments: least, greatest and append of numerics/foundation/lists.ts do it', () => {
    expect(files.length).toBeGreaterThan(300);
    expect(files.flatMap(({ path, text }) => spreadsOf(text).map((found) => `${path}: ${found}`))).toEqual(
      [],
    );
  });

  it('the check itself sees them, and lets lists of lists pass', () => {
    const bad = [
      'Math.max(...values)',
      'Math.min(0, ...rows.map((row) => row.length))',
      'list.push(...more)',
      'a?.b.push(...of(x))',
      'String.fromCharCode(...bytes)',
      'list.push.apply(list, more)',
    ];
    for (const one of bad) expect(spreadsOf(one).length, one).toBeGreaterThan(0);
    for (const one of ['Math.max(a, b)', 'list.push([...a, b])', 'list.push({ ...a })', 'f(...a)'])
      expect(spreadsOf(one), one).toEqual([]);
  });
});

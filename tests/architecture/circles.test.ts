import { describe, expect, it } from 'vitest';
import { circlesOf } from './circles.ts';
import { sourceFiles } from './source-files.ts';

describe('no file imports itself by a detour, not even for a type', () => {
  it('in src', () => {
    const imports = new Map(sourceFiles().map((file) => [file.path, file.imports]));
    expect(circlesOf(imports)).toEqual([]);
  });

  it('the check itself sees circles, and only circles', () => {
    const circle = new Map([
      ['a', ['b']],
      ['b', ['c', 'd']],
      ['c', ['a']],
      ['d', []],
    ]);
    expect(circlesOf(circle)).toEqual([['a', 'b', 'c']]);
    const diamond = new Map([
      ['a', ['b', 'c']],
      ['b', ['d']],
      ['c', ['d']],
      ['d', []],
    ]);
    expect(circlesOf(diamond)).toEqual([]);
  });
});

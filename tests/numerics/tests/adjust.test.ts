import { describe, expect, it } from 'vitest';
import { adjustKnown, adjustP } from '../../../src/numerics/tests/adjust.ts';
import { reference } from '../../references/reference.ts';
import { expectClose } from '../close.ts';

const METHODS = ['holm', 'benjamini-hochberg', 'bonferroni'] as const;
const { families, tool, version } = reference<{
  readonly families: readonly (Record<(typeof METHODS)[number], number[]> & { readonly p: number[] })[];
}>('adjusted-p');

describe(`families of p values are adjusted as by ${tool} ${version}`, () => {
  it.each(METHODS)('%s', (method) => {
    expect(families.length).toBeGreaterThan(3);
    for (const family of families) {
      const adjusted = adjustP(family.p, method);
      expect(adjusted).toHaveLength(family.p.length);
      adjusted.forEach((p, place) => {
        expectClose(p, family[method][place], 1e-14);
      });
    }
  });
});

it('tests that could not be made are not counted, and keep their reason', () => {
  const why = { why: 'all values are equal' };
  const { p, holm } = families[0];
  const mixed = adjustKnown([why, ...p, why], 'holm');
  expect([mixed[0], mixed.at(-1)]).toEqual([why, why]);
  mixed.slice(1, -1).forEach((value, place) => {
    expectClose(value as number, holm[place], 1e-14);
  });
});

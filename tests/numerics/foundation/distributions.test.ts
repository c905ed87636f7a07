import { describe, expect, it } from 'vitest';
import * as distributions from '../../../src/numerics/foundation/distributions.ts';
import { reference } from '../../references/reference.ts';

type Case = [name: keyof typeof distributions, args: number[], expected: number];

const { values, tool, version } = reference<{ values: Case[] }>('distributions');

describe(`tails and quantiles equal ${tool} ${version} within 1e-10`, () => {
  it.each(values)('%s(%j)', (name, args, expected) => {
    // biome-ignore lint/performance/noDynamicNamespaceImportAccess: the reference names the functions
    const computed = (distributions[name] as (...numbers: number[]) => number)(...args);
    if (expected === 0) expect(Math.abs(computed)).toBeLessThan(1e-15);
    else expect(Math.abs(computed / expected - 1)).toBeLessThan(1e-10);
  });

  it('reaches far into the tail', () => {
    const smallest = Math.min(...values.map(([, , expected]) => Math.abs(expected)).filter((p) => p > 0));
    expect(smallest).toBeLessThan(1e-270);
  });
});

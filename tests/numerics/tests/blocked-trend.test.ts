import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { blockedSample } from '../../../src/numerics/tests/blocked-sample.ts';
import { blockedTrendTest } from '../../../src/numerics/tests/blocked-trend.ts';
import { jonckheereTerpstra } from '../../../src/numerics/tests/trend.ts';
import { expectClose } from '../close.ts';

const random = createRandom(7);
const single = (values: readonly number[], group: number) =>
  blockedSample(
    values,
    values.map((_, i) => `${group}.${i}`),
  );
const test = (groups: readonly (readonly number[])[], exactLimit = 300_000) => {
  const found = blockedTrendTest(groups.map(single), { random, relabellings: 1999, exactLimit });
  if ('why' in found) throw new Error(found.why);
  return found;
};

describe('a trend along groups, dealing items', () => {
  it('in perfect order is one of all orders, counted both ways (by hand: 6! / (2! 2! 2!) = 90)', () => {
    const found = test([
      [1, 2],
      [3, 4],
      [5, 6],
    ]);
    expect([found.method, found.relabellings]).toEqual(['exact', 90]);
    expectClose(found.p, 2 / 90, 1e-12);
  });
  it('has the standardised statistic of the plain test, ties included', () => {
    const groups = [
      [1, 2, 2, 5],
      [2, 3, 5, 5],
      [4, 5, 7],
    ];
    const plain = jonckheereTerpstra(groups);
    if ('why' in plain) throw new Error(plain.why);
    expectClose(test(groups).observed, Math.abs(plain.z), 1e-12);
  });
  it('agrees with the normal approximation where items have one reading and are many (to 0.03)', () => {
    const groups = [0, 0.4, 0.8].map((shift) => Array.from({ length: 25 }, () => random.next() * 4 + shift));
    const plain = jonckheereTerpstra(groups);
    if ('why' in plain) throw new Error(plain.why);
    expect(Math.abs(test(groups).p - plain.p)).toBeLessThan(0.03);
  });
  it('takes an item for one thing: fragments that repeat each other do not make it surer', () => {
    const groups = [
      [1, 2, 4],
      [3, 5, 6],
      [7, 8, 9],
    ];
    const five = groups.map((values, group) =>
      blockedSample(
        values.flatMap((value) => [value, value, value, value, value]),
        values.flatMap((_, i) => Array.from({ length: 5 }, () => `${group}.${i}`)),
      ),
    );
    const found = blockedTrendTest(five, { random });
    const repeated = jonckheereTerpstra(five.map(({ values }) => values));
    if ('why' in found || 'why' in repeated) throw new Error('no answer');
    expectClose(found.p, test(groups).p, 1e-12);
    expect(repeated.p).toBeLessThan(found.p / 10);
  });
  it('refuses in words: one group, equal values', () => {
    expect(blockedTrendTest([single([1, 2], 0)], { random })).toEqual({
      why: 'a trend needs two groups with values',
    });
    expect(blockedTrendTest([single([3, 3], 0), single([3], 1)], { random })).toEqual({
      why: 'all values are equal',
    });
  });
});

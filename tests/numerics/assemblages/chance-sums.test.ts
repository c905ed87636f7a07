import { describe, expect, it } from 'vitest';
import { centralCounts, chanceSums } from '../../../src/numerics/assemblages/chance-sums.ts';
import { reference } from '../../references/reference.ts';
import { expectClose } from '../close.ts';

interface Values {
  readonly even: readonly {
    readonly chances: readonly number[];
    readonly level: number;
    readonly pmf: readonly number[];
    readonly low: number;
    readonly high: number;
  }[];
  readonly sized: readonly {
    readonly sizes: readonly number[];
    readonly chances: readonly number[];
    readonly pmf: readonly number[];
  }[];
}
const { even, sized } = reference<Values>('time-counts');

describe('counts of things with chances of their own', () => {
  it.each(even)('are spread as scipy has them, of $chances.length', ({ chances, pmf, level, low, high }) => {
    const found = chanceSums(
      chances.map(() => 1),
      chances,
    );
    expect(found).toHaveLength(pmf.length);
    // Far into the tails scipy, which goes by Fourier, has nothing left but rounding.
    pmf.forEach((value, count) => {
      if (value > 1e-6) expectClose(found[count], value, 1e-8);
      else expect(found[count]).toBeLessThan(1e-5);
    });
    expect(centralCounts(found, level)).toEqual({ low, high });
  });

  it.each(sized)('go by their sizes where they come together', ({ sizes, chances, pmf }) => {
    const found = chanceSums(sizes, chances);
    expect(found).toHaveLength(pmf.length);
    pmf.forEach((value, count) => {
      expect(Math.abs(found[count] - value)).toBeLessThan(1e-14);
    });
  });

  it('leave no range where nothing is left to chance, and none to have', () => {
    expect(centralCounts(chanceSums([1, 1, 1], [1, 0, 1]), 0.95)).toEqual({ low: 2, high: 2 });
    expect(centralCounts(chanceSums([], []), 0.95)).toEqual({ low: 0, high: 0 });
  });

  it('have a range that holds at least as much as its level, and no narrower one on either side', () => {
    const chance = chanceSums(new Array<number>(30).fill(1), new Array<number>(30).fill(0.3));
    const { low, high } = centralCounts(chance, 0.95);
    const sum = (from: number, to: number) => chance.slice(from, to).reduce((a, b) => a + b, 0);
    expect(sum(low, high + 1)).toBeGreaterThanOrEqual(0.95);
    expect(sum(0, low + 1)).toBeGreaterThan(0.025);
    expect(sum(high, 31)).toBeGreaterThan(0.025);
  });

  it('of very many things are those of every sum reckoned with, though only the likely ones are', () => {
    const sizes = Array.from({ length: 3000 }, (_, at) => 1 + (at % 3));
    const chances = sizes.map((_, at) => ((at * 7919) % 1000) / 1000);
    const most = sizes.reduce((sum, size) => sum + size, 0);
    const plainly = new Float64Array(most + 1);
    plainly[0] = 1;
    sizes.forEach((size, at) => {
      for (let sum = most; sum >= 0; sum--)
        plainly[sum] =
          plainly[sum]! * (1 - chances[at]!) + (sum >= size ? plainly[sum - size]! * chances[at]! : 0);
    });
    const found = chanceSums(sizes, chances);
    expect(found).toHaveLength(plainly.length);
    expect(found.filter((chance) => chance > 0).length).toBeLessThan(most / 2);
    found.forEach((chance, sum) => {
      expect(Math.abs(chance - plainly[sum]!)).toBeLessThan(1e-15);
    });
    expect(centralCounts(found, 0.95)).toEqual(centralCounts(plainly, 0.95));
  });
});

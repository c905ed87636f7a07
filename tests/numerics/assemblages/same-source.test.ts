import { describe, expect, it } from 'vitest';
import { sameSource } from '../../../src/numerics/assemblages/same-source.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { chanceBeyond } from '../../../src/numerics/resampling/beyond-draws.ts';
import { shuffle } from '../../../src/numerics/resampling/permutation.ts';
import { reference } from '../../references/reference.ts';

interface ByR {
  readonly data: string;
  readonly table: readonly (readonly number[])[];
  readonly p: number;
}

/** Open data of R; every way to deal enumerated by R. */
const { tables } = reference<{ readonly tables: readonly ByR[] }>('same-source');

/** As many items as are counted, each of one kind. */
const itemsOf = (counts: readonly number[]) =>
  counts.flatMap((count, kind) =>
    Array.from({ length: count }, () => Float64Array.from(counts, (_, at) => (at === kind ? 1 : 0))),
  );

const asked = (table: readonly (readonly number[])[], relabellings = 1999) =>
  sameSource(itemsOf(table[0]!), itemsOf(table[1]!), table[0]!.length, 'brainerd-robinson', {
    random: createRandom(1),
    relabellings,
  });

describe('one source for two assemblages', () => {
  it.each(tables)('has the exact chance of all ways to deal: $data', ({ table, p }) => {
    const found = asked(table);
    expect(found).toMatchObject({ method: 'exact', isLeast: false });
    expect(Math.abs(found.p / p - 1)).toBeLessThan(1e-9);
  });

  it('is not said to be rarer than it is by the curve through random ways: beside the exact chance of 150 pairs', () => {
    const random = createRandom(9);
    const beside: number[] = [];
    for (let pair = 0; pair < 150; pair++) {
      const kinds = 3 + random.integer(2);
      const drawn = (usual: number) => {
        const counts = new Array<number>(kinds).fill(0);
        for (let item = 6 + random.integer(30); item > 0; item--)
          counts[random.next() < 0.75 ? usual : random.integer(kinds)]!++;
        return counts;
      };
      const [first, second] = [drawn(0), drawn(1)];
      const { p, method } = asked([first, second]);
      if (method !== 'exact' || p > 5e-4 || p < 1e-9) continue;
      const whole = Int32Array.from(
        [first, second].flatMap((counts) => counts.flatMap((n, kind) => new Array(n).fill(kind))),
      );
      const size = first.reduce((sum, n) => sum + n, 0);
      const unlike = (one: readonly number[]) =>
        one.reduce((sum, n, kind) => {
          const other = first[kind]! + second[kind]! - n;
          return sum + Math.abs(n / size - other / (whole.length - size));
        }, 0);
      const draws = Float64Array.from({ length: 999 }, () => {
        shuffle(whole, random);
        const counts = new Array<number>(kinds).fill(0);
        for (const kind of whole.subarray(0, size)) counts[kind]!++;
        return unlike(counts);
      });
      beside.push((chanceBeyond(unlike(first), draws) ?? Number.NaN) / p);
    }
    expect(beside.length).toBeGreaterThan(60);
    expect(Math.min(...beside)).toBeGreaterThan(0.5);
    // Safe, but of use: in the middle within some three hundred times of the chance itself.
    expect(beside.sort((a, b) => a - b)[beside.length >> 1]).toBeLessThan(300);
  });

  it('of many items wholly apart is far rarer than the random ways alone can say', () => {
    const apart = asked([
      [30, 30, 25, 20, 15, 0, 0, 0, 0, 0],
      [0, 0, 0, 0, 0, 30, 25, 30, 20, 15],
    ]);
    expect(apart.method).toBe('fitted');
    expect(apart.p).toBeLessThan(1e-6);
  });

  it('by random ways alone says that p could be less', () => {
    const alike = [
      [30, 31, 29, 28],
      [28, 30, 31, 29],
    ];
    expect(asked(alike)).toMatchObject({ method: 'resampled', isLeast: false, ways: 1999 });
    const [first, second] = [
      [30, 30, 30, 30, 0, 0, 0, 0],
      [0, 0, 0, 0, 30, 30, 30, 30],
    ];
    // The curve is not safe for the chi-square distance, and there is none of what is present or not.
    for (const coefficient of ['jaccard', 'chi-square'] as const) {
      const settings = { random: createRandom(2), relabellings: 1999 };
      expect(sameSource(itemsOf(first!), itemsOf(second!), 8, coefficient, settings)).toMatchObject({
        method: 'resampled',
        isLeast: true,
        p: 1 / 2000,
      });
    }
    expect(asked([first!, second!])).toMatchObject({ method: 'fitted', isLeast: false });
  });
});

describe('the chance of what none of the draws reached', () => {
  it('is ten times the tail of the gamma curve with their mean, spread and skewness', () => {
    // Quantiles of the exponential distribution: mean 1, sd 1, skewness 2, so that the tail at 12 is exp(-12).
    const draws = Float64Array.from({ length: 200_000 }, (_, i) => -Math.log(1 - (i + 0.5) / 200_000));
    expect(chanceBeyond(12, draws)! / (10 * Math.exp(-12))).toBeCloseTo(1, 1);
  });

  it('is of the normal curve where they are not skewed, and none where they do not vary', () => {
    const even = Float64Array.from({ length: 101 }, (_, i) => i - 50);
    // sd √850; four of them: 3.167e-5 beyond (tables of the normal distribution).
    expect(chanceBeyond(4 * Math.sqrt(850), even)! / 3.167e-4).toBeCloseTo(1, 2);
    expect(chanceBeyond(3, [1, 1, 1])).toBeNull();
  });
});

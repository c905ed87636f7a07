import { describe, expect, it } from 'vitest';
import { quantileSorted } from '../../../src/numerics/describing/quantile.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { jackknifeAcceleration } from '../../../src/numerics/resampling/acceleration.ts';
import { bootstrapInterval } from '../../../src/numerics/resampling/bootstrap.ts';
import { reference } from '../../references/reference.ts';
import { available } from '../close.ts';

const { cases, tool, version } = reference<{
  cases: Record<
    string,
    { x: number[]; statistic: 'mean' | 'variance' | 'median'; low: number; high: number; sd: number }
  >;
}>('bootstrap');

const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const statistics = {
  mean,
  variance: (values: number[]) =>
    values.reduce((sum, v) => sum + (v - mean(values)) ** 2, 0) / (values.length - 1),
  median: (values: number[]) => quantileSorted(Float64Array.from(values).sort(), 0.5),
};

describe(`BCa limits come to those of ${tool} ${version}`, () => {
  // Both sides resample: with 50,000 and 20,000 draws an end wanders by some 2 % of the standard error.
  it.each(Object.entries(cases).filter(([, { statistic }]) => statistic !== 'median'))(
    '%s',
    (_, expected) => {
      const found = available(
        bootstrapInterval(
          [expected.x.length],
          ([choice]) => statistics[expected.statistic](Array.from(choice, (i) => expected.x[i])),
          {
            random: createRandom(3),
            resamples: 20_000,
          },
        ),
      );
      expect(found.method).toBe('BCa');
      expect(Math.abs(found.low - expected.low)).toBeLessThan(0.06 * expected.sd);
      expect(Math.abs(found.high - expected.high)).toBeLessThan(0.06 * expected.sd);
    },
  );

  // A median takes few values, so an end may step to the next reading.
  it('precip: the median, within one reading', () => {
    const { x, low, high } = cases.precip;
    const found = available(
      bootstrapInterval([x.length], ([choice]) => statistics.median(Array.from(choice, (i) => x[i])), {
        random: createRandom(3),
      }),
    );
    expect(Math.abs(found.low - low)).toBeLessThan(1);
    expect(Math.abs(found.high - high)).toBeLessThan(1);
  });
});

describe('resampling', () => {
  const blocks = [[1, 2, 3], [10], [11, 12], [4, 4, 5, 5]];
  const pooled = ([choice]: readonly Int32Array[]) => mean(Array.from(choice, (i) => blocks[i]).flat());

  it('moves the fragments of an item together', () => {
    const twins = [
      [0, 100],
      [100, 0],
      [50, 50],
    ];
    const seen = new Set<number>();
    bootstrapInterval(
      [3],
      ([choice]) => {
        const value = mean(Array.from(choice, (i) => twins[i]).flat());
        seen.add(value);
        return value;
      },
      { random: createRandom(5), resamples: 200 },
    );
    // Every item has mean 50, so whatever items are drawn, so has the whole; single fragments would wander.
    expect([...seen]).toEqual([50]);
  });

  it('gives the same interval for the same seed and another for another', () => {
    const at = (seed: number) =>
      bootstrapInterval([blocks.length], pooled, { random: createRandom(seed), resamples: 200 });
    expect(at(1)).toEqual(at(1));
    expect(at(1)).not.toEqual(at(2));
  });

  it('resamples each group within itself', () => {
    bootstrapInterval(
      [2, 3],
      (choice) => {
        expect(choice.map((stratum) => stratum.length).every((length, i) => length <= [2, 3][i])).toBe(true);
        return choice[0].length + choice[1][0];
      },
      { random: createRandom(1), resamples: 50 },
    );
  });

  it('says why there is no interval', () => {
    expect(bootstrapInterval([1], () => 1, { random: createRandom(1) })).toEqual({
      why: 'an interval by resampling needs at least 2 items',
    });
    expect(bootstrapInterval([5], () => Number.NaN, { random: createRandom(1) })).toEqual({
      why: 'the statistic itself has no value',
    });
    expect(bootstrapInterval([5, 5], () => 1, { random: createRandom(1) })).toEqual({
      why: 'nearly every draw of the items gives the same value, so drawing again cannot tell its limits',
    });
  });
});

describe('the acceleration', () => {
  // Of a mean it is the sum of cubes over six times the sum of squares to the 3/2 (Efron & Tibshirani 1993, 14.15).
  const closed = (x: Float64Array) => {
    const middle = mean([...x]);
    let squares = 0;
    let cubes = 0;
    for (const value of x) {
      squares += (value - middle) ** 2;
      cubes += (value - middle) ** 3;
    }
    return cubes / (6 * squares ** 1.5);
  };
  const found = (x: Float64Array) => {
    let asked = 0;
    const value = jackknifeAcceleration(
      [Int32Array.from(x, (_, i) => i)],
      ([choice]) => {
        asked++;
        return mean(Array.from(choice!, (i) => x[i]!));
      },
      createRandom(8),
    );
    return { value: value!, asked };
  };
  const skewed = (n: number) => {
    const random = createRandom(21);
    return Float64Array.from({ length: n }, () => random.next() ** 6).sort();
  };

  it('is that of each left out in turn', () => {
    const x = skewed(400);
    expect(found(x).value).toBeCloseTo(closed(x), 10);
    expect(found(x).asked).toBe(400);
  });

  it('of many is found by groups, in whichever order they come, without asking of each', () => {
    const x = skewed(6000);
    const { value, asked } = found(x);
    expect(asked).toBe(1000);
    // The skewness of 1,000 sums wanders by sqrt(6 / 1000); a sixth of that over sqrt(1000), three times.
    expect(Math.abs(value - closed(x))).toBeLessThan((3 * Math.sqrt(6 / 1000)) / (6 * Math.sqrt(1000)));
    expect(closed(x)).toBeGreaterThan(0.003);
  });
});

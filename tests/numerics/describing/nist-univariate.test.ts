import { describe, expect, it } from 'vitest';
import { mean, standardDeviation } from '../../../src/numerics/describing/moments.ts';
import { reference } from '../../references/reference.ts';
import { available } from '../close.ts';

/**
 * NIST/ITL Statistical Reference Datasets, univariate summary statistics: nine sets with certified
 * mean and standard deviation. NumAcc1 to 4 are made by the rule that their file heads give.
 */
const { sets: official } = reference<{
  sets: Record<string, { mean: string; sd: string; values?: number[]; digits?: string }>;
}>('nist/univariate');

const alternating = (first: number, low: number, high: number) => [
  first,
  ...Array.from({ length: 500 }, () => [low, high]).flat(),
];

/** `held`: digits that binary64 leaves when the decimal readings are stored; NumAcc3 and 4 lose the rest then. */
const sets: { name: string; values: readonly number[]; mean: number; sd: number; held: number }[] = [
  ...Object.entries(official).map(([name, { mean: m, sd, values, digits }]) => ({
    name,
    values: values ?? Array.from(digits as string, Number),
    mean: Number(m),
    sd: Number(sd),
    held: 13,
  })),
  { name: 'NumAcc1', values: [10000001, 10000003, 10000002], mean: 10000002, sd: 1, held: 13 },
  { name: 'NumAcc2', values: alternating(1.2, 1.1, 1.3), mean: 1.2, sd: 0.1, held: 13 },
  {
    name: 'NumAcc3',
    values: alternating(1000000.2, 1000000.1, 1000000.3),
    mean: 1000000.2,
    sd: 0.1,
    held: 9,
  },
  {
    name: 'NumAcc4',
    values: alternating(10000000.2, 10000000.1, 10000000.3),
    mean: 10000000.2,
    sd: 0.1,
    held: 8,
  },
];

/** Logarithmic relative error: how many leading digits agree, 15 at most. */
const digits = (computed: number, certified: number) =>
  Math.min(15, -Math.log10(Math.max(Math.abs(computed - certified) / Math.abs(certified), 1e-15)));

describe('certified univariate sets of NIST StRD', () => {
  it('prints its logarithmic relative errors', () => {
    console.table(
      sets.map(({ name, values, mean: m, sd }) => ({
        set: name,
        n: values.length,
        'digits of the mean': Number(digits(available(mean(values)), m).toFixed(1)),
        'digits of the standard deviation': Number(
          digits(available(standardDeviation(values)), sd).toFixed(1),
        ),
      })),
    );
    expect(sets).toHaveLength(9);
    expect(sets.map(({ values }) => values.length)).toEqual([5000, 218, 200, 50, 100, 3, 1001, 1001, 1001]);
  });

  it.each(sets)('$name: mean to 13 digits, standard deviation to $held', ({ values, mean: m, sd, held }) => {
    expect(digits(available(mean(values)), m)).toBeGreaterThanOrEqual(13);
    expect(digits(available(standardDeviation(values)), sd)).toBeGreaterThanOrEqual(held);
  });
});

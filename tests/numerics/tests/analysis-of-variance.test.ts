import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { oneWayAnova } from '../../../src/numerics/tests/analysis-of-variance.ts';
import { available } from '../close.ts';

/**
 * NIST/ITL Statistical Reference Datasets, one-way analysis of variance: eleven sets with certified
 * values (itl.nist.gov/div898/strd). SiRstv and AtmWtAg are the official files; the nine SmLs sets are
 * made by the rule that their file heads give.
 */
interface NistSet {
  readonly name: string;
  readonly groups: number[][];
  readonly certified: { between: number; within: number; f: number };
}

const official = (name: string): number[][] => {
  const lines = readFileSync(new URL(`../../references/nist/${name}.dat`, import.meta.url), 'utf8')
    .split(/\r?\n/)
    .slice(60);
  const groups = new Map<string, number[]>();
  for (const line of lines) {
    const [label, value] = line.trim().split(/\s+/);
    if (value === undefined) continue;
    groups.set(label, [...(groups.get(label) ?? []), Number(value)]);
  }
  return [...groups.values()];
};

/** Nine groups: the base, then base - 0.1 and base + 0.1 in turn; the offset is added in decimal. */
const smLs = (size: number, offset: string): number[][] =>
  [4, 3, 5, 3, 5, 3, 5, 3, 5].map((tenths) => {
    const decimal = (t: number) => Number(`${offset}.${t}`);
    return Array.from({ length: size }, (_, i) =>
      decimal(i === 0 ? tenths : i % 2 === 1 ? tenths - 1 : tenths + 1),
    );
  });

const sets: NistSet[] = [
  {
    name: 'SiRstv',
    groups: official('SiRstv'),
    certified: { between: 5.11462616e-2, within: 2.1663656e-1, f: 1.18046237440255 },
  },
  {
    name: 'AtmWtAg',
    groups: official('AtmWtAg'),
    certified: { between: 3.638341875e-9, within: 1.04951729166667e-8, f: 15.946733567793 },
  },
  ...[
    ['01', 21, '1'],
    ['02', 201, '1'],
    ['03', 2001, '1'],
    ['04', 21, '1000000'],
    ['05', 201, '1000000'],
    ['06', 2001, '1000000'],
    ['07', 21, '1000000000000'],
    ['08', 201, '1000000000000'],
    ['09', 2001, '1000000000000'],
  ].map(([number, size, offset]) => {
    const certified = {
      21: { between: 1.68, within: 1.8, f: 21 },
      201: { between: 16.08, within: 18, f: 201 },
      2001: { between: 160.08, within: 180, f: 2001 },
    }[size as 21 | 201 | 2001];
    return { name: `SmLs${number}`, groups: smLs(size as number, offset as string), certified };
  }),
];

/** F in exact rational arithmetic on the doubles as they are stored, rounded once at the end. */
function exactF(groups: readonly number[][]): number {
  // Every double is a whole number of 2^-1074ths; 2^-80 is fine enough for all of these.
  const scale = 2n ** 80n;
  const whole = (value: number): bigint => {
    const mantissa = BigInt(Math.trunc(value * 2 ** 10));
    const rest = BigInt((value * 2 ** 10 - Math.trunc(value * 2 ** 10)) * 2 ** 70);
    return mantissa * 2n ** 70n + rest;
  };
  const data = groups.map((group) => group.map(whole));
  const sum = (values: bigint[]) => values.reduce((total, value) => total + value, 0n);
  const squares = (values: bigint[]) => values.reduce((total, value) => total + value * value, 0n);
  const n = BigInt(data.flat().length);
  const k = BigInt(data.length);
  // All sums of squares over the common denominator n * product of sizes (sizes are equal here).
  const size = BigInt(data[0].length);
  const grand = sum(data.flat());
  const groupPart = data.reduce((total, group) => total + sum(group) * sum(group), 0n);
  const between = groupPart * n - grand * grand * size;
  const within = (squares(data.flat()) * size - groupPart) * n;
  const numerator = between * (n - k);
  const denominator = within * (k - 1n);
  return Number((numerator * scale) / denominator) / Number(scale);
}

const digits = (computed: number, expected: number) =>
  Math.min(15, -Math.log10(Math.max(Math.abs(computed - expected) / Math.abs(expected), 1e-16)));

describe('analysis of variance against the certified sets of NIST StRD', () => {
  const table = sets.map(({ name, groups, certified }) => {
    const { statistic } = available(oneWayAnova(groups));
    return {
      set: name,
      F: statistic,
      'digits against exact arithmetic': Number(digits(statistic, exactF(groups)).toFixed(1)),
      'digits against the certified value': Number(digits(statistic, certified.f).toFixed(1)),
    };
  });

  it('prints its logarithmic relative errors', () => {
    console.table(table);
    expect(table).toHaveLength(11);
  });

  it.each(sets)('$name: F has 12 digits of the exact one on the stored doubles', ({ groups }) => {
    expect(digits(available(oneWayAnova(groups)).statistic, exactF(groups))).toBeGreaterThanOrEqual(12);
  });

  // The decimal readings of the others cannot be held in binary64, so their F on the stored doubles differs.
  it.each(sets.filter(({ name }) => /SiRstv|SmLs0[123]/.test(name)))(
    '$name: the certified table to 11 digits',
    ({ groups, certified }) => {
      const table = available(oneWayAnova(groups));
      expect(digits(table.statistic, certified.f)).toBeGreaterThan(11);
      expect(digits(table.sumOfSquaresBetween, certified.between)).toBeGreaterThan(11);
      expect(digits(table.sumOfSquaresWithin, certified.within)).toBeGreaterThan(11);
    },
  );
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assemblageSimilarity } from '../../../src/numerics/assemblages/similarity.ts';
import {
  fisherUpper,
  normalTwoSided,
  studentQuantileUpper,
  studentTwoSided,
} from '../../../src/numerics/foundation/distributions.ts';
import type { Row } from './claims.ts';
import { average, neverCannotBe, print, rounding, runs, SHARE, spread, tried } from './print.ts';

/** The quantities and tests that the other file of properties leaves out, under any rounding. */

const modes = fc.array(rounding, { minLength: 30, maxLength: 30 });
const places = fc.integer({ min: 0, max: 3 });
const numbers = (least: number) =>
  fc.array(fc.integer({ min: 1, max: 400 }), { minLength: least, maxLength: 14 });
const median = (values: readonly number[]) => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return Number.isInteger(middle) ? (sorted[middle - 1]! + sorted[middle]!) / 2 : sorted[Math.floor(middle)]!;
};
/** "p < .05", "n.s." or the number. */
const printP = (p: number, decimals: number, mode: 'half-up' | 'half-even' | 'truncated', how: number) => {
  if (how === 0 && p < 0.05) return 'p < .05';
  if (how === 0 && p > 0.05) return 'n.s.';
  return print(p, decimals, mode);
};

describe('figures of a correct computation never "cannot be"', () => {
  it('a column of readings with its mean, total, median and ends; spacing and its count per cm', () => {
    fc.assert(
      fc.property(numbers(2), places, fc.constantFrom(1, 10), modes, (steps, decimals, perUnit, mode) => {
        const spacing = steps.map((step) => step / perUnit);
        const density = spacing.map((value) => 10 / value);
        const of = (attribute: string, values: readonly number[], from: number): Row[] => [
          ...values.map(
            (value, i): Row => ({
              quantity: 'reading',
              attribute,
              select: `item in ${i}`,
              printed: print(value, decimals, mode[(from + i) % 30]!),
            }),
          ),
          ...(
            [
              ['mean', average(values)],
              ['total', average(values) * values.length],
              ['median', median(values)],
              ['min', Math.min(...values)],
              ['max', Math.max(...values)],
            ] as const
          ).map(
            ([quantity, value], i): Row => ({
              quantity,
              attribute,
              printed: print(value, decimals, mode[(from + i + 7) % 30]!),
            }),
          ),
          { quantity: 'n', attribute, printed: String(values.length) },
        ];
        neverCannotBe([...of('rowSpacing', spacing, 0), ...of('density2', density, 3)]);
        // The readings of one sample, without selections of their own.
        neverCannotBe(of('rowSpacing', spacing, 5).map((row) => ({ ...row, select: '' })));
      }),
      { numRuns: runs(500), seed: 11 },
    );
  });

  it('ratios, intervals of means, correlations with n, df and p', () => {
    fc.assert(
      fc.property(
        numbers(3),
        numbers(3),
        places,
        modes,
        fc.constantFrom(0.9, 0.95, 0.99),
        fc.nat(2),
        (a, b, decimals, mode, level, how) => {
          const n = a.length;
          const sd = spread(a, n - 1);
          const half = (studentQuantileUpper((1 - level) / 2, n - 1) * sd) / Math.sqrt(n);
          const [low, high] = [average(a) - half, average(a) + half];
          const x = a.slice(0, Math.min(n, b.length));
          const y = b.slice(0, x.length);
          const product = x.reduce((sum, value, i) => sum + (value - average(x)) * (y[i]! - average(y)), 0);
          const scale = spread(x, 1) * spread(y, 1);
          const r = scale === 0 ? 0 : Math.max(-1, Math.min(1, product / scale));
          const df = x.length - 2;
          const p = Math.abs(r) === 1 ? 0 : studentTwoSided(r * Math.sqrt(df / (1 - r * r)), df);
          neverCannotBe([
            { quantity: 'n', select: 'site in A', printed: String(n) },
            { quantity: 'mean', select: 'site in A', printed: print(average(a), decimals, mode[0]!) },
            { quantity: 'sd', select: 'site in A', printed: print(sd, decimals, mode[1]!) },
            { quantity: 'mean', select: 'site in B', printed: print(average(b), decimals, mode[2]!) },
            {
              quantity: 'ratio',
              select: 'site in A',
              versus: 'site in B',
              printed: print(average(a) / average(b), decimals, mode[3]!),
            },
            ...(low > 0 && how === 0
              ? [
                  {
                    quantity: 'interval',
                    select: 'site in A',
                    printed: `${print(low, decimals, mode[4]!)} to ${print(high, decimals, mode[5]!)}`,
                  } as Row,
                ]
              : [
                  { quantity: 'low', select: 'site in A', printed: print(low, decimals, mode[4]!) } as Row,
                  { quantity: 'high', select: 'site in A', printed: print(high, decimals, mode[5]!) } as Row,
                ]),
            ...(scale === 0
              ? []
              : ([
                  { set: 'r', quantity: 'correlation', printed: print(r, decimals, mode[6]!) },
                  { set: 'r', quantity: 'n', printed: String(x.length) },
                  { set: 'r', quantity: 'df', test: 'r', printed: String(df) },
                  { set: 'r', quantity: 'p', test: 'r', printed: printP(p, 3, mode[7]!, how) },
                ] as Row[])),
          ]);
        },
      ),
      { numRuns: runs(1200), seed: 12 },
    );
  });

  it('z, F with whole and broken degrees of freedom, U with and without ties, each with its p', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -5000, max: 5000 }),
        fc.integer({ min: 0, max: 20000 }),
        fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 20, max: 4000 })),
        numbers(2),
        numbers(2),
        fc.integer({ min: 1, max: 3 }),
        modes,
        fc.nat(2),
        (thousand, f, [df1, tenths], a, b, decimals, mode, how) => {
          const z = thousand / 1000;
          const ratio = f / 1000;
          const df2 = how === 1 ? Math.ceil(tenths / 10) : tenths / 10;
          const u = a.reduce(
            (sum, value) =>
              sum + b.reduce((all, other) => all + (value > other ? 1 : value === other ? 0.5 : 0), 0),
            0,
          );
          const sd = Math.sqrt((a.length * b.length * (a.length + b.length + 1)) / 12);
          const pU = normalTwoSided(Math.abs(u - (a.length * b.length) / 2) / sd);
          neverCannotBe([
            { set: 'z', quantity: 'statistic', test: 'z', printed: print(z, decimals, mode[0]!) },
            {
              set: 'z',
              quantity: 'p',
              test: 'z',
              printed: printP(normalTwoSided(Math.abs(z)), decimals, mode[1]!, how),
            },
            { set: 'f', quantity: 'statistic', test: 'F', printed: print(ratio, decimals, mode[2]!) },
            { set: 'f', quantity: 'df', test: 'F', printed: `${df1}, ${df2}` },
            {
              set: 'f',
              quantity: 'p',
              test: 'F',
              printed: printP(fisherUpper(ratio, df1, df2), decimals, mode[3]!, how),
            },
            { set: 'u', quantity: 'statistic', test: 'U', printed: String(u) },
            { set: 'u', quantity: 'n', select: 'site in A', printed: String(a.length) },
            { set: 'u', quantity: 'n', select: 'site in B', printed: String(b.length) },
            { set: 'u', quantity: 'p', test: 'U', printed: printP(pU, decimals, mode[4]!, how) },
          ]);
        },
      ),
      { numRuns: runs(1200), seed: 13 },
    );
  });

  const line = fc.array(fc.integer({ min: 0, max: 25 }), { minLength: 4, maxLength: 4 });

  it('every coefficient and index, from printed counts; percentages that add up only before rounding', () => {
    fc.assert(
      fc.property(line, line, places, modes, (first, second, decimals, mode) => {
        const [a, b] = [first, second].map((counts) => counts.map((count, i) => count + (i === 0 ? 1 : 0)));
        const sum = (counts: readonly number[]) => counts.reduce((all, count) => all + count, 0);
        const csv = (cells: (counts: readonly number[]) => readonly string[]) =>
          `site,w,x,y,z,total\nA,${cells(a!).join(',')}\nB,${cells(b!).join(',')}\n`;
        const shares = a!.map((count) => count / sum(a!));
        const squares = shares.reduce((all, share) => all + share * share, 0);
        const entropy = -shares.reduce((all, share) => all + (share > 0 ? share * Math.log(share) : 0), 0);
        const kinds = shares.filter((share) => share > 0).length;
        const n = sum(a!);
        const likeness = (['brainerd-robinson', 'bray-curtis', 'morisita-horn', 'jaccard'] as const).map(
          (test) => [test, assemblageSimilarity([a!, b!], test).values[0]!] as const,
        );
        const indices = [
          ['shannon', entropy],
          ['shannon', entropy / Math.LN2],
          ['simpson', 1 - squares],
          ['simpson', 1 / squares],
          ...(n > 1 ? [['simpson', ((1 - squares) * n) / (n - 1)] as const] : []),
          ['richness', kinds],
          ...(kinds > 1 ? [['evenness', entropy / Math.log(kinds)] as const] : []),
        ] as readonly (readonly [string, number])[];
        neverCannotBe(
          ['counts', 'shares'].flatMap((set): Row[] => [
            ...likeness
              .filter(([, value]) => !Number.isNaN(value))
              .map(
                ([test, value], i): Row => ({
                  quantity: 'similarity',
                  set,
                  test,
                  select: 'A',
                  versus: 'B',
                  printed: print(value, decimals, mode[i]!),
                }),
              ),
            ...indices
              .filter(([test]) => set === 'counts' || test !== 'simpson' || n > 1)
              .filter(([test, value]) => set === 'counts' || test !== 'simpson' || value !== indices[4]?.[1])
              .map(
                ([test, value], i): Row => ({
                  quantity: 'diversity',
                  set,
                  test: test as Row['test'] & string,
                  select: 'A',
                  printed: print(value, decimals, mode[i + 5]!),
                }),
              ),
          ]),
          {
            'counts.csv': csv((counts) => [...counts.map(String), String(sum(counts))]),
            'shares.csv': csv((counts) => [
              ...counts.map((count, i) => `${print((100 * count) / sum(counts), decimals, mode[i + 15]!)} %`),
              '100 %',
            ]),
          },
        );
      }),
      { numRuns: runs(700), seed: 14 },
    );
  });

  it("Fisher's exact p of a printed table, two-sided and of either tail", () => {
    const choose = (n: number, k: number): number => {
      let product = 1;
      for (let i = 1; i <= k; i++) product = (product * (n - k + i)) / i;
      return product;
    };
    const cells = fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(cells, places, rounding, fc.nat(2), ([a, b, c, d], decimals, mode, tail) => {
        const [top, left, n] = [a! + b!, a! + c!, a! + b! + c! + d!];
        fc.pre(top > 0 && left > 0 && top < n && left < n);
        const chance = (k: number) => (choose(left, k) * choose(n - left, top - k)) / choose(n, top);
        const all = Array.from({ length: n + 1 }, (_, k) => k).filter(
          (k) => k <= top && k <= left && top - k <= n - left,
        );
        const own = chance(a!);
        const wanted = [
          (k: number) => chance(k) <= own * (1 + 1e-7),
          (k: number) => k <= a!,
          (k: number) => k >= a!,
        ][tail]!;
        const p = Math.min(
          1,
          all.filter(wanted).reduce((sum, k) => sum + chance(k), 0),
        );
        neverCannotBe([{ quantity: 'p', test: 'fisher', set: 't', printed: print(p, decimals, mode) }], {
          't.csv': `site,x,y\nA,${a},${b}\nB,${c},${d}\n`,
        });
      }),
      { numRuns: runs(800), seed: 15 },
    );
  });

  it('shares and variation as parts of one, and approximate or bounded figures', () => {
    fc.assert(
      fc.property(numbers(2), fc.integer({ min: 1, max: 60 }), modes, (values, count, mode) => {
        const n = count + values.length;
        const variation = spread(values, values.length - 1) / average(values);
        neverCannotBe([
          { quantity: 'n', printed: String(n) },
          {
            quantity: 'count',
            counted: 'fibre in wool',
            printed: `${count} (${print((100 * count) / n, 0, mode[0]!)} %)`,
          },
          {
            quantity: 'share',
            counted: 'fibre in wool',
            set: 'bare',
            printed: print(count / n, 2, mode[1]!),
          },
          { quantity: 'n', set: 'bare', printed: String(n) },
          { quantity: 'count', set: 'bare', counted: 'fibre in wool', printed: String(count) },
          { quantity: 'mean', set: 'm', printed: print(average(values), 2, mode[2]!) },
          { quantity: 'sd', set: 'm', printed: print(spread(values, values.length - 1), 2, mode[3]!) },
          ...(variation <= 0.99
            ? [{ quantity: 'cv', set: 'm', printed: print(variation, 2, mode[4]!) } as Row]
            : []),
          { quantity: 'min', set: 'm', printed: `> ${Math.floor(Math.min(...values)) - 1}` },
          { quantity: 'max', set: 'm', printed: `c. ${Math.max(...values)}` },
        ]);
      }),
      { numRuns: runs(600), seed: 16 },
    );
  });

  it('every remaining quantity and test was tried', () => {
    console.info(`cases: ${tried.cases}, printed figures: ${tried.figures}`);
    expect([...tried.quantities]).toEqual(
      expect.arrayContaining([
        'reading',
        'total',
        'ratio',
        'correlation',
        'low',
        'high',
        'similarity',
        'diversity',
      ]),
    );
    expect([...tried.methods]).toEqual(
      expect.arrayContaining([
        'z',
        'F',
        'r',
        'U',
        'fisher',
        'bray-curtis',
        'morisita-horn',
        'jaccard',
        'simpson',
        'evenness',
        'richness',
      ]),
    );
    expect(tried.figures).toBeGreaterThanOrEqual(50_000 * SHARE);
  });
});

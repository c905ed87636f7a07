import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diversity } from '../../../src/numerics/assemblages/diversity.ts';
import { quantile } from '../../../src/numerics/describing/quantile.ts';
import {
  chiSquaredUpper,
  fisherUpper,
  studentTwoSided,
} from '../../../src/numerics/foundation/distributions.ts';
import type { Row } from './claims.ts';
import { average, neverCannotBe, print, rounding, runs, SHARE, spread, tried } from './print.ts';

const places = fc.integer({ min: 0, max: 3 });

/** Figures that any correct computation prints, under any rounding, are never said to be impossible. */
const at = (values: readonly number[], share: number) => quantile(values, share) as number;

describe('figures of a correct computation never "cannot be"', () => {
  const sample = fc.record({
    perUnit: fc.constantFrom(1, 2, 10),
    steps: fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 25 }),
    decimals: places,
    modes: fc.array(rounding, { minLength: 10, maxLength: 10 }),
    population: fc.boolean(),
  });

  it('samples: mean, deviation, error, variation, order', () => {
    fc.assert(
      fc.property(sample, ({ perUnit, steps, decimals, modes, population }) => {
        const values = steps.map((step) => step / perUnit);
        const n = values.length;
        const sd = spread(values, population ? n : n - 1);
        const step = String(1 / perUnit);
        const figures: [Row['quantity'] & string, number][] = [
          ['mean', average(values)],
          ['sd', sd],
          ['se', spread(values, n - 1) / Math.sqrt(n)],
          ['median', at(values, 0.5)],
          ['q1', at(values, 0.25)],
          ['q3', at(values, 0.75)],
          ['min', Math.min(...values)],
          ['max', Math.max(...values)],
          ['range', Math.max(...values) - Math.min(...values)],
        ];
        if (average(values) > 0.5) figures.push(['cv', (100 * sd) / average(values)]);
        neverCannotBe([
          { quantity: 'n', printed: String(n) },
          ...figures.map(
            ([quantity, value], i): Row => ({
              quantity,
              step,
              printed: `${print(value, decimals, modes[i])}${quantity === 'cv' ? ' %' : ''}`,
            }),
          ),
        ]);
      }),
      { numRuns: runs(2500), seed: 1 },
    );
  });

  const counts = fc.array(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 3, maxLength: 3 }), {
    minLength: 2,
    maxLength: 4,
  });

  it('counts, shares and totals; tables, their chi-squared, likeness and diversity', () => {
    fc.assert(
      fc.property(
        counts,
        places,
        fc.array(rounding, { minLength: 16, maxLength: 16 }),
        (lines, decimals, modes) => {
          const rows = lines.map((line) => line.map((count) => count + 1));
          const sum = (list: readonly number[]) => list.reduce((all, each) => all + each, 0);
          const heads = ['x', 'y', 'z'];
          const csv = [
            'site,x,y,z,total',
            ...rows.map((line, i) => `A${i},${line.join(',')},${sum(line)}`),
            `total,${heads.map((_, j) => sum(rows.map((line) => line[j]))).join(',')},${sum(rows.flat())}`,
          ].join('\n');
          const percent = rows.map((line, i) =>
            line.map((count, j) => print((100 * count) / sum(line), decimals, modes[3 * i + j])),
          );
          const shares = [
            'site,x,y,z',
            ...percent.map((line, i) => `A${i},${line.map((each) => `${each} %`).join(',')}`),
          ].join('\n');
          const total = sum(rows.flat());
          let chi = 0;
          rows.forEach((line) => {
            line.forEach((count, j) => {
              const expected = (sum(line) * sum(rows.map((other) => other[j]))) / total;
              chi += ((count - expected) * (count - expected)) / expected;
            });
          });
          const df = (rows.length - 1) * 2;
          const [a, b] = rows;
          const apart = sum(a.map((count, j) => Math.abs(count / sum(a) - b[j] / sum(b))));
          const index = diversity(a);
          neverCannotBe(
            [
              { quantity: 'n', printed: String(sum(a)) },
              ...a.flatMap((count, j): Row[] => [
                { quantity: 'count', printed: String(count), counted: `fibre in ${heads[j]}` },
                { quantity: 'share', printed: `${percent[0][j]} %`, counted: `fibre in ${heads[j]}` },
              ]),
              { quantity: 'total', printed: String(sum(a)) },
              {
                quantity: 'statistic',
                test: 'chi-squared',
                set: 'counts',
                printed: print(chi, decimals, modes[12]),
              },
              { quantity: 'df', test: 'chi-squared', set: 'counts', printed: String(df) },
              {
                quantity: 'p',
                test: 'chi-squared',
                set: 'counts',
                printed: print(chiSquaredUpper(chi, df), decimals, modes[13]),
              },
              ...['counts', 'shares'].flatMap((set): Row[] => [
                {
                  quantity: 'similarity',
                  set,
                  select: 'A0',
                  versus: 'A1',
                  printed: print(200 - 100 * apart, decimals, modes[14]),
                },
                ...('why' in index
                  ? []
                  : [
                      {
                        quantity: 'diversity',
                        set,
                        select: 'A0',
                        test: 'shannon',
                        printed: print(index.shannon, decimals, modes[15]),
                      } as Row,
                    ]),
              ]),
            ],
            { 'counts.csv': csv, 'shares.csv': shares },
          );
        },
      ),
      { numRuns: runs(1100), seed: 2 },
    );
  });

  it('tests of two samples: means, deviations, difference, t, p one- or two-sided, interval', () => {
    const two = fc.record({
      a: fc.array(fc.integer({ min: 0, max: 99 }), { minLength: 3, maxLength: 12 }),
      b: fc.array(fc.integer({ min: 0, max: 99 }), { minLength: 3, maxLength: 12 }),
      decimals: fc.integer({ min: 1, max: 3 }),
      modes: fc.array(rounding, { minLength: 12, maxLength: 12 }),
      sides: fc.constantFrom(1, 2),
    });
    fc.assert(
      fc.property(two, ({ a, b, decimals, modes, sides }) => {
        const [n1, n2] = [a.length, b.length];
        const pooled =
          ((n1 - 1) * spread(a, n1 - 1) ** 2 + (n2 - 1) * spread(b, n2 - 1) ** 2) / (n1 + n2 - 2);
        fc.pre(pooled > 0);
        const t = (average(a) - average(b)) / Math.sqrt(pooled * (1 / n1 + 1 / n2));
        const df = n1 + n2 - 2;
        const half = studentTwoSided(t, df) / 2;
        const p = sides === 2 ? 2 * half : t > 0 ? half : 1 - half;
        const of = (site: string, values: readonly number[], i: number): Row[] => [
          { quantity: 'n', select: `site in ${site}`, printed: String(values.length) },
          {
            quantity: 'mean',
            select: `site in ${site}`,
            step: '1',
            printed: print(average(values), decimals, modes[i]),
          },
          {
            quantity: 'sd',
            select: `site in ${site}`,
            printed: print(spread(values, values.length - 1), decimals, modes[i + 1]),
          },
        ];
        neverCannotBe([
          ...of('A', a, 0),
          ...of('B', b, 2),
          {
            quantity: 'difference',
            select: 'site in A',
            versus: 'site in B',
            printed: print(average(a) - average(b), decimals, modes[4]),
          },
          { quantity: 'statistic', test: 't', printed: print(t, decimals, modes[5]) },
          { quantity: 'df', test: 't', printed: String(df) },
          {
            quantity: 'p',
            test: 't',
            printed: print(p, decimals, modes[6]),
            sided: sides === 1 && modes[7] === 'half-up' ? 'one' : '',
          },
          { quantity: 'statistic', test: 'F', set: 'f', printed: print(t * t, decimals, modes[8]) },
          { quantity: 'df', test: 'F', set: 'f', printed: `1, ${df}` },
          {
            quantity: 'p',
            test: 'F',
            set: 'f',
            printed: print(fisherUpper(t * t, 1, df), decimals, modes[9]),
          },
        ]);
      }),
      { numRuns: runs(2400), seed: 3 },
    );
  });

  it('100 000 printed figures were tried, or the share of them that was asked', () => {
    console.info(`cases: ${tried.cases}, printed figures: ${tried.figures}`);
    expect(tried.figures).toBeGreaterThanOrEqual(100_000 * SHARE);
  });
});

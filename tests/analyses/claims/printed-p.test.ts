import { describe, expect, it } from 'vitest';
import type { JudgedFigure } from '../../../src/analyses/claims/found.ts';
import { tables, tests, u } from '../../numerics/printed/printed-tests-values.ts';
import { check, type Row, verdictOf } from './claims.ts';

/**
 * p values as R 4.2.2 gives them (tests/references/scripts/printed-tests.R), printed beside their statistic and
 * held against it through the whole check, from the claims file to the verdict.
 */

const SIGNED = new Set(['t', 'z', 'r']);

/** "0.034", or "<0.001" where nothing but zeros would be printed. */
const printP = (p: number, places: number) =>
  Number(p.toFixed(places)) === 0 ? `<${(10 ** -places).toFixed(places)}` : p.toFixed(places);

interface Case {
  readonly rows: readonly Row[];
  readonly p: string;
  readonly of: (printed: string) => boolean;
}

/** May "0.0k" stand for a value between low and high, rounded or cut off? */
function prints(printed: string, low: number, high: number): boolean {
  const step = 10 ** -(printed.split('.')[1] ?? '').length;
  const value = Number(printed);
  const noise = 1e-9 * step;
  return value === 0 ? low < step + noise : low <= value + step + noise && high >= value - step / 2 - noise;
}

function tabled(places: number, pPlaces: number): readonly Case[] {
  return tests.flatMap(({ test, statistic, df, p, ends }): Case[] => {
    const printed = statistic[0].toFixed(places);
    return [1, 0.5].slice(0, SIGNED.has(test) ? 2 : 1).map((sides) => ({
      rows: [
        { quantity: 'statistic', test, printed },
        ...(df.length === 0 ? [] : [{ quantity: 'df', test, printed: df.join(', ') } as Row]),
        { quantity: 'p', test, sided: sides === 1 ? 'two' : 'one', printed: printP(sides * p[0], pPlaces) },
      ],
      p: printP(sides * p[0], pPlaces),
      of: (other) =>
        prints(other, sides * ends[0], sides * ends[1]) ||
        // A one-sided p may also be that of the other side.
        (sides === 0.5 && prints(other, 1 - ends[1] / 2, 1 - ends[0] / 2)),
    }));
  });
}

const ranked: readonly Case[] = u.flatMap(({ u: value, n, exact, corrected, plain }) =>
  [exact, corrected, plain].map(([p]) => ({
    rows: [
      { quantity: 'statistic', test: 'U', printed: String(value) },
      ...n.map((size, i): Row => ({ quantity: 'n', select: `site in ${'AB'[i]}`, printed: String(size) })),
      { quantity: 'p', test: 'U', printed: printP(p, 3) },
    ],
    p: printP(p, 3),
    of: (other: string) => [exact, corrected, plain].some(([way]) => prints(other, way, way)),
  })),
);

function verdicts(cases: readonly Case[]) {
  const rows = cases.flatMap((one, i) =>
    one.rows.map((row, j): Row => ({ ...row, set: `s${i}`, id: `${i}:${row.quantity === 'p' ? 'p' : j}` })),
  );
  const judged = new Map(check(rows).judged.map((one) => [one.figure.id, one]));
  return cases.map((_, i) => judged.get(`${i}:p`) as JudgedFigure);
}

/** Every p with every other digit in each place. */
function altered(cases: readonly Case[]): readonly (Case & { readonly printed: string })[] {
  return cases.flatMap((one) =>
    one.p.startsWith('<')
      ? []
      : [...one.p].flatMap((sign, at) =>
          at === 0 || sign === '.'
            ? []
            : [...'0123456789']
                .filter((digit) => digit !== sign)
                .map((digit) => {
                  const printed = one.p.slice(0, at) + digit + one.p.slice(at + 1);
                  const rows = one.rows.map((row) => (row.quantity === 'p' ? { ...row, printed } : row));
                  return { ...one, rows, printed };
                }),
        ),
  );
}

describe('p beside its statistic, printed from R', () => {
  it.each([
    [1, 2],
    [2, 2],
    [2, 3],
    [3, 3],
    [3, 4],
  ])(
    'always agrees: t, F, chi-squared, z, r to %i decimals, p to %i, one- and two-sided',
    (places, pPlaces) => {
      const cases = tabled(places, pPlaces);
      expect(cases.length).toBeGreaterThan(300);
      const bad = verdicts(cases).filter(({ verdict }) => !verdict.startsWith('agrees'));
      expect(bad.map(({ why }) => why)).toEqual([]);
    },
  );

  it('always agrees: Mann-Whitney U with its two numbers, exact or by either approximation', () => {
    const bad = verdicts(ranked).filter(({ verdict }) => verdict !== 'agrees');
    expect(bad.map(({ why }) => why)).toEqual([]);
  });

  it('with one digit altered is found out, unless R gives the altered p for a statistic of the same print', () => {
    const cases = altered(tabled(2, 3));
    const found = verdicts(cases);
    // Whole degrees of freedom may be Welch's, rounded: what agrees under that alone is counted apart.
    const rounded = found.map(({ says }) => says.includes('under'));
    const passed = found.map(({ verdict }, i) => verdict.startsWith('agrees') && !rounded[i]);
    const wrongly = cases.filter((one, i) => !rounded[i] && passed[i] !== one.of(one.printed));
    expect(rounded.filter(Boolean).length / cases.length).toBeLessThan(0.08);
    expect(wrongly.map(({ rows, printed }) => `${rows[0]?.test} ${rows[0]?.printed}: ${printed}`)).toEqual(
      [],
    );
    const share = passed.filter(Boolean).length / cases.length;
    console.info(
      `p to three decimals, altered digits: ${cases.length}, undetectable: ${(100 * share).toFixed(1)} %`,
    );
    expect(cases.length).toBeGreaterThan(5000);
    expect(share).toBeLessThan(0.15);
  });

  it('of U with one digit altered is found out, unless it is another way to compute it', () => {
    const cases = altered(ranked);
    const passed = verdicts(cases).map(({ verdict }) => verdict.startsWith('agrees'));
    const wrongly = cases.filter((one, i) => passed[i] !== one.of(one.printed));
    expect(wrongly.map(({ rows, printed }) => `${rows[0]?.printed}: ${printed}`)).toEqual([]);
    const share = passed.filter(Boolean).length / cases.length;
    console.info(`p of U, altered digits: ${cases.length}, undetectable: ${(100 * share).toFixed(1)} %`);
    expect(share).toBeLessThan(0.15);
  });
});

describe("Fisher's exact p beside its printed table", () => {
  const one = (cells: readonly number[], printed: string) => {
    const [a, b, c, d] = cells;
    const found = check([{ id: 'p', set: 't', quantity: 'p', test: 'fisher', printed }], {
      't.csv': `site,x,y\nA,${a},${b}\nB,${c},${d}\n`,
    });
    return verdictOf(found, 'p').verdict;
  };

  it('agrees two-sided and of either tail, and cannot be with another second digit', () => {
    for (const { cells, two, less, more } of tables)
      for (const [p] of [two, less, more]) {
        const printed = p.toFixed(4);
        expect(one(cells, printed), `${cells} ${printed}`).toMatch(/^agrees/);
        const other = printed.replace(
          /\.(\d)(\d)/,
          (_, first, second) => `.${first}${(Number(second) + 5) % 10}`,
        );
        const ways = [two, less, more].some(([way]) => prints(other, way, way));
        if (!ways) expect(one(cells, other), `${cells} ${other}`).toBe('cannot be');
      }
  });
});

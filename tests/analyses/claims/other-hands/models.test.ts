import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/numerics/foundation/random.ts';
import { check } from '../claims.ts';
import { type Case, MODELS } from './print.ts';

/** Tables of coefficients: term, estimate, error, statistic, p. */
const COEFFICIENTS = /^(?:jour\/apa|jour\/de|jour\/wald|Rm\/printcoef|Rm\/summary|sm\/olst?$|sm\/params)/;

interface Altered {
  readonly table: string;
  readonly said: string;
}

/** A digit of an estimate, its error or its t changed, which is not the last printed one: seeded. */
function altered({ table, hand, form, set }: Case, seed: number): Altered | null {
  const random = createRandom(seed);
  const lines = (table ?? '').split('\n');
  const rows = lines.flatMap((line, i) => {
    const cells = [...line.matchAll(/(?<=[\s;\t])[-−]?\d+[.,]\d{2,}(?=[\s;\t]|$)/g)];
    return cells.length >= 3 &&
      !/^\s*[-\d]|Residual|Adj|R-squared|AIC|Durbin|Prob|Skew|Kurtosis|Log-L|Df/.test(line)
      ? [{ i, cells }]
      : [];
  });
  const row = rows[Math.floor(random.next() * rows.length)];
  if (row === undefined) return null;
  const cell = row.cells[Math.floor(random.next() * 3)]!;
  const digits = [...cell[0]].flatMap((sign, at) => (/\d/.test(sign) ? [at] : []));
  // Digits of which the statistic keeps the trace: the first two that are no leading nought.
  const from = digits.findIndex((at) => cell[0][at] !== '0');
  const at = digits[from + Math.floor(random.next() * 2)];
  if (from < 0 || at === undefined || at === digits.at(-1)) return null;
  const digit = (Number(cell[0][at]) + 2 + Math.floor(random.next() * 7)) % 10;
  const text = `${cell[0].slice(0, at)}${digit}${cell[0].slice(at + 1)}`;
  const line = lines[row.i]!;
  const changed = `${line.slice(0, cell.index)}${text}${line.slice(cell.index + cell[0].length)}`;
  return {
    table: lines.map((one, i) => (i === row.i ? changed : one)).join('\n'),
    said: `${hand}/${form} ${set}: ${cell[0]} -> ${text} in “${line.trim()}”`,
  };
}

describe('tables of coefficients with a digit altered', () => {
  const tried = MODELS.cases.flatMap((one, i) =>
    one.table === null || !COEFFICIENTS.test(`${one.hand}/${one.form}`)
      ? []
      : [1, 2, 3].flatMap((turn) => {
          const wrong = altered(one, 10 * i + turn);
          if (wrong === null) return [];
          const found = MODELS.checked({ ...one, table: wrong.table }, false);
          const against = found?.judged.some(
            ({ verdict }) => verdict === 'differs' || verdict === 'cannot be',
          );
          return [{ said: wrong.said, against: against === true }];
        }),
  );
  const missed = tried.filter(({ against }) => !against).map(({ said }) => said);

  it('are found out in 95 of 100 without the data', () => {
    expect(tried.length).toBeGreaterThan(150);
    expect(missed.length / tried.length, missed.join('\n')).toBeLessThan(0.05);
  });
});

describe('a coefficient in a text', () => {
  const verdicts = (printed: string) =>
    Object.fromEntries(
      check([{ quantity: 'statistic', printed }]).judged.map(({ figure, verdict }) => [
        figure.quantity,
        verdict,
      ]),
    );
  it('goes with its error and its t', () => {
    expect(verdicts('b = 0.53, SE = 0.10, t(94) = 5.30, p < .001').statistic).toBe('agrees');
    expect(verdicts('b = 0.53, SE = 0.20, t(94) = 5.30, p < .001').statistic).toBe('cannot be');
    expect(verdicts('b = −0.53, SE = 0.10, t(94) = 5.30, p < .001').statistic).toBe('cannot be');
  });
  it('lies within its interval, about its middle', () => {
    expect(verdicts('β = 0.62, 95% CI [0.35, 0.89], p < .001').estimate).toBe('agrees');
    expect(verdicts('β = 0.92, 95% CI [0.35, 0.89], p < .001').estimate).toBe('cannot be');
    expect(verdicts('β = 0.82, 95% CI [0.35, 0.89], p < .001').estimate).toBe('differs');
  });
  it('has its odds ratio as its exponential', () => {
    const table = 'Variable\tB\tS.E.\tWald\tdf\tSig.\tExp(B)\nAge\t0.405\t0.150\t7.290\t1\t.007\t1.499';
    const of = (text: string) =>
      check([], { 'table.txt': text }).judged.filter(({ figure }) => figure.quantity === 'effect')[0]
        ?.verdict;
    expect(of(table)).toBe('agrees');
    expect(of(table.replace('1.499', '1.649'))).toBe('cannot be');
  });
});

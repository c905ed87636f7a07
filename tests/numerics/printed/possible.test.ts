import { describe, expect, it } from 'vitest';
import { possibleMean } from '../../../src/numerics/printed/possible-mean.ts';
import { possibleSd } from '../../../src/numerics/printed/possible-sd.ts';
import {
  type PrintedNumber,
  printedNumber,
  printsAs,
  ROUNDINGS,
} from '../../../src/numerics/printed/printed-number.ts';

const print = (text: string): PrintedNumber => printedNumber(text)!;
const at2 = (digits: number): PrintedNumber => ({ digits: BigInt(digits), decimals: 2 });

describe('print', () => {
  it.each([
    ['12.30', 1230n, 2],
    ['-0.5', -5n, 1],
    ['.05', 5n, 2],
    ['12,3', 123n, 1],
    ['7', 7n, 0],
    ['−3.0', -30n, 1],
  ])('%s keeps its digits', (text, digits, decimals) => {
    expect(printedNumber(text)).toEqual({ digits, decimals });
  });

  it.each(['', 'n.s.', '1.2.3', '1e5', '.', '-'])('%j is no plain number', (text) => {
    expect(printedNumber(text)).toBeUndefined();
  });

  // ISO 80000-1:2009, Annex B (from memory): 12.25 to one decimal is 12.2 by rule A, 12.3 by rule B; 12.35 is 12.4 by both.
  it.each([
    [1225n, '12.2', 'half-even', true],
    [1225n, '12.3', 'half-up', true],
    [1225n, '12.3', 'half-even', false],
    [1235n, '12.4', 'half-even', true],
    [1235n, '12.4', 'half-up', true],
    [1239n, '12.3', 'truncated', true],
    [-1225n, '-12.3', 'half-up', true],
    [-1239n, '-12.3', 'truncated', true],
  ] as const)('%s hundredths as %s, %s: %s', (over, text, rounding, expected) => {
    expect(printsAs({ over, under: 100n }, print(text), rounding)).toBe(expected);
  });
});

describe('means of whole numbers', () => {
  // Brown & Heathers 2017, Soc. Psychol. Pers. Sci. 8:363: 3.48 of 20, 5.19 of 28 and 5.93 of 49 cannot be,
  // by rounding; 291/49 = 5.9387 cut off after two decimals would print as 5.93.
  it.each([
    ['3.48', 20, false],
    ['5.19', 28, false],
    ['5.93', 49, false],
    ['5.18', 28, true],
    ['5.21', 28, true],
    ['3.45', 20, true],
  ])('%s of %i by rounding: %s', (text, n, possible) => {
    const { roundings } = possibleMean(print(text), n);
    expect(roundings.some((rounding) => rounding !== 'truncated')).toBe(possible);
  });

  it('5.93 of 49 exists only if it was cut off', () => {
    expect(possibleMean(print('5.93'), 49).roundings).toEqual(['truncated']);
  });

  it('names the nearest means that do exist: 145/28 and 146/28 around 5.19', () => {
    const { below, above } = possibleMean(print('5.19'), 28);
    expect([below.sum, above.sum]).toEqual([145n, 146n]);
    expect(below.mean).toBeCloseTo(5.179, 3);
    expect(above.mean).toBeCloseTo(5.214, 3);
  });

  it('halves make more means possible, and a percentage is a mean of noughts and ones', () => {
    expect(possibleMean(print('3.48'), 20, 2).possible).toBe(true);
    expect(possibleMean({ digits: 432n, decimals: 3 }, 37).possible).toBe(true);
    expect(possibleMean({ digits: 420n, decimals: 3 }, 37).possible).toBe(false);
  });

  it('equals brute force for every n up to 60 and every mean from 0.00 to 4.99', () => {
    for (let n = 1; n <= 60; n++) {
      const printable = new Set<number>();
      for (let sum = 0; sum <= 5 * n + 1; sum++)
        for (
          let digits = Math.floor((100 * sum) / n) - 1;
          digits <= Math.floor((100 * sum) / n) + 1;
          digits++
        )
          if (ROUNDINGS.some((rounding) => roundsTo(100 * sum, n, digits, rounding))) printable.add(digits);
      for (let digits = 0; digits < 500; digits++)
        if (possibleMean(at2(digits), n).possible !== printable.has(digits))
          expect.fail(`n ${n}, mean ${digits / 100}: brute force says ${printable.has(digits)}`);
    }
  });
});

/** Rounds over/under to a whole number by the schoolbook, in small whole numbers. */
function roundsTo(
  over: number,
  under: number,
  digits: number,
  rounding: (typeof ROUNDINGS)[number],
): boolean {
  const whole = Math.floor(over / under);
  const rest = over - whole * under;
  if (rounding === 'truncated') return whole === digits;
  if (2 * rest === under) return (rounding === 'half-up' || whole % 2 === 1 ? whole + 1 : whole) === digits;
  return (2 * rest > under ? whole + 1 : whole) === digits;
}

/** Sums of squares that n whole numbers with a given sum can have, found by adding one number after the other. */
function reachableSquares(n: number, most: number): Map<number, Set<number>> {
  let reached = new Map<number, Set<number>>([[0, new Set([0])]]);
  const largest = Math.floor(Math.sqrt(most));
  for (let i = 0; i < n; i++) {
    const next = new Map<number, Set<number>>();
    for (const [sum, squares] of reached)
      for (const square of squares)
        for (let value = -largest; value <= largest; value++) {
          const total = square + value * value;
          if (total > most) continue;
          const at = sum + value;
          const set = next.get(at) ?? new Set<number>();
          set.add(total);
          next.set(at, set);
        }
    reached = next;
  }
  return reached;
}

describe('means with standard deviations', () => {
  it.each([
    [1, 30],
    [2, 60],
    [3, 60],
    [4, 50],
    [5, 50],
    [6, 40],
    [7, 40],
    [9, 36],
    [13, 30],
    [21, 26],
    [34, 22],
    [47, 20],
    [60, 20],
  ])('n = %i: possible exactly when whole numbers with that mean and spread exist', (n, most) => {
    const reached = reachableSquares(n, most);
    let compared = 0;
    for (let sum = 0; sum <= n; sum++) {
      // Only sds whose sum of squares certainly lies within what was enumerated, whatever the rounding.
      const meanDigits = Math.floor((100 * sum) / n + 0.5);
      const { sums } = possibleMean(at2(meanDigits), n);
      for (let sdDigits = 0; sdDigits <= 400; sdDigits++) {
        const widest =
          Math.max(...sums.map((s) => (Number(s) * Number(s)) / n)) +
          ((sdDigits + 1) / 100) ** 2 * Math.max(1, n - 1);
        if (widest > most || n === 1) break;
        compared++;
        const exists = sums.some((s) =>
          [...(reached.get(Number(s)) ?? [])].some((squares) => {
            const variance = (squares - (Number(s) * Number(s)) / n) / (n - 1);
            const sd = Math.sqrt(Math.max(0, variance)) * 100;
            const tie = 1e-9;
            return (
              sd > sdDigits - 0.5 - tie &&
              sd < sdDigits + 1 - (sd === Math.floor(sd) ? 0 : tie) &&
              (sd < sdDigits + 0.5 + tie || Math.floor(sd + tie) === sdDigits)
            );
          }),
        );
        const said = possibleSd(at2(meanDigits), at2(sdDigits), n).possible;
        if (said !== exists)
          expect.fail(
            `n ${n}, mean ${meanDigits / 100}, sd ${sdDigits / 100}: found ${exists}, said ${said}`,
          );
      }
    }
    if (n > 1) expect(compared).toBeGreaterThan(20);
  });

  it('refuses what no reading can have', () => {
    expect(possibleSd(print('3.48'), print('1.00'), 20).why).toBe('no 20 readings have the printed mean');
    expect(possibleSd(print('2.00'), print('-1.00'), 5).possible).toBe(false);
    expect(possibleSd(print('2.00'), print('0.50'), 1).why).toBe(
      'a single reading has no standard deviation',
    );
  });

  // Two whole numbers with mean 3.00: sd is |a - b| / sqrt 2, of even differences: 0, 1.41, 2.83, 4.24 …
  it('of two whole numbers with mean 3.00 an sd of 1.41 exists, of 2.00 does not', () => {
    expect(possibleSd(print('3.00'), print('1.41'), 2).possible).toBe(true);
    expect(possibleSd(print('3.00'), print('2.00'), 2).possible).toBe(false);
    expect(possibleSd(print('3.00'), print('2.00'), 2, { divisor: 'n' }).possible).toBe(true);
  });
});

import { describe, expect, it } from 'vitest';
import { contrast } from '../../../src/analyses/contrast/index.ts';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { defaultRegister } from '../../../src/attributes/register.ts';
import { mannWhitney } from '../../../src/numerics/tests/mann-whitney.ts';
import { makeTable } from '../../fragments/make-table.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, inputFrom } from '../ask.ts';

/**
 * What the missing of one group would have to be to turn a verdict. Made-up readings; each shift found is held against
 * the Mann-Whitney test (itself checked against R elsewhere) of the readings filled in by hand.
 */

const rowsOf = (site: string, values: readonly number[], missing: number, state = '-not-observed') => [
  ...values.map((diameter1) => ({ site, diameter1 })),
  ...Array.from({ length: missing }, () => ({ site, diameter1: state })),
];
const run = (from: number, count: number) => Array.from({ length: count }, (_, i) => from + i / 10);
const asked = (rows: readonly Readonly<Record<string, string | number>>[]) => {
  const { found, words } = ask(contrast, inputFrom(rows), {
    of: ['diameter1'],
    by: 'site',
    relabellings: 199,
    resamples: 199,
  });
  expect(faultsOfAnswer(words)).toEqual([]);
  const [{ told, missingShifts }] = found.attributes;
  return { told, missingShifts, lines: words.unless.map(printTurn) };
};
/** The missing at the middles of equal shares of the readings: of an equally spaced run (type 7 quantiles). */
const filled = (from: number, count: number, missing: number, shift: number) => [
  ...run(from, count),
  ...Array.from({ length: missing }, (_, i) => from + (((i + 0.5) / missing) * (count - 1)) / 10 + shift),
];

describe('how far the missing would have to differ', () => {
  // Aldum reads 1 more than Berrow, where 12 of 24 lack a reading.
  const apart = [...rowsOf('Aldum', run(2, 12), 0), ...rowsOf('Berrow', run(1, 12), 12)];

  it('points towards the other group, and just so far as the test turns', () => {
    const { told, missingShifts, lines } = asked(apart);
    expect(told).toBe('told apart');
    const [{ label, missing, shift, becomes }] = missingShifts;
    expect([missingShifts.length, label, missing, becomes]).toEqual([1, 'Berrow', 12, 'not told apart']);
    if (shift === null) throw new Error('a shift turns it');
    expect(shift).toBeGreaterThan(0);
    const p = (size: number) => {
      const test = mannWhitney(run(2, 12), filled(1, 12, 12, size));
      return 'why' in test ? Number.NaN : test.p;
    };
    expect(p(shift)).toBeGreaterThan(0.05);
    expect(p(0.9 * shift)).toBeLessThan(0.05);
    expect(lines.join('\n')).toMatch(
      /Were diameter1 of the 12 of Berrow without it about [\d.]+ mm above that of those recorded there: the groups would be not told apart\./i,
    );
  });

  it('points the other way in the other group', () => {
    const { missingShifts } = asked([...rowsOf('Aldum', run(2, 12), 12), ...rowsOf('Berrow', run(1, 12), 0)]);
    expect(missingShifts.map(({ label }) => label)).toEqual(['Aldum']);
    expect(missingShifts[0].shift).toBeLessThan(0);
  });

  it('takes more of few missing than of many, and one cannot turn it', () => {
    const sizeOf = (missing: number) =>
      asked([...rowsOf('Aldum', run(2, 12), 0), ...rowsOf('Berrow', run(1, 12), missing)]).missingShifts[0]
        .shift;
    const [some, many] = [sizeOf(8), sizeOf(24)];
    if (some === null || many === null) throw new Error('either can turn it');
    expect(many).toBeLessThan(some);
    expect(sizeOf(1)).toBeNull();
    const { lines } = asked([...rowsOf('Aldum', run(2, 12), 0), ...rowsOf('Berrow', run(1, 12), 1)]);
    expect(lines.join('\n')).toMatch(
      /would still be told apart, whatever the missing of any one of them were/,
    );
  });

  it('what is not told apart could be, with the missing away from the other group', () => {
    const { told, missingShifts, lines } = asked([
      ...rowsOf('Aldum', run(1.1, 12), 0),
      ...rowsOf('Berrow', run(1, 12), 12),
    ]);
    expect(told).toBe('not told apart');
    expect(missingShifts[0].shift).toBeLessThan(0);
    expect(missingShifts[0].becomes).toBe('told apart');
    expect(lines.join('\n')).toMatch(/below that of those recorded there: the groups would be told apart/);
  });

  it('says so where more of the same would do', () => {
    const { told, missingShifts, lines } = asked([
      ...rowsOf('Aldum', run(1.3, 12), 0),
      ...rowsOf('Berrow', run(1, 12), 12),
    ]);
    expect([told, missingShifts[0].shift]).toEqual(['not told apart', 0]);
    expect(lines.join('\n')).toMatch(
      /12 of Berrow without it like that of those recorded there: the groups would be told apart/,
    );
  });

  it('gives a factor where ratios matter, the same in any unit', () => {
    const factorOf = (unit: number) => {
      const times = (rows: typeof apart) =>
        rows.map(({ site, diameter1 }) => ({
          site,
          diameter1: typeof diameter1 === 'number' ? diameter1 * unit : diameter1,
        }));
      const fragments = makeTable(times(apart), defaultRegister());
      const input = { ...inputFrom([]), fragments, records: fragments, register: defaultRegister() };
      const { found, words } = ask(contrast, input, { of: ['diameter1'], by: 'site', resamples: 199 });
      expect(found.attributes[0].samples.logarithmic).toBe(true);
      expect(words.unless.map(printTurn).join('\n')).toMatch(
        /about [\d.]+ times that of those recorded there: the groups would be not told apart/,
      );
      return found.attributes[0].missingShifts[0].shift ?? Number.NaN;
    };
    expect(factorOf(1)).toBeGreaterThan(1);
    expect(factorOf(4)).toBeCloseTo(factorOf(1), 9);
  });

  it('what does not apply is not missing, and nothing missing is no line', () => {
    for (const rows of [
      [...rowsOf('Aldum', run(2, 12), 0), ...rowsOf('Berrow', run(1, 12), 12, '-not-applicable')],
      [...rowsOf('Aldum', run(2, 12), 0), ...rowsOf('Berrow', run(1, 12), 0)],
    ]) {
      const { missingShifts, lines } = asked(rows);
      expect(missingShifts).toEqual([]);
      expect(lines.join('\n')).not.toMatch(/without it|whatever the missing/);
    }
  });
});

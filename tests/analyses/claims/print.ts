import fc from 'fast-check';
import { expect } from 'vitest';
import { ROUNDINGS, type Rounding } from '../../../src/numerics/printed/printed-number.ts';
import { LONG } from '../../long.ts';
import { check, type Row } from './claims.ts';

/** Figures computed and printed by the schoolbook, apart from the code under test. */

/** What was tried in this file: runs of a property, printed figures, and which quantities they were. */
export const tried = { cases: 0, figures: 0, quantities: new Set<string>(), methods: new Set<string>() };

/** How many of the cases are tried: all in the long run, a fifth without it; `THRUM_CASES=10` tries ten times as many. */
export const SHARE = Number(process.env.THRUM_CASES ?? (LONG ? 1 : 0.2));

/** Number of runs of a property. */
export function runs(all: number): number {
  return Math.round(all * SHARE);
}

export const rounding = fc.constantFrom(...ROUNDINGS);

/** Rounds by the decimal text of a number, so that ties are seen as a reader sees them. */
export function print(value: number, decimals: number, mode: Rounding): string {
  const exact = Number(value.toPrecision(13));
  const [figures, power] = Math.abs(exact).toExponential().split('e');
  const scaled = Number(`${figures}e${Number(power) + decimals}`);
  const whole = Math.floor(scaled);
  const rest = Number((scaled - whole).toPrecision(8));
  const up =
    mode === 'truncated' ? false : rest > 0.5 || (rest === 0.5 && (mode === 'half-up' || whole % 2 === 1));
  const digits = String(whole + (up ? 1 : 0)).padStart(decimals + 1, '0');
  const text = decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
  return exact < 0 && Number(text) !== 0 ? `-${text}` : text;
}

export function neverCannotBe(rows: readonly Row[], tables: Record<string, string> = {}): void {
  const found = check(
    rows.map((row, i) => ({ id: `c${i}`, set: 's', ...row })),
    tables,
  );
  tried.cases += 1;
  tried.figures += found.judged.length;
  for (const { figure } of found.judged) {
    tried.quantities.add(figure.quantity);
    if (figure.method !== null) tried.methods.add(figure.method);
  }
  const bad = found.judged.filter(({ verdict }) => verdict === 'cannot be');
  if (bad.length > 0)
    expect.fail(bad.map(({ figure, why }) => `${figure.quantity} ${figure.printed}: ${why}`).join('\n'));
}

export const average = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export function spread(values: readonly number[], divisor: number): number {
  const middle = average(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) * (value - middle), 0) / divisor);
}

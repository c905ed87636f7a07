/**
 * A number as it stands in print, kept in whole numbers so that nothing is lost to binary fractions:
 * "12.30" is 1230 at 2 decimals.
 */
export interface PrintedNumber {
  /** The number times 10^decimals. */
  readonly digits: bigint;
  readonly decimals: number;
  /** Powers of ten before the point that the print leaves open: 6 of "8.851e+09". */
  readonly unsaid?: number;
}

/** How a computed value may have become the printed one. */
export const ROUNDINGS = ['half-up', 'half-even', 'truncated'] as const;
export type Rounding = (typeof ROUNDINGS)[number];

/** A fraction of whole numbers, the lower one above 0. */
export interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}

const PLAIN = /^([+-])?(\d*)(?:[.,](\d*))?$/;

/** Reads plain decimal print ("3", "-0.50", ".05", "12,3"); undefined for anything else. */
export function printedNumber(text: string): PrintedNumber | undefined {
  const match = PLAIN.exec(text.trim().replace(/[−–]/u, '-'));
  const whole = match?.[2] ?? '';
  const part = match?.[3] ?? '';
  if (match === null || whole + part === '') return undefined;
  const size = BigInt(whole + part);
  return { digits: match[1] === '-' ? -size : size, decimals: part.length };
}

export function numberOf({ digits, decimals }: PrintedNumber): number {
  return Number(`${digits}e-${decimals}`);
}

/** One in the last place that is printed. */
export function unitOf({ decimals, unsaid = 0 }: PrintedNumber): number {
  return Number(unsaid > 0 ? `1e${unsaid}` : `1e-${decimals}`);
}

/** 10^exponent as a whole number, for an exponent from 0. */
export function powerOfTen(exponent: number): bigint {
  return BigInt(`1${'0'.repeat(exponent)}`);
}

/**
 * Does `value` print as `printed` under this rounding? Negative numbers mirror positive ones: half-up
 * is half away from 0, truncation is towards 0 (ISO 80000-1, Annex B, rules B and A).
 */
export function printsAs(value: Fraction, printed: PrintedNumber, rounding: Rounding): boolean {
  if (printed.unsaid !== undefined) {
    const open = powerOfTen(printed.unsaid);
    const shorter = { over: value.over, under: value.under * open };
    return printsAs(shorter, { digits: printed.digits / open, decimals: 0 }, rounding);
  }
  const negative = value.over < 0n;
  const over = (negative ? -value.over : value.over) * powerOfTen(printed.decimals);
  const digits = negative ? -printed.digits : printed.digits;
  const whole = over / value.under;
  const twiceRest = 2n * (over - whole * value.under);
  if (rounding === 'truncated') return whole === digits;
  const tie = twiceRest === value.under;
  const up = twiceRest > value.under || (tie && (rounding === 'half-up' || whole % 2n === 1n));
  return whole + (up ? 1n : 0n) === digits;
}

/** Every rounding under which the value prints so, in the order of ROUNDINGS. */
export function roundingsThatPrint(value: Fraction, printed: PrintedNumber): readonly Rounding[] {
  return ROUNDINGS.filter((rounding) => printsAs(value, printed, rounding));
}

/** A double as the exact fraction that it is. */
export function exactFraction(value: number): Fraction {
  let under = 1n;
  let scaled = value;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    under *= 2n;
  }
  return { over: BigInt(scaled), under };
}

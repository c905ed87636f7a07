/** Numbers as a person reads them; the full precision stays in results.json. */

const MINUS = '−';

function fixed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `${MINUS}${text}` : text;
}

/** Decimals that show about three figures of the larger values. */
export function decimalsFor(values: readonly number[]): number {
  const finite = values.filter(Number.isFinite);
  if (finite.length === 0 || finite.every(Number.isInteger)) return 0;
  const largest = Math.max(...finite.map(Math.abs));
  if (largest >= 100) return 1;
  if (largest >= 10) return 1;
  if (largest >= 1) return 2;
  return 3;
}

/** @param decimals equal down a column. */
export function readable(value: number, decimals = decimalsFor([value])): string {
  if (value === Number.POSITIVE_INFINITY) return 'no upper limit';
  if (value === Number.NEGATIVE_INFINITY) return 'no lower limit';
  return fixed(value, decimals);
}

/** p values: two figures, never below the floor that may be printed. */
export function readableP(p: number): string {
  if (p < 0.001) return '< 0.001';
  return p < 0.1 ? p.toFixed(3) : p.toFixed(2);
}

/** A share as a whole percentage; "0 of 7" is the caller's to say for small n. */
export function percent(share: number): string {
  if (share > 0 && share < 0.005) return '< 1 %';
  return `${Math.round(share * 100)} %`;
}

export function count(number: number, one: string, many = `${one}s`): string {
  return `${number.toLocaleString('en-GB').replaceAll(',', '\u202f')} ${number === 1 ? one : many}`;
}

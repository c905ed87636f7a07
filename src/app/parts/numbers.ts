import { printNumber } from '../../analyses/phrasing.ts';

/** A number that stands alone: four digits at most, and none that were not measured. */
export function readable(value: number): string {
  return printNumber(value, 4);
}

/** A share as a whole percentage; "0 of 7" is the caller's to say for small n. */
export function percent(share: number): string {
  if (share > 0 && share < 0.005) return '< 1 %';
  return `${Math.round(share * 100)} %`;
}

export function count(number: number, one: string, many = `${one}s`): string {
  return `${number.toLocaleString('en-GB').replaceAll(',', '\u202f')} ${number === 1 ? one : many}`;
}

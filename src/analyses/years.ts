import type { ResultColumn } from './contract.ts';
import { printYear } from './phrasing.ts';
import { axis } from './shared/figure/style.ts';

/**
 * Years in tables and figures. They are kept as astronomical years (ISO 8601-1: 0 is 1 BC, -399 is 400 BC)
 * and stand so in files; people read BC and AD.
 */

/** Unit of a column of years: files say what the numbers are, and whoever prints one knows it by this. */
export const YEAR_UNIT = 'astronomical year; 0 = 1 BC';

/** Said below tables that show years, beside which the files hold numbers. */
export const YEARS_IN_FILES = 'In files years are astronomical numbers: 0 is 1 BC.';

export function yearColumn(id: string, label: string): ResultColumn {
  return { id, label, unit: YEAR_UNIT };
}

/** About as many ticks as stand beside each other with their era at print width. */
const MOST_TICKS = 8;

/** An axis of astronomical years with ticks at round years BC and AD. */
export function yearAxis(
  title: string,
  years: readonly number[],
  more: Readonly<Record<string, unknown>> = {},
): Readonly<Record<string, unknown>> {
  const ticks = roundYears(years);
  return axis(title, { tickmode: 'array', tickvals: ticks, ticktext: ticks.map(printYear), ...more });
}

/**
 * Round years from just before the first to just after the last of `years`: n BC is 1 - n. Between the eras,
 * where no year 0 stands, AD 1.
 */
function roundYears(years: readonly number[]): number[] {
  const finite = years.filter(Number.isFinite);
  if (finite.length === 0) return [];
  const first = finite.reduce((a, b) => Math.min(a, b));
  const last = finite.reduce((a, b) => Math.max(a, b));
  const step = roundStep((last - first) / (MOST_TICKS - 2));
  const from = Math.floor((first - 1) / step);
  const count = Math.ceil(last / step) - from + 1;
  const ticks = Array.from({ length: count }, (_, place) => (from + place) * step);
  const turned = ticks.map((tick) => (tick > 0 ? tick : tick + 1));
  // With a step of one year, 0 and 1 would both stand for AD 1.
  return [...new Set(turned)];
}

/** The least of 1, 2, 5, 10, 20 … that is no less than `width`. */
export function roundStep(width: number): number {
  let power = 1;
  while (10 * power < width) power *= 10;
  return [1, 2, 5].map((digit) => digit * power).find((step) => step >= width) ?? 10 * power;
}

/** Years from the first of a slice to the one before its end: "400 to 301 BC", "50 BC to AD 49", "AD 1 to 100". */
export function printSlice(from: number, end: number): string {
  const last = end - 1;
  if (last <= from) return printYear(from);
  const [first, second] = [printYear(from), printYear(last)];
  if (from > 0) return `${first} to ${last}`;
  return last > 0 ? `${first} to ${second}` : `${1 - from} to ${second}`;
}

import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { fitsLogarithm } from '../../numerics/describing/scale-by-fit.ts';
import type { QuantityVariable } from '../../numerics/dissimilarity/variables.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import type { NumericColumn } from '../table.ts';

/** How the numbers of one attribute become comparable. */
export interface NumberCoding {
  readonly kind: 'number';
  readonly logarithm: boolean;
  /** Outermost finite ends of the column, in the attribute's unit: an open end is closed here. */
  readonly least: number;
  readonly most: number;
}

export interface BlockPlace {
  readonly block: number;
  readonly weight: number;
  readonly besides?: true;
}

export interface CodedNumbers {
  readonly coding: NumberCoding;
  readonly variable: QuantityVariable | null;
  readonly notes: readonly string[];
}

/** A numeric column as a quantity; null where no row has a usable value. */
export function numberCoding(
  column: NumericColumn,
  place: BlockPlace,
  scaling: 'range' | 'quartiles',
  skewed: 'log' | 'plain' = 'plain',
): CodedNumbers {
  const { attribute } = column;
  const { logarithm, byFit } = scaleOf(column, skewed);
  const coding = { kind: 'number' as const, logarithm, ...outermost(column, logarithm) };
  const rows = column.low.length;
  const low = new Float64Array(rows).fill(Number.NaN);
  const high = new Float64Array(rows).fill(Number.NaN);
  let open = 0;
  let unusable = 0;
  for (let row = 0; row < rows; row++) {
    if (Number.isNaN(column.low[row])) continue;
    const ends = codeInterval(coding, column.low[row], column.high[row]);
    if (ends === null) unusable++;
    else {
      [low[row], high[row]] = ends;
      if (isOpen(coding, column.low[row], column.high[row])) open++;
    }
  }
  const middles = low.map((value, row) => (value + high[row]) / 2);
  const sorted = sortedValues(middles);
  const notes: string[] = byFit ? [loggedByFit(column)] : [];
  if (unusable > 0) {
    notes.push(`${attribute.label}: ${unusable} not above zero, so without a logarithm; not compared`);
  }
  if (open > 0) notes.push(`${attribute.label}: ${open} open-ended, closed at the outermost value known`);
  if (sorted.length === 0) {
    return { coding, variable: null, notes: [...notes, `${attribute.label}: no value, left out`] };
  }
  const whole = sorted[sorted.length - 1] - sorted[0];
  let range = whole;
  if (scaling === 'quartiles') {
    range = 2 * (quantileSorted(sorted, 0.75) - quantileSorted(sorted, 0.25));
    if (range === 0) {
      range = whole;
      notes.push(`${attribute.label}: its quartiles are equal, so it is scaled by its range`);
    }
  }
  return { coding, variable: { kind: 'quantity', low, high, range, ...place }, notes };
}

/** Whether a number goes by its logarithm: its definition says so, or, where asked, its readings are spread so. */
export function scaleOf(
  column: NumericColumn,
  skewed: 'log' | 'plain',
): { readonly logarithm: boolean; readonly byFit: boolean } {
  const byDefinition = column.attribute.transform === 'log';
  const byFit = !byDefinition && skewed === 'log' && isLognormal(column);
  return { logarithm: byDefinition || byFit, byFit };
}

/** Said wherever the readings alone decided for the logarithm. */
export const loggedByFit = ({ attribute }: NumericColumn): string =>
  `${attribute.label}: compared by its logarithm, which its readings fit better`;

function isLognormal({ attribute, low, high }: NumericColumn): boolean {
  return attribute.scale === 'ratio' && fitsLogarithm(low.map((value, row) => (value + high[row]) / 2));
}

/**
 * A reading on the scale of comparison, or null where it has none. An open end is closed at the
 * outermost value that the column knows, or at the other end when that lies beyond.
 */
export function codeInterval(
  coding: NumberCoding,
  low: number,
  high: number,
): readonly [low: number, high: number] | null {
  if (Number.isNaN(low) || Number.isNaN(high)) return null;
  const opensBelow = low === -Infinity || (coding.logarithm && low <= 0 && high > 0);
  let start = opensBelow ? Math.min(coding.least, high) : low;
  let end = high === Infinity ? Math.max(coding.most, start) : high;
  if (!Number.isFinite(start) || !Number.isFinite(end)) return null;
  if (coding.logarithm) {
    if (start <= 0 || end <= 0) return null;
    start = ln(start);
    end = ln(end);
  }
  return [start, end];
}

function isOpen(coding: NumberCoding, low: number, high: number): boolean {
  return low === -Infinity || high === Infinity || (coding.logarithm && low <= 0);
}

function outermost(column: NumericColumn, logarithm: boolean): { least: number; most: number } {
  let least = Infinity;
  let most = -Infinity;
  for (const ends of [column.low, column.high]) {
    for (const value of ends) {
      if (!Number.isFinite(value) || (logarithm && value <= 0)) continue;
      if (value < least) least = value;
      if (value > most) most = value;
    }
  }
  return { least, most };
}

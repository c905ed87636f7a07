import type { Register } from '../attributes/definition.ts';
import type { FragmentTable } from '../fragments/table.ts';
import { type ColumnSlip, columnSlips, type OutOfBounds, outOfBounds } from './quality/bounds.ts';
import { type Contradiction, contradictions } from './quality/contradictions.ts';
import { type FilledShare, filledShares } from './quality/filled.ts';
import { type Heaping, heaping } from './quality/heaping.ts';
import { type RecorderDifference, recorderDifferences } from './quality/recorders.ts';

/** What there is to know of a table before anything is computed from it. Nothing in it excludes a row. */
export interface QualityReport {
  readonly filled: readonly FilledShare[];
  readonly outOfBounds: readonly OutOfBounds[];
  readonly columnSlips: readonly ColumnSlip[];
  readonly heaping: readonly Heaping[];
  readonly contradictions: readonly Contradiction[];
  readonly recorders: readonly RecorderDifference[];
}

/** Looks a table over: one source's, or several combined. `row` in the findings is the row of the table. */
export function reportQuality(table: FragmentTable, register: Register): QualityReport {
  const outside = outOfBounds(table);
  return {
    filled: filledShares(table),
    outOfBounds: outside,
    columnSlips: columnSlips(table, outside),
    heaping: heaping(table),
    contradictions: contradictions(table, register),
    recorders: recorderDifferences(table),
  };
}

/** The part of the report that several sources put together can add to those of each. */
export function reportTogether(
  table: FragmentTable,
  register: Register,
): Pick<QualityReport, 'contradictions' | 'recorders'> {
  return { contradictions: contradictions(table, register), recorders: recorderDifferences(table) };
}

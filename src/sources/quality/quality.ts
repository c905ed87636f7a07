import type { Register } from '../../attributes/definition.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { fieldsCounted } from '../ledger/ledger-checks.ts';
import type { ColumnReading } from '../source-reading.ts';
import { type ColumnSlip, columnSlips, type OutOfBounds, outOfBounds } from './bounds.ts';
import { type Contradiction, contradictions } from './contradictions.ts';
import { type CrossCheck, crossChecks } from './cross-checks.ts';
import { type DerivedAgreement, derivedAgreement } from './derived-facets.ts';
import { type FilledShare, filledShares } from './filled.ts';
import { type Heaping, heaping } from './heaping.ts';
import { type LookAlikeMet, lookAlikes } from './look-alikes.ts';
import { type RecorderDifference, recorderDifferences } from './recorders.ts';
import { type SwappedSystems, swappedSystems } from './swapped-systems.ts';

/** What there is to know of a table before anything is computed from it. Nothing in it excludes a row. */
export interface QualityReport {
  readonly filled: readonly FilledShare[];
  readonly outOfBounds: readonly OutOfBounds[];
  readonly columnSlips: readonly ColumnSlip[];
  readonly heaping: readonly Heaping[];
  readonly contradictions: readonly Contradiction[];
  readonly recorders: readonly RecorderDifference[];
  readonly crossChecks: readonly CrossCheck[];
  readonly lookAlikes: readonly LookAlikeMet[];
  /** Facets that were recorded and that also follow from measurements. */
  readonly derivedFacets: readonly DerivedAgreement[];
}

/**
 * Looks a table over: one source's, or several combined. `row` in the findings is the row of the table.
 * @param columns the columns of the source, which may say over what length they were counted.
 */
export function reportQuality(
  table: FragmentTable,
  register: Register,
  columns: readonly ColumnReading[] = [],
): QualityReport {
  const outside = outOfBounds(table, register);
  return {
    filled: filledShares(table),
    outOfBounds: outside,
    columnSlips: columnSlips(table, outside),
    heaping: heaping(table),
    contradictions: contradictions(table, register),
    recorders: recorderDifferences(table),
    crossChecks: crossChecks(table, register, fieldsCounted(columns)),
    lookAlikes: lookAlikes(table, register),
    derivedFacets: derivedAgreement(table, register),
  };
}

/** What only shows when all sources are put together. */
export type TogetherReport = Pick<QualityReport, 'contradictions' | 'recorders'> & {
  readonly swapped: readonly SwappedSystems[];
};

/** The part of the report that several sources put together can add to those of each. */
export function reportTogether(table: FragmentTable, register: Register): TogetherReport {
  return {
    contradictions: contradictions(table, register),
    recorders: recorderDifferences(table),
    swapped: swappedSystems(table, register),
  };
}

import type { AttributeDefinition } from '../attributes/definition.ts';

/**
 * The fragment table: one row a fragment, one column an attribute, all of it plain data that can be
 * posted to a worker. Nothing here knows how the table was read or what will be computed from it.
 */

/** Index into CELL_STATES of cells/reading.ts. */
export type StateCode = 0 | 1 | 2 | 3 | 4;

/** Row -> the attributes that its value was computed from; a row that is not listed was recorded. */
export type DerivedFrom = ReadonlyMap<number, readonly string[]>;

export interface NumericColumn {
  readonly kind: 'numeric';
  readonly attribute: AttributeDefinition;
  /** Ends of each reading in the attribute's unit; NaN where there is none, ±Infinity where censored. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /**
   * The one number that a range of values stands for: the median of the midpoints where a row stands for
   * several fragments, the value at the printed readings where it was derived from them; NaN elsewhere.
   */
  readonly centre?: Float64Array;
  /** Index into CELL_STATES. */
  readonly state: Uint8Array;
  /** The text as it stood in the source. */
  readonly raw: readonly string[];
  /** Row -> the readings that the cell listed, where it listed several. */
  readonly readings: ReadonlyMap<number, readonly number[]>;
  /** Printed step of each reading (3.5 -> 0.1), NaN where unknown. */
  readonly step: Float64Array;
  readonly derivedFrom?: DerivedFrom;
}

export interface TermColumn {
  readonly kind: 'term';
  readonly attribute: AttributeDefinition;
  /** Index into `levels`, -1 where there is no term. */
  readonly codes: Int32Array;
  /** Term ids (vocabulary, grades, or the wordings themselves), in the order of the codes. */
  readonly levels: readonly string[];
  readonly state: Uint8Array;
  /** Index into CERTAINTIES. */
  readonly certainty: Uint8Array;
  readonly raw: readonly string[];
  readonly derivedFrom?: DerivedFrom;
}

export interface TextColumn {
  readonly kind: 'text';
  readonly attribute: AttributeDefinition;
  readonly raw: readonly string[];
  readonly state: Uint8Array;
}

export type Column = NumericColumn | TermColumn | TextColumn;

/** Where a row came from. `row` is the line of the record in the file's grid, 1 = first line. */
export interface Origin {
  readonly source: number;
  readonly row: number;
}

export interface FragmentTable {
  readonly rows: number;
  /** Fragment identifier, unique in the table. */
  readonly id: readonly string[];
  /** Original object; a fragment with no recorded item is its own item. */
  readonly item: readonly string[];
  /** Site and phase as one key, "" where neither is known. */
  readonly assemblage: readonly string[];
  readonly origin: readonly Origin[];
  /** Names of the sources that `origin.source` points to. */
  readonly sources: readonly string[];
  /** For each source the terms and attributes that it tells apart, where its profile says so. */
  readonly tells?: readonly (readonly string[])[];
  readonly columns: ReadonlyMap<string, Column>;
}

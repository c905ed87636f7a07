import type { Unavailable } from '../foundation/unavailable.ts';
import { type DualityDiagram, dualityDiagram, supplementaryRow } from './duality.ts';
import type { KindsColumn } from './multiple-correspondence.ts';
import type { PassivePoint } from './passive-point.ts';

export type MixedColumn =
  | { readonly kind: 'quantity'; readonly values: ArrayLike<number> }
  | ({ readonly kind: 'kinds' } & KindsColumn);

/** What a column of the diagram stands for. */
export interface MixedPart {
  readonly variable: number;
  /** The kind, or -1 for a quantity. */
  readonly code: number;
  /** Quantities: mean and standard deviation (divisor n); kinds: share and 1. */
  readonly centre: number;
  readonly spread: number;
}

export interface MixedAnalysis extends DualityDiagram {
  readonly parts: readonly MixedPart[];
  /** Variables that are the same in all records and took no part. */
  readonly constant: readonly number[];
  /** Squared correlation (quantity) or correlation ratio (kinds) of each variable with each axis. */
  readonly discrimination: Float64Array;
}

/**
 * Factor analysis of mixed data: quantities standardised, kinds by their indicators, so that a quantity
 * and an attribute of kinds have the same say (Hill & Smith 1976, Taxon 25:249; Pagès 2004, Rev. Stat.
 * Appl. 52(4):93). With quantities alone it is principal component analysis of correlations, with kinds
 * alone multiple correspondence analysis (eigenvalues times their number).
 *
 * @param columns no gaps; records with one are set aside by the caller.
 */
export function mixedAnalysis(columns: readonly MixedColumn[]): MixedAnalysis | Unavailable {
  const n = columns.length === 0 ? 0 : lengthOf(columns[0]);
  if (n < 2 || columns.length < 2)
    return { why: `needs 2 records and 2 attributes, not ${n} and ${columns.length}` };
  const parts = columns.flatMap((column, variable) => partsOf(column, variable, n));
  const taking = new Set(parts.map((part) => part.variable));
  const constant = columns.map((_, variable) => variable).filter((variable) => !taking.has(variable));
  if (parts.length === 0) return { why: 'every attribute is the same in all records' };
  const table = new Float64Array(n * parts.length);
  parts.forEach((part, j) => {
    const column = columns[part.variable];
    for (let i = 0; i < n; i++) table[i * parts.length + j] = centredValue(part, valueAt(column, i));
  });
  const weights = Float64Array.from(parts, (part) => (part.code < 0 ? 1 : part.centre));
  const diagram = dualityDiagram(table, new Float64Array(n).fill(1 / n), weights);
  if ('why' in diagram) return diagram;
  const { axes } = diagram;
  const discrimination = new Float64Array(columns.length * axes);
  parts.forEach((part, j) => {
    for (let k = 0; k < axes; k++) {
      discrimination[part.variable * axes + k] +=
        diagram.columns.contributions[j * axes + k] * diagram.eigenvalues[k];
    }
  });
  return { ...diagram, parts, constant, discrimination };
}

/** Places of a record that took no part: one value or code a variable, none missing. */
export function projectMixed(found: MixedAnalysis, record: readonly number[]): PassivePoint {
  return supplementaryRow(
    found,
    found.parts.map((part) => centredValue(part, record[part.variable])),
  );
}

function centredValue(part: MixedPart, value: number): number {
  if (part.code < 0) return (value - part.centre) / part.spread;
  return (value === part.code ? 1 / part.centre : 0) - 1;
}

function partsOf(column: MixedColumn, variable: number, n: number): MixedPart[] {
  if (column.kind === 'quantity') {
    let centre = 0;
    for (let i = 0; i < n; i++) {
      if (!Number.isFinite(column.values[i])) throw new RangeError('mixedAnalysis: a value is missing');
      centre += column.values[i] / n;
    }
    let squares = 0;
    for (let i = 0; i < n; i++) squares += ((column.values[i] - centre) * (column.values[i] - centre)) / n;
    const spread = Math.sqrt(squares);
    return spread > 1e-12 * Math.abs(centre) ? [{ variable, code: -1, centre, spread }] : [];
  }
  const counts = new Float64Array(column.levels);
  for (let i = 0; i < n; i++) {
    if (!(column.codes[i] >= 0)) throw new RangeError('mixedAnalysis: a kind is missing');
    counts[column.codes[i]]++;
  }
  const codes = Array.from(counts, (_, code) => code).filter((code) => counts[code] > 0);
  return codes.length < 2
    ? []
    : codes.map((code) => ({ variable, code, centre: counts[code] / n, spread: 1 }));
}

function lengthOf(column: MixedColumn): number {
  return column.kind === 'quantity' ? column.values.length : column.codes.length;
}

function valueAt(column: MixedColumn, i: number): number {
  return column.kind === 'quantity' ? column.values[i] : column.codes[i];
}

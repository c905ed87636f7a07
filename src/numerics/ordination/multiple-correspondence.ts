import type { Unavailable } from '../foundation/unavailable.ts';
import { type DualityDiagram, dualityDiagram, supplementaryRow } from './duality.ts';
import type { PassivePoint } from './passive-point.ts';

/** One attribute of kinds: a code for each record, none missing. */
export interface KindsColumn {
  readonly codes: ArrayLike<number>;
  readonly levels: number;
}

/** Multiple correspondence analysis. `columns` of the diagram are the categories, in order of `categories`. */
export interface MultipleCorrespondence extends DualityDiagram {
  /** Attribute and code of each category that occurs. */
  readonly categories: readonly { readonly variable: number; readonly code: number }[];
  /** Squared correlation ratio of each attribute with each axis: variable * axes. */
  readonly discrimination: Float64Array;
  /**
   * Adjusted inertias (Greenacre 1993; Benzécri 1979 for the formula) of the axes above 1/Q, and each as
   * a share of the adjusted total: the shares of the plain analysis are known to be too low.
   */
  readonly adjusted: { readonly inertias: Float64Array; readonly shares: Float64Array };
}

/**
 * Multiple correspondence analysis of Q attributes of kinds: correspondence analysis of the table of
 * indicators (Greenacre & Blasius 2006, ch. 2). Which kinds go together, over all attributes at once?
 *
 * @param columns every code from 0 to levels - 1; records with a gap are set aside by the caller.
 */
export function multipleCorrespondence(
  columns: readonly KindsColumn[],
): MultipleCorrespondence | Unavailable {
  const n = columns[0]?.codes.length ?? 0;
  const q = columns.length;
  if (n < 2 || q < 2) return { why: `needs 2 records and 2 attributes, not ${n} and ${q}` };
  const categories = columns.flatMap((column, variable) =>
    occurring(column).map((code) => ({ variable, code })),
  );
  const shares = Float64Array.from(categories, ({ variable, code }) => shareOf(columns[variable], code));
  const table = new Float64Array(n * categories.length);
  categories.forEach(({ variable, code }, j) => {
    for (let i = 0; i < n; i++) {
      const has = columns[variable].codes[i] === code ? 1 : 0;
      table[i * categories.length + j] = has / shares[j] - 1;
    }
  });
  const weights = shares.map((share) => share / q);
  const diagram = dualityDiagram(table, new Float64Array(n).fill(1 / n), weights);
  if ('why' in diagram) return diagram;
  const discrimination = new Float64Array(q * diagram.axes);
  categories.forEach(({ variable }, j) => {
    for (let k = 0; k < diagram.axes; k++) {
      discrimination[variable * diagram.axes + k] +=
        diagram.columns.contributions[j * diagram.axes + k] * diagram.eigenvalues[k] * q;
    }
  });
  const adjusted = adjust(diagram.eigenvalues, q, categories.length);
  return { ...diagram, categories, discrimination, adjusted };
}

/** Places of a record that took no part. A kind that the analysis has not met adds nothing but its absence. */
export function projectKinds(found: MultipleCorrespondence, codes: readonly number[]): PassivePoint {
  const q = codes.length;
  return supplementaryRow(
    found,
    found.categories.map(
      ({ variable, code }, j) => (codes[variable] === code ? 1 / (found.columns.weights[j] * q) : 0) - 1,
    ),
  );
}

function occurring(column: KindsColumn): number[] {
  const seen = new Set<number>();
  for (let i = 0; i < column.codes.length; i++) {
    const code = column.codes[i];
    if (!(code >= 0 && code < column.levels)) throw new RangeError(`multipleCorrespondence: no kind ${code}`);
    seen.add(code);
  }
  return [...seen].sort((a, b) => a - b);
}

function shareOf(column: KindsColumn, code: number): number {
  let count = 0;
  for (let i = 0; i < column.codes.length; i++) if (column.codes[i] === code) count++;
  return count / column.codes.length;
}

function adjust(eigenvalues: Float64Array, q: number, categories: number) {
  const factor = q / (q - 1);
  const inertias = eigenvalues
    .filter((value) => value > 1 / q + 1e-12)
    .map((value) => factor * factor * (value - 1 / q) * (value - 1 / q));
  let squares = 0;
  for (const value of eigenvalues) squares += value * value;
  const total = factor * (squares - (categories - q) / (q * q));
  return { inertias, shares: inertias.map((value) => value / total) };
}

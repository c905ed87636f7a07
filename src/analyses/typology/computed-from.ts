import { midpoint } from '../../fragments/accessors.ts';
import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { midranks } from '../../numerics/foundation/ranks.ts';
import type { ComputedFrom } from './apart-found.ts';

/** Two attributes that order the records alike to this degree are one measurement (rank correlation). */
const ONE_MEASUREMENT = 0.98;
/** A product or ratio has to give the very order of the records. */
const VERY_ORDER = 0.9995;
const FEWEST = 10;

/**
 * Is a number computed from one that defines the types? It is where it orders the records as that one does, the
 * other way round, or as a ratio or product of it with another recorded number: own ratios, reciprocals, classes.
 * Null where it is not, or where too few records have both.
 */
export function computedFrom(
  table: FragmentTable,
  rows: ArrayLike<number>,
  defining: readonly string[],
  id: string,
): ComputedFrom | null {
  const column = table.columns.get(id);
  if (column?.kind !== 'numeric') return null;
  const own = valuesOf(column, rows);
  const numbers = [...table.columns.values()].filter((one): one is NumericColumn => one.kind === 'numeric');
  for (const from of numbers.filter((one) => defining.includes(one.attribute.id))) {
    if (from === column) continue;
    const base = valuesOf(from, rows);
    const correlation = rankCorrelation(own, base);
    if (correlation !== null && Math.abs(correlation) >= ONE_MEASUREMENT)
      return { id, from: [from.attribute.id], correlation };
    for (const other of numbers) {
      if (other === column || other === from) continue;
      const partner = valuesOf(other, rows);
      for (const join of [(a: number, b: number) => a / b, (a: number, b: number) => a * b]) {
        const joined = base.map((value, i) => join(value, partner[i]));
        const order = rankCorrelation(own, joined);
        if (order !== null && Math.abs(order) >= VERY_ORDER)
          return { id, from: [from.attribute.id, other.attribute.id], correlation: order };
      }
    }
  }
  return null;
}

const valuesOf = (column: NumericColumn, rows: ArrayLike<number>) =>
  Float64Array.from(rows, (row) => midpoint(column, row));

function rankCorrelation(a: Float64Array, b: Float64Array): number | null {
  const both = Array.from(a.keys()).filter((i) => Number.isFinite(a[i]) && Number.isFinite(b[i]));
  if (both.length < FEWEST) return null;
  const first = midranks(both.map((i) => a[i])).ranks;
  const second = midranks(both.map((i) => b[i])).ranks;
  const middle = (both.length + 1) / 2;
  let [xy, xx, yy] = [0, 0, 0];
  for (let i = 0; i < first.length; i++) {
    xy += (first[i] - middle) * (second[i] - middle);
    xx += (first[i] - middle) * (first[i] - middle);
    yy += (second[i] - middle) * (second[i] - middle);
  }
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : null;
}

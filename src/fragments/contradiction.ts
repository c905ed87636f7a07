import type { Register } from '../attributes/definition.ts';
import { greatest, least } from '../numerics/foundation/lists.ts';
import { agreedTerm } from './items/terms.ts';
import type { Column } from './table.ts';

/** Readings of one original object that lie further apart than this share of the larger contradict each other. */
const TOLERANCE = 0.2;

/**
 * Do these rows, said to be of one item, contradict each other in this attribute? Numbers do where their
 * intervals leave a gap of more than a fifth of the larger reading; terms where neither is the broader of
 * the other. Sizes of the fragments themselves and what is only derived never count: pieces differ in
 * length, and a derived value repeats its source. The tolerance is common practice, no source.
 */
export function contradictEachOther(column: Column, rows: readonly number[], register: Register): boolean {
  if (column.kind === 'text') return false;
  if (column.kind === 'term') return agreedTerm(column, rows, register).disagree;
  const { block, derived } = column.attribute;
  const known = rows.filter((row) => !Number.isNaN(column.low[row]!));
  if (block === 'find' || derived || known.length < 2) return false;
  const gap = greatest(known.map((row) => column.low[row]!)) - least(known.map((row) => column.high[row]!));
  const larger = greatest(known.map((row) => Math.abs(column.high[row]!)));
  return gap > TOLERANCE * larger;
}

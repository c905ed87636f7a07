import type { Register } from '../../attributes/definition.ts';
import { pointOf } from '../../fragments/accessors.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { adjustedRand, contingency } from '../../numerics/grouping/agreement.ts';
import { kmeans } from '../../numerics/grouping/kmeans.ts';
import type { Restated } from './trust-found.ts';

/** Groups that agree with one attribute beyond this (adjusted Rand index) say nothing that it does not. */
const AGREEMENT = 0.9;
const STARTS = 20;

/**
 * Do the groups only repeat one of the attributes that they were made from? Each is set against its own kinds, or
 * for a number against as many groups of it alone (k-means); the one that agrees best counts, where it agrees
 * beyond 0.9. Nothing is repeated where a single attribute is all that was compared.
 *
 * @param rows row of the table for each grouped record; `membership` runs alongside.
 */
export function restatedBy(
  table: FragmentTable,
  attributes: readonly string[],
  rows: ArrayLike<number>,
  membership: Int32Array,
  k: number,
  register: Register,
  random: Random,
): Restated | null {
  if (attributes.length < 2 || k < 2) return null;
  let best: Restated | null = null;
  for (const attribute of attributes) {
    const own = classesOf(table, attribute, rows, k, register, random.stream(attribute));
    if (own === null) continue;
    const crossed = contingency(own, membership);
    const agreement = adjustedRand(crossed);
    if (typeof agreement !== 'number' || agreement <= Math.max(AGREEMENT, best?.adjustedRand ?? 0)) continue;
    const label = register.attributes.get(attribute)?.label ?? attribute;
    // An attribute that few of the records have cannot be what the groups are.
    if (crossed.n * 2 < rows.length) continue;
    best = { attribute, label, adjustedRand: agreement, n: crossed.n };
  }
  return best;
}

function classesOf(
  table: FragmentTable,
  attribute: string,
  rows: ArrayLike<number>,
  k: number,
  register: Register,
  random: Random,
): Int32Array | null {
  const column = table.columns.get(attribute);
  if (column === undefined || column.kind === 'text') return null;
  const own = new Int32Array(rows.length).fill(-1);
  if (column.kind === 'term') {
    const kindOf = new Int32Array(table.rows).fill(-1);
    for (const [kind, { rows: members }] of groupRows(table, [attribute], register).groups.entries())
      for (const row of members) kindOf[row] = kind;
    return own.map((_, place) => kindOf[rows[place]]);
  }
  const log = column.attribute.transform === 'log';
  const points = Float64Array.from(rows, (row) => {
    const value = pointOf(column, row);
    return !log ? value : value > 0 ? ln(value) : Number.NaN;
  });
  const known = Int32Array.from(points.keys()).filter((place) => Number.isFinite(points[place]));
  const values = Float64Array.from(known, (place) => points[place]);
  const found = kmeans({ values, n: values.length, columns: 1 }, { k, starts: STARTS, random });
  if ('why' in found) return null;
  known.forEach((place, at) => {
    own[place] = found.membership[at];
  });
  return own;
}

import { conditionsOf } from '../../fragments/conditions.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { principalCoordinates } from '../../numerics/ordination/principal-coordinates.ts';
import type { AnalysisInput } from '../contract.ts';
import { guardAgainst } from '../shared/guard/compute.ts';
import type { Guard } from '../shared/guard/found.ts';
import type { Told } from '../verdicts.ts';
import type { ContrastOptions } from './options.ts';

/** Relabellings within a condition: only whether p passes the level is asked of them. */
const RELABELLINGS = 499;
/** Axes on which the items stand for their dissimilarities. */
const AXES = 4;
/** More items than these are not spread out again for it. */
const MOST = 1000;

/** The items that were compared in all attributes, and their groups. */
export interface Joint {
  readonly items: FragmentTable;
  readonly rows: readonly number[];
  readonly matrix: Condensed;
  readonly labels: readonly number[];
  readonly names: readonly string[];
  readonly told: Told;
}

/**
 * Is a difference in all attributes together, or the lack of one, made by a condition? Compared are the places of the items
 * on the first principal coordinates of their dissimilarities; null where there are none, or too many items.
 */
export function togetherGuarded(
  { items, rows, matrix, labels, names, told }: Joint,
  { register }: AnalysisInput,
  options: ContrastOptions,
  random: Random,
): Guard | null {
  if (matrix.n > MOST) return null;
  const spread = principalCoordinates(matrix, AXES);
  if ('why' in spread) return null;
  const { axes, coordinates } = spread;
  return guardAgainst({
    by: register.attributes.get(options.by)?.label ?? options.by,
    labels: Int32Array.from(labels),
    labelCount: names.length,
    names,
    items: rows.map((row) => items.item[row]),
    told,
    named: names.length === 2 ? [0, 1] : [],
    conditions: conditionsOf(items, rows, [options.by, ...options.of], options.by, register),
    scores: (_, places) =>
      Array.from({ length: axes }, (__, axis) => places.map((place) => coordinates[place * axes + axis])),
    confidence: options.confidence,
    relabellings: Math.min(options.relabellings, RELABELLINGS),
    random,
  });
}

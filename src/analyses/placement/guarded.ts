import { conditionsOf } from '../../fragments/conditions.ts';
import { midranks } from '../../numerics/foundation/ranks.ts';
import type { AnalysisInput } from '../contract.ts';
import { guardAgainst } from '../shared/guard/compute.ts';
import type { LabelAttribute } from './labels.ts';
import type { PlacementOptions } from './options.ts';
import type { GuardedSet, LabelSet } from './sets-found.ts';

/** Relabellings within a condition: only whether p passes the level is asked of them. */
const RELABELLINGS = 499;

/**
 * Are labels excluded because of who recorded, of preservation, structure or period? For each set of labels that
 * excludes some: do comparanda of the excluded labels lie farther from the find than those of the others, among
 * comparanda that share the condition?
 *
 * @param distances of each record to the find, NaN where nothing is in common.
 */
export function guardedSets(
  { records, register, random }: AnalysisInput,
  sets: readonly LabelSet[],
  attributes: readonly LabelAttribute[],
  distances: Float64Array,
  compared: readonly string[],
  { level }: PlacementOptions,
): readonly GuardedSet[] {
  return sets
    .filter(({ asked }) => asked)
    .flatMap((set): GuardedSet[] => {
      const own = attributes.find(({ label }) => label === set.attribute);
      if (own === undefined) return [];
      const placed = own.labels.flatMap(({ label, rows }, place) => {
        const excluded = set.excluded.includes(label) ? 1 : 0;
        return rows.filter((row) => !Number.isNaN(distances[row])).map((row) => ({ row, excluded, place }));
      });
      if (new Set(placed.map(({ excluded }) => excluded)).size < 2) return [];
      const rows = placed.map(({ row }) => row);
      const guard = guardAgainst({
        by: set.attribute,
        labels: Int32Array.from(placed, ({ excluded }) => excluded),
        labelCount: 2,
        places: Int32Array.from(placed, ({ place }) => place),
        items: rows.map((row) => records.item[row]),
        told: 'told apart',
        named: [0, 1],
        conditions: conditionsOf(records, rows, [own.id, ...compared], own.id, register),
        scores: (_, places) => [midranks(places.map((place) => distances[rows[place]])).ranks],
        confidence: level,
        relabellings: RELABELLINGS,
        random: random.stream(`conditions of ${own.id}`),
      });
      return [{ attribute: set.attribute, guard }];
    });
}

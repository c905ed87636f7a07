import { takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import {
  dissimilarities,
  dissimilaritiesTo,
  pickRecords,
} from '../../numerics/dissimilarity/dissimilarity.ts';
import { prepareComparison } from '../../numerics/dissimilarity/prepare.ts';
import { type DissimilaritySpec, type RecordValue, valueAt } from '../../numerics/dissimilarity/variables.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import {
  type PrincipalCoordinates,
  principalCoordinates,
  projectRecord,
} from '../../numerics/ordination/principal-coordinates.ts';
import type { Unavailable } from '../contract.ts';
import { drawRows } from './typicality.ts';

/** The comparanda on two axes, ready for finds. It does not depend on any find. */
export interface KinMap {
  readonly found: PrincipalCoordinates;
  /** Records that the axes were made from, and the comparison of these alone. */
  readonly rows: readonly number[];
  readonly spec: DissimilaritySpec;
  /** Every record that could be placed. */
  readonly places: readonly { readonly row: number; readonly x: number; readonly y: number }[];
  readonly shares: readonly [number, number];
}

/** Axes are made from at most this many records; the others are placed as finds are. */
const MOST_FOR_AXES = 400;
const MOST_ON_MAP = 5000;

/** Principal coordinates of the comparanda by all attributes of the comparison. */
export function kinMap(spec: DissimilaritySpec, records: number, random: Random): KinMap | Unavailable {
  const all = Array.from({ length: records }, (_, row) => row);
  const drawn = drawRows(all, MOST_FOR_AXES, random);
  const matrix = dissimilarities(pickRecords(spec, drawn));
  const { kept } = knownRecords(matrix);
  const found = principalCoordinates(takeRecords(matrix, kept), 2);
  if ('why' in found) return found;
  if (found.axes < 2) return { why: 'the comparanda lie on a single axis' };
  const rows = Array.from(kept, (place) => drawn[place]);
  const own = pickRecords(spec, rows);
  const prepared = prepareComparison(own);
  const placeOf = new Map(rows.map((row, place) => [row, place]));
  const places = drawRows(all, MOST_ON_MAP, random).flatMap((row) => {
    const place = placeOf.get(row);
    if (place !== undefined) {
      return [{ row, x: found.coordinates[place * 2], y: found.coordinates[place * 2 + 1] }];
    }
    const record = spec.variables.map((variable) => valueAt(variable, row));
    const projected = projectRecord(found, dissimilaritiesTo(prepared, record));
    return 'why' in projected ? [] : [{ row, x: projected.coordinates[0], y: projected.coordinates[1] }];
  });
  const share = (axis: number) => found.eigenvalues[axis] / found.positive;
  return { found, rows, spec: own, places, shares: [share(0), share(1)] };
}

/** Where the find falls on the map, and where else within its own ranges. */
export function positionOf(
  map: KinMap,
  record: readonly RecordValue[],
  draws: readonly (readonly RecordValue[])[],
):
  | { readonly find: readonly [number, number]; readonly cloud: readonly (readonly [number, number])[] }
  | Unavailable {
  const prepared = prepareComparison(map.spec);
  const place = (values: readonly RecordValue[]) =>
    projectRecord(map.found, dissimilaritiesTo(prepared, values));
  const find = place(record);
  if ('why' in find) return find;
  const cloud = draws.flatMap((draw) => {
    const projected = place(draw);
    return 'why' in projected ? [] : [[projected.coordinates[0], projected.coordinates[1]] as const];
  });
  return { find: [find.coordinates[0], find.coordinates[1]], cloud };
}

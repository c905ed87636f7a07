import { type Condensed, takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import {
  dissimilarities,
  dissimilaritiesTo,
  pickRecords,
} from '../../numerics/dissimilarity/dissimilarity.ts';
import { type PreparedComparison, prepareComparison } from '../../numerics/dissimilarity/prepare.ts';
import type { DissimilaritySpec, RecordValue } from '../../numerics/dissimilarity/variables.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import {
  type Calibration,
  type ConformalP,
  calibrate,
  conformalP,
  type RecordedAlike,
} from '../../numerics/tests/conformal.ts';
import type { Unavailable } from '../contract.ts';
import type { LabelAttribute } from './labels.ts';
import { type Lacking, lackingAlike } from './lacking.ts';

/** A label made ready to judge many readings of one find. */
export interface Bag {
  readonly attribute: LabelAttribute;
  readonly label: string;
  /** Records that carry the label. */
  readonly size: number;
  readonly by: 'records' | 'sites';
  /** Those of them that are judged by: all, or as many as were drawn. */
  readonly rows: readonly number[];
  readonly prepared: PreparedComparison;
  /** The records parted by what they lack; none where no record lacks anything. */
  readonly lacking: readonly Lacking[];
  readonly within: Condensed;
  readonly calibration: Calibration;
}

export interface BagSettings {
  readonly neighbours: number;
  /** Most records of a label that are judged by. */
  readonly most: number;
}

/** One bag a label, compared by the variables of `spec` alone: those that the find has. */
export function bagsOf(
  attributes: readonly LabelAttribute[],
  spec: DissimilaritySpec,
  settings: BagSettings,
  random: Random,
): readonly Bag[] {
  return attributes.flatMap((attribute) =>
    attribute.labels.map(({ label, rows, sites }) => {
      const stream = random.stream(`${attribute.id}/${label}`);
      const units = sites === null ? rows : oneOfEach(sites, stream.stream('sites'));
      const drawn = drawRows(units, settings.most, stream);
      const bag = bagOf(attribute, label, rows.length, drawn, spec, settings.neighbours);
      return sites === null ? bag : { ...bag, by: 'sites' as const };
    }),
  );
}

export function bagOf(
  attribute: LabelAttribute,
  label: string,
  size: number,
  rows: readonly number[],
  spec: DissimilaritySpec,
  neighbours: number,
): Bag {
  const own = pickRecords(spec, rows);
  const within = dissimilarities(own);
  return {
    attribute,
    label,
    size,
    by: 'records',
    rows,
    prepared: prepareComparison(own),
    lacking: lackingAlike(own, rows.length),
    within,
    calibration: calibrate(within, neighbours),
  };
}

/**
 * One record of each site: sites that share a label are drawn from it as a find from another site is, single records
 * of one site are not (Dunn, Wasserman & Ramdas 2022, J. Am. Stat. Assoc. 118:2491, subsampling once a group;
 * Lee, Barber & Willett 2023, arXiv 2306.06342; both from memory).
 */
function oneOfEach(sites: readonly (readonly number[])[], random: Random): readonly number[] {
  return sites.map((rows) => rows[random.integer(rows.length)]).sort((a, b) => a - b);
}

/** Some of the rows without repetition, in their order; all of them when they are few enough. */
export function drawRows(rows: ArrayLike<number>, most: number, random: Random): readonly number[] {
  if (rows.length <= most) return Array.from(rows);
  // A shuffle of the first places, of which only what has moved is kept.
  const moved = new Map<number, number>();
  const at = (place: number) => moved.get(place) ?? rows[place];
  const drawn = Array.from({ length: most }, (_, i) => {
    const other = i + random.integer(rows.length - i);
    const chosen = at(other);
    moved.set(other, at(i));
    return chosen;
  });
  return drawn.sort((a, b) => a - b);
}

/** The find as each record of the label would have it: without what that record lacks. */
function asRecorded(bag: Bag, record: readonly RecordValue[]): readonly RecordedAlike[] | undefined {
  if (bag.lacking.length === 0) return undefined;
  return bag.lacking.map(({ members, places, prepared }) => ({
    members,
    complete: places.length === record.length,
    toNew: dissimilaritiesTo(
      prepared(),
      places.map((place) => record[place]),
    ),
  }));
}

/** How typical the find is of a label. */
export function typicality(bag: Bag, record: readonly RecordValue[]): ConformalP | Unavailable {
  return conformalP(bag.calibration, dissimilaritiesTo(bag.prepared, record), asRecorded(bag, record));
}

/** The same with some records of the label left out; null where none of them is in it. */
export function typicalityWithout(
  bag: Bag,
  record: readonly RecordValue[],
  leftOut: ReadonlySet<number>,
): ConformalP | Unavailable | null {
  const kept = bag.rows.flatMap((row, place) => (leftOut.has(row) ? [] : [place]));
  if (kept.length === bag.rows.length) return null;
  if (kept.length === 0) return { why: 'the label would have no record left' };
  const toAll = dissimilaritiesTo(bag.prepared, record);
  const placeOf = new Map(kept.map((place, at) => [place, at]));
  const picked = (values: ArrayLike<number>) => kept.map((place) => values[place]);
  return conformalP(
    calibrate(takeRecords(bag.within, kept), bag.calibration.neighbours),
    picked(toAll),
    asRecorded(bag, record)?.map(({ members, complete, toNew }) => ({
      complete,
      members: Array.from(members).flatMap((place) => placeOf.get(place) ?? []),
      toNew: picked(toNew),
    })),
  );
}

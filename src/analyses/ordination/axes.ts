import { type PassivePoint, passiveCos2 } from '../../numerics/ordination/passive-point.ts';
import type { Unavailable } from '../contract.ts';

/** One thing that has a place on the axes: a record, a row, a column, a category, an attribute. */
export interface Place {
  readonly label: string;
  /** What it is, such as "record", "category", "row", "supplementary row". */
  readonly role: string;
  readonly at: readonly number[];
  /** Share of each axis that it makes; empty where it has no say. */
  readonly contributions: readonly number[];
  /** Share of it that each axis shows; empty where the method gives none. */
  readonly cos2: readonly number[];
}

/** What every method of ordination comes to. */
export interface Axes {
  readonly eigenvalues: readonly number[];
  /** Share of the whole that each axis carries; the whole may include axes that cannot be drawn. */
  readonly shares: readonly number[];
  /** Row in the table of records of each of `records`; empty when rows are not records. */
  readonly rows: readonly number[];
  readonly records: readonly Place[];
  /** Row in the table of records of each of `passive`. */
  readonly passiveRows: readonly number[];
  /** Records that were placed without a say. */
  readonly passive: readonly Place[];
  /** Attributes, categories or columns. */
  readonly variables: readonly Place[];
  readonly setAside: readonly { readonly reason: string; readonly rows: readonly number[] }[];
  readonly notes: readonly string[];
}

export type AxesOrWhy = Axes | Unavailable;

/** Something that was placed without a say, on at most `most` axes. */
export function passivePlace(point: PassivePoint, label: string, role: string, most: number): Place {
  const shown = (values: Float64Array) => [...values.slice(0, most)];
  return {
    label,
    role,
    at: shown(point.coordinates),
    contributions: [],
    cos2: shown(passiveCos2(point)),
  };
}

export const PASSIVE_RECORD = 'supplementary record';

/** Entries of point i in a flat array of points by axes, at most `most` of them. */
export function entriesOf(flat: ArrayLike<number>, i: number, axes: number, most: number): number[] {
  return Array.from({ length: Math.min(axes, most) }, (_, k) => flat[i * axes + k]);
}

import type { Findings, Unavailable } from '../contract.ts';
import type { Marks } from '../shared/figure/marks.ts';
import type { LevelSaid } from '../shared/level/said.ts';
import type { OrdinationOptions } from './options.ts';

/** One thing that has a place on the axes: a record, a row, a column, a category, an attribute. */
export interface PlacedPoint {
  readonly label: string;
  /** What it is, such as "record", "category", "row", "supplementary row". */
  readonly role: string;
  readonly at: readonly number[];
  /** Share of each axis that it makes; empty where it has no say. */
  readonly contributions: readonly number[];
  /** Share of it that each axis shows; empty where the method gives none. */
  readonly cos2: readonly number[];
}

export const PASSIVE_RECORD = 'supplementary record';

/** What an attribute has in common with each axis; NaN where that has no value. */
export interface InCommon {
  readonly label: string;
  readonly shares: readonly number[];
}

/** What every method of ordination comes to. */
export interface Axes {
  readonly eigenvalues: readonly number[];
  /** Share of the whole that each axis carries; the whole may include axes that cannot be drawn. */
  readonly shares: readonly (number | Unavailable)[];
  /** Whether the shares are upper bounds, the whole being too large to be known. */
  readonly sharesAtMost?: boolean;
  /** Row in the table of records of each of `records`; empty when rows are not records. */
  readonly rows: readonly number[];
  readonly records: readonly PlacedPoint[];
  /** Row in the table of records of each of `passive`. */
  readonly passiveRows: readonly number[];
  /** Records that were placed without a say. */
  readonly passive: readonly PlacedPoint[];
  /** Attributes, categories or columns. */
  readonly variables: readonly PlacedPoint[];
  /** Attributes as wholes; empty when rows are not records. */
  readonly attributes: readonly InCommon[];
  readonly setAside: readonly { readonly reason: string; readonly rows: readonly number[] }[];
  readonly notes: readonly string[];
}

export type AxesOrWhy = Axes | Unavailable;

/** The records of one label on the axes. */
export interface Centre {
  readonly label: string;
  /** Whether its members had no say in the axes; a label may have a centre of either sort. */
  readonly passive: boolean;
  /** Places of its members in `axes.records`, or in `axes.passive`. */
  readonly members: readonly number[];
  /** Mean on every axis: the label as a supplementary point. */
  readonly at: readonly number[];
  /** Corners of the convex hull of the members on axes 1 and 2; empty below five members. */
  readonly hull: readonly (readonly [number, number])[];
  /** Ellipse of the resampled centre on axes 1 and 2, at the confidence; empty below five members. */
  readonly ellipse: readonly (readonly [number, number])[];
}

/** An attribute, or one of its kinds, laid over axes that it had no say in. */
export interface Supplementary {
  readonly label: string;
  /** A number goes along the axes; a kind has a centre; kinds together have what lies between them. */
  readonly role: 'number' | 'kind' | 'kinds together';
  /** Records that have it. */
  readonly n: number;
  /** Correlation with each axis, or mean of its records on each; empty for kinds together. */
  readonly at: readonly number[];
  /** Share of each axis that it has in common: squared correlation or correlation ratio; empty for one kind. */
  readonly common: readonly number[];
}

/** How much of the spread the first axes carry together. */
export interface Carried {
  /** Axes counted: two, or one where there is no second. */
  readonly axes: number;
  readonly share: number | Unavailable;
  /** Whether it carries that at most. */
  readonly atMost: boolean;
}

/** Attributes that share enough of an axis to be named with it, the closest first. */
export interface Followed {
  readonly axis: number;
  readonly attributes: readonly { readonly label: string; readonly share: number }[];
}

/** Conditions that could not be looked at: not recorded, and known of less than half. */
export interface Unseen {
  readonly unknown: readonly { readonly label: string }[];
  readonly scarce: readonly { readonly label: string }[];
}

/** Something beside the attributes that goes with an axis: preservation, recovery, recorder, source, structure, size. */
export interface Besides {
  readonly label: string;
  readonly axis: number;
  /** Correlation ratio freed of what as many groups would share by chance. */
  readonly share: number;
  /** Whether it shares as much of the axis as any attribute that makes it. */
  readonly overturns: boolean;
}

/** The points that make the most of the first axis of a table of counts, at either end. */
export interface Ends {
  readonly low: string;
  readonly high: string;
}

export interface OrdinationFound extends Findings {
  readonly options: OrdinationOptions;
  readonly unit: 'fragment' | 'item';
  readonly axes: AxesOrWhy;
  readonly centres: readonly Centre[];
  /** Attributes laid over the axes. */
  readonly supplementary: readonly Supplementary[];
  /** Label of the attribute that symbols show; empty where none does. */
  readonly by: string;
  /** Symbols and colours of its labels. */
  readonly marks: Marks;
  /** Label of each record, "" where it has none; in the order of `axes.records`. */
  readonly labels: readonly string[];
  /** The same in the order of `axes.passive`. */
  readonly passiveLabels: readonly string[];
  readonly carried: Carried;
  readonly followed: readonly Followed[];
  readonly besides: readonly Besides[];
  readonly unseen: Unseen;
  /** Supplementary records of which the first two axes show little. */
  readonly poorlyShown: number;
  /** Of a table of counts: who stands at the ends of the first axis, as counted and as recorded. */
  readonly ends: Ends | null;
  readonly endsAsRecorded: Ends | null;
  readonly level: LevelSaid | null;
  /** Rows and columns of so few records that they draw axes to themselves. */
  readonly small: readonly string[];
  /** What neither makes the axes nor is placed on them. */
  readonly lost: readonly { readonly reason: string; readonly fragments: number }[];
}

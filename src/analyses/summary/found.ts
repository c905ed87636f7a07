import type { PartCount } from '../../fragments/kinds/mixed.ts';
import type { Limits } from '../../numerics/foundation/limits.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Marks } from '../shared/figure/marks.ts';
import type { Beside } from '../shared/guard/beside.ts';
import type { LevelSaid } from '../shared/level/said.ts';
import type { PooledAttribute } from '../shared/pooled/faces.ts';
import type { PooledKinds } from '../shared/pooled/shares.ts';
import type { SummaryOptions } from './options.ts';

/** Stands for the line that takes all groups together. */
export const ALL = 'all';

/** How many records a line rests on, and why others have no value. */
export interface GroupCounts {
  readonly n: number;
  readonly fragments: number;
  readonly items: number;
  readonly missing: number;
  readonly notObserved: number;
  readonly notApplicable: number;
  readonly absent: number;
}

/** Centre and spread of numbers, by the standard name of the statistic. */
export type NumberStatistic =
  | 'approximate'
  | 'openEnded'
  | 'mean'
  | 'sd'
  | 'median'
  | 'q1'
  | 'q3'
  | 'mad'
  | 'min'
  | 'max'
  | 'range'
  | 'cv'
  | 'skewness'
  | 'medianLow'
  | 'medianHigh'
  | 'q1Low'
  | 'q1High'
  | 'q3Low'
  | 'q3High';

/** Between which values mean and median plausibly lie. */
export interface CentreLimits {
  readonly n: number;
  readonly items: number;
  readonly mean: number | Unavailable;
  readonly meanLimits: Limits | Unavailable;
  readonly median: number | Unavailable;
  readonly medianLimits: Limits | Unavailable;
  /** Where readings known only as ranges put the median. */
  readonly censored: Readonly<Record<'low' | 'high', number | Unavailable>>;
}

interface Group {
  readonly attribute: string;
  readonly label: string;
  /** Labels of the group, one a grouping attribute; empty for all records together. */
  readonly group: readonly string[];
  /** Whether this is the line of all groups together. */
  readonly whole: boolean;
  /** Whether it has values enough to be quoted as evidence. */
  readonly quotable: boolean;
  readonly counts: GroupCounts;
  readonly missing: number;
  /** Share of the records without a value, where it is large enough to be mentioned; null otherwise. */
  readonly gap: number | null;
}

/** One group of records, with its values of one numeric attribute. */
export interface NumberGroup extends Group {
  readonly unit: string;
  /** Whether ratios matter, so that a logarithmic axis fits. */
  readonly logarithmic: boolean;
  readonly points: readonly { readonly id: string; readonly value: number; readonly openEnded: boolean }[];
  /** Lower quartile, median, upper quartile (type 7) of the points; null where there are none. */
  readonly quartiles: readonly [q1: number, median: number, q3: number] | null;
  readonly statistics: Readonly<Record<NumberStatistic, number | Unavailable>>;
  /** null where no limits were asked for. */
  readonly limits: CentreLimits | null;
}

/** Whether the limits of the least and of the greatest median leave them apart; not asked for or not to be had: unknown. */
export type EndsApart = 'apart' | 'overlap' | 'unknown';

export interface TermCount {
  readonly term: string;
  readonly count: number;
  readonly share: number;
  readonly limits: Limits | Unavailable;
  /** Records that are named more broadly and could be of this kind as well. */
  readonly couldBe: number;
  /** Of all records with a name, however broad: if none, and if all, of those were of this kind. */
  readonly bounds: Limits;
}

/** One group of records, with its counts of one attribute of kinds. */
export interface TermGroup extends Group {
  readonly counted: readonly TermCount[];
  readonly n: number;
  /** The commonest kinds: more than one where their counts are equal, or not told apart at the confidence. */
  readonly leading: readonly string[];
  /** Whether the leading counts are equal. */
  readonly tie: boolean;
  /** Kinds outside `leading` that would lead if every record named more broadly were theirs. */
  readonly couldLead: readonly string[];
}

/** One kind of one group, alone and as part of mixtures. */
export interface MixedCount extends PartCount {
  readonly label: string;
  readonly group: readonly string[];
  readonly whole: boolean;
}

/** The years that a group of records spans: hull of their dates, and the median of their middles. */
export interface SpanGroup {
  readonly attribute: string;
  readonly label: string;
  readonly group: readonly string[];
  readonly n: number;
  readonly missing: number;
  readonly span: { readonly from: number; readonly to: number; readonly middle: number } | null;
}

/** How many records of one group have a value of one attribute. */
export interface RecordedCell {
  readonly attribute: string;
  readonly label: string;
  readonly group: string;
  readonly n: number;
  readonly of: number;
}

/** What falls into one bin of time of one kind, or of a number. */
export interface TimeLine {
  readonly label: string;
  readonly group: readonly string[];
  /** Empty for numbers. */
  readonly term: string;
  readonly from: number;
  readonly to: number;
  readonly weight: number;
  /** null for kinds. */
  readonly mean: number | Unavailable | null;
  readonly dated: number;
  readonly undated: number;
}

export interface SummaryFound extends Findings {
  readonly options: SummaryOptions;
  readonly unit: 'fragment' | 'item';
  /** The grouping attributes. */
  readonly by: readonly { readonly id: string; readonly label: string }[];
  /** Conditions that go with the groups; null where nothing is set side by side. */
  readonly beside: Beside | null;
  readonly numbers: readonly NumberGroup[];
  /** Kinds by the words as recorded: what there is. */
  /** By attribute, whether the groups of least and of greatest median lie apart by the limits of both. */
  readonly ends: ReadonlyMap<string, EndsApart>;
  readonly terms: readonly TermGroup[];
  /** Kinds of the attributes that hold mixtures, a mixture counted once for each of its parts. */
  readonly mixed: readonly MixedCount[];
  /** `terms` at the level to be compared at, of the attributes in which that differs. */
  readonly atLevel: readonly TermGroup[];
  /** What that level is, by attribute. */
  readonly levels: ReadonlyMap<string, LevelSaid>;
  /** Symbols and colours of the first grouping, and of the kinds of each attribute as recorded and at the level. */
  readonly marks: {
    readonly groups: Marks;
    readonly recorded: ReadonlyMap<string, Marks>;
    readonly atLevel: ReadonlyMap<string, Marks>;
  };
  /** Means of numbers and shares of kinds, drawn towards what the groups have in common; empty below three groups. */
  readonly pooledMeans: readonly PooledAttribute[];
  readonly pooledKinds: readonly PooledKinds[];
  /** When the groups date to, for attributes in years. */
  readonly spans: readonly SpanGroup[];
  /** Attribute by group, where several of each are described. */
  readonly recorded: readonly RecordedCell[];
  /** null where no bins of time were asked for. */
  readonly time: readonly TimeLine[] | null;
}

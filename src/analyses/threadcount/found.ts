import type { DensitySurface } from '../../numerics/describing/density-surface.ts';
import type { CorrelationLimits, PooledCorrelation } from '../../numerics/tests/rank-correlation-limits.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Told } from '../verdicts.ts';
import type { ThreadcountOptions } from './options.ts';

/** One measurement: the ends of its reading, and the one value that it is drawn at. */
export interface End {
  readonly low: number;
  readonly high: number;
  readonly point: number;
  readonly openEnded: boolean;
}

export interface RecordPoint {
  readonly id: string;
  readonly x: End;
  readonly y: End;
  /** Index into `groups`. */
  readonly group: number;
}

export interface Measurement {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
}

/** How two measurements go together by their ranks; positive when both rise. */
export interface Relation {
  readonly n: number;
  readonly rho: number | Unavailable;
  readonly limits: CorrelationLimits | Unavailable;
  readonly p: number | Unavailable;
  readonly method: string;
  readonly told: Told;
}

/** The first measurement divided by the second. */
export interface Ratio {
  readonly n: number;
  readonly median: number | Unavailable;
  readonly limits: CorrelationLimits | Unavailable;
  /** Where readings that are ranges could put the median. */
  readonly bounds: { readonly low: number; readonly high: number } | Unavailable;
  /** Which of the two is told to be the greater by median. */
  readonly greater: 'first' | 'second' | 'neither' | 'cannot be told';
}

/** A measure that follows from counts and diameters: balance, cover, openness. */
export interface Derived {
  readonly label: string;
  readonly unit: string;
  readonly n: number;
  readonly median: number | Unavailable;
  readonly q1: number | Unavailable;
  readonly q3: number | Unavailable;
}

export interface SymbolGroup {
  readonly label: string;
  /** Place in the order of symbols and colours. */
  readonly mark: number | null;
  readonly items: number;
  readonly relation: Relation;
  readonly pAdjusted: number | Unavailable;
  readonly ratio: Ratio | null;
  readonly derived: readonly Derived[];
}

/** The two looked at within the groups of another attribute. */
export interface Within {
  readonly attribute: string;
  readonly label: string;
  readonly pooled: PooledCorrelation | Unavailable;
  readonly told: Told;
  /** Whether the relation of all together is lost or turned within these groups. */
  readonly overturns: boolean;
}

export type RelationVerdict =
  | 'rise together'
  | 'run against each other'
  /** Told of all together, and not within the groups of the symbols. */
  | 'rise together across groups'
  | 'run against each other across groups'
  /** Told within the groups, and not, or the other way, of all together. */
  | 'rise together within groups'
  | 'run against each other within groups'
  | 'not told apart'
  | 'cannot be told';

export interface ThreadcountFound extends Findings {
  readonly options: ThreadcountOptions;
  readonly unit: 'fragment' | 'item';
  readonly x: Measurement;
  readonly y: Measurement;
  readonly byLabel: string;
  readonly points: readonly RecordPoint[];
  readonly groups: readonly SymbolGroup[];
  readonly all: Relation;
  /** By the attribute of the symbols first. */
  readonly within: readonly Within[];
  readonly verdict: RelationVerdict;
  /** Whether ratios are drawn as equal distances. */
  readonly logarithmic: boolean;
  /** Null where the two have different units, so that their ratio says nothing. */
  readonly ratio: Ratio | null;
  readonly derived: readonly Derived[];
  /** Readings of which at least one of the two is a range, and those with an open end. */
  readonly ranges: number;
  readonly openEnded: number;
  /** Values drawn within the ranges: central part, at the confidence, of rho, and how often the verdict was another. */
  readonly drawn:
    | {
        readonly low: number;
        readonly high: number;
        readonly otherwise: number;
        readonly draws: number;
        readonly overturns: boolean;
      }
    | Unavailable;
  /** Records whose systems nobody told apart: the denser stands first, which moves the ratio upwards. */
  readonly untold: number;
  readonly contours: { readonly surface: DensitySurface; readonly levels: readonly number[] } | null;
  readonly find: { readonly x: End; readonly y: End } | null;
  readonly findNotes: readonly string[];
}

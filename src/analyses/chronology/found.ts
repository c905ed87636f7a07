import type { CountRange } from '../../numerics/assemblages/chance-sums.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Beside } from '../shared/guard/beside.ts';
import type { LevelSaid } from '../shared/level/said.ts';
import type { Told } from '../verdicts.ts';
import type { ChronologyOptions } from './options.ts';

/** When the finds of one place, kind or phase were made, each shared out evenly over its span. Astronomical years. */
export interface FindsSpan {
  readonly label: string;
  /** Place in the order of symbols and colours. */
  readonly mark: number | null;
  readonly n: number;
  /** First year of the earliest and last year of the latest span. */
  readonly from: number;
  readonly to: number;
  readonly q1: number;
  readonly median: number;
  readonly q3: number;
}

/** Finds of one slice of time. */
export interface SliceCount {
  /** Sum of the shares of the spans that lie in the slice. */
  readonly expected: number;
  /** Where the count lies at the confidence, each find having a date of its own within its span. */
  readonly apart: CountRange;
  /** The same, where the finds of one place and span were all made in one year of it. */
  readonly together: CountRange;
  /** Finds whose spans lie wholly within the slice, and those whose spans touch it: no assumption passes these. */
  readonly sure: number;
  readonly possible: number;
}

export interface Series {
  readonly label: string;
  readonly mark: number | null;
  readonly n: number;
  /** One a slice. */
  readonly slices: readonly SliceCount[];
}

export interface PlaceSeries extends Series {
  /** Expected counts of each of `kinds`, slice by slice; the last line is of finds without a kind. */
  readonly byKind: readonly (readonly number[])[];
}

/**
 * Does a kind come later or earlier than the other kinds: of all finds, and among those of one place?
 * "across places": only of all finds; "within places": only, or otherwise, among those of one place.
 */
export type ChangeVerdict =
  | 'later'
  | 'earlier'
  | 'later across places'
  | 'earlier across places'
  | 'later within places'
  | 'earlier within places'
  | 'not told apart'
  | 'cannot be told';

export interface ChangeWithin {
  readonly attribute: string;
  readonly label: string;
  /** Finds in groups that have this kind and others. */
  readonly n: number;
  readonly groups: number;
  /** Cliff's delta within groups, pooled by their pairs; positive is later. */
  readonly delta: number | Unavailable;
  readonly p: number | Unavailable;
  readonly pAdjusted: number | Unavailable;
  readonly told: Told;
}

export interface ChangeInTime {
  readonly label: string;
  readonly mark: number | null;
  readonly n: number;
  /** Cliff's delta of the middles of the spans against those of all other kinds; positive is later. */
  readonly delta: number | Unavailable;
  readonly p: number | Unavailable;
  readonly pAdjusted: number | Unavailable;
  readonly method: string;
  readonly told: Told;
  /** Within places first. */
  readonly within: readonly ChangeWithin[];
  /** Dates drawn within the spans: central part of delta, and draws in which it is told otherwise. */
  readonly drawn:
    | {
        readonly low: number;
        readonly high: number;
        readonly otherwise: number;
        readonly draws: number;
        readonly overturns: boolean;
      }
    | Unavailable;
  readonly verdict: ChangeVerdict;
}

export interface Phase extends FindsSpan {
  /** How it follows the one before it in this order: `after` where no year is shared by the two. */
  readonly order: 'first' | 'after' | 'overlaps';
  /** Counts of each of `kinds`. */
  readonly counts: readonly number[];
}

export interface ChronologyFound extends Findings {
  /** Conditions that go with the kinds, but for those within which changes are looked for again. */
  readonly beside: Beside;
  readonly options: ChronologyOptions;
  readonly unit: 'fragment' | 'item';
  readonly placesLabel: string;
  readonly kindsLabel: string;
  readonly phasesLabel: string;
  readonly level: LevelSaid;
  /** First years of the slices, and the first year after the last. */
  readonly edges: readonly number[];
  readonly all: Series;
  /** Commonest first. */
  readonly kinds: readonly Series[];
  readonly withoutKind: number;
  /** Earliest first, as are the spans. */
  readonly places: readonly PlaceSeries[];
  readonly spans: { readonly places: readonly FindsSpan[]; readonly kinds: readonly FindsSpan[] };
  readonly phases: readonly Phase[];
  /** In the order of `kinds`. */
  readonly changes: readonly ChangeInTime[];
  readonly verdict: 'cannot be told' | 'none' | 'across places' | 'some';
  /** Distinct spans of the finds dated, how many finds share the commonest five of them, and whether the dates are those of a few phases. */
  readonly distinct: number;
  readonly shared: number;
  readonly byPhase: boolean;
  /** Finds that lie wholly outside the slices. */
  readonly outside: number;
  /** The slice with the most expected. */
  readonly peak: number | null;
}

import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import type { VMeasure } from '../../numerics/grouping/agreement.ts';
import type { GroupStability } from '../../numerics/grouping/stability.ts';
import type { MergeTree } from '../../numerics/grouping/tree.ts';
import type { Validity } from '../../numerics/grouping/validity.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Beside } from '../shared/guard/beside.ts';
import type { GroupingOptions } from './options.ts';
import type { BroadTried, GroupsVerdict, Restated, Trust } from './trust-found.ts';

/** At this silhouette width or below a record sits hardly better in its group than in the next. */
export const BORDERLINE = 0.05;

/** One way of putting the records into k groups. */
export interface Partition {
  readonly k: number;
  /** Group of each record, 0 … k - 1, -1 for none. */
  readonly membership: Int32Array;
  /** Mean silhouette width; null where it has none (fewer than two groups). */
  readonly meanSilhouette: number | null;
  /** By k-means: how many starts were tried, and whether two of them came to the best. */
  readonly starts?: { readonly starts: number; readonly metTwice: boolean };
}

/** A number of groups that was tried, with what speaks for or against it. */
export interface Tried extends Partition {
  readonly validity: Validity;
  /** Records of the smallest group; 0 where no group was found. */
  readonly smallest: number;
  /** The one whose groups are given. */
  readonly chosen: boolean;
}

/** One record, with its place among the groups. */
export interface GroupedRecord {
  /** Row in the table of records. */
  readonly row: number;
  readonly id: string;
  readonly item: string;
  readonly source: string;
  readonly sourceRow: number;
  /** 0 = largest group, -1 = in none. */
  readonly group: number;
  /** NaN for a record in no group. */
  readonly silhouette: number;
  readonly borderline: boolean;
  /** The nearest other group. */
  readonly neighbour: number;
  /** Dissimilarity to the medoid of its own group. */
  readonly toMedoid: number;
}

/** How one attribute sets one group apart from the rest. */
export interface Mark {
  readonly attribute: string;
  readonly label: string;
  /** Kind or grade that is more, or less, frequent; empty for numbers. */
  readonly term: string;
  /** Cliff's delta for numbers, phi for kinds: -1 to 1, positive when the group has more. */
  readonly effect: number;
  /** Median, or share of the kind, within the group and in all others. */
  readonly inside: number;
  readonly outside: number;
  readonly insideN: number;
  readonly outsideN: number;
  readonly unit: string;
}

/** A short description that picks out most of a group and little else. */
export interface GroupRule {
  /** Conditions as a reader would say them, joined by "and". */
  readonly text: string;
  readonly conditions: number;
  /** Share of the group that fulfils it, and share of those fulfilling it that are of the group. */
  readonly recall: number;
  readonly precision: number;
}

export interface FoundGroup {
  readonly size: number;
  /** Its marks in words, as no other group has them: "open twining of willow bast". */
  readonly name: string;
  /** Too small for anything to be typical of it. */
  readonly small: boolean;
  /** Place in `records` of the member that stands best for the others. */
  readonly medoid: number;
  readonly silhouette: number;
  readonly stability: GroupStability | Unavailable;
  /** Whether the group is found when items are drawn anew. */
  readonly again: 'found again' | 'doubtful' | 'dissolves' | 'cannot be told';
  /** Whether its pairs stay together in other ways to group; null where none were tried. */
  readonly firm: boolean | null;
  readonly marks: readonly Mark[];
  readonly rule: GroupRule;
  /** Members whose silhouette width is at most BORDERLINE. */
  readonly borderline: number;
}

/** How the groups are spread over the values of one attribute of context. */
export interface ContextTally {
  readonly attribute: string;
  readonly label: string;
  readonly values: readonly string[];
  /** counts[group][value] */
  readonly counts: readonly (readonly number[])[];
  readonly expected: readonly (readonly number[])[];
  /** Adjusted standardised residuals (Haberman 1973): beyond ±2 is more than chance often gives. */
  readonly residuals: readonly (readonly number[])[];
  readonly cramersV: number;
  /** Grouped records without a value. */
  readonly missing: number;
}

/** The groups set against a recorded classification. */
export interface Agreement {
  readonly attribute: string;
  readonly label: string;
  readonly kinds: readonly string[];
  /** counts[kind][group] */
  readonly counts: readonly (readonly number[])[];
  /** The group paired with each kind, -1 for none. */
  readonly match: readonly number[];
  readonly adjustedRand: number | Unavailable;
  readonly adjustedMutualInformation: number | Unavailable;
  readonly vMeasure: VMeasure | Unavailable;
  readonly n: number;
  /** Grouped records without a recorded kind. */
  readonly missing: number;
}

export interface GroupingFound extends Findings {
  /** How finds were recorded, recovered and kept, where that goes with the groups. */
  readonly beside: Beside;
  readonly options: GroupingOptions;
  readonly unit: 'fragment' | 'item';
  readonly verdict: GroupsVerdict;
  readonly restated: Restated | null;
  readonly k: number;
  readonly records: readonly GroupedRecord[];
  readonly groups: readonly FoundGroup[];
  readonly meanSilhouette: number | null;
  /** Reading of that width by Kaufman & Rousseeuw 1990, chapter 2, table 4. */
  readonly structure: 'strong' | 'reasonable' | 'weak' | 'none';
  readonly tried: readonly Tried[];
  readonly tree: MergeTree | null;
  readonly cophenetic: number | null;
  readonly trust: Trust;
  /** What broad terms make of the groups; null where no term is broad. */
  readonly broad: BroadTried | null;
  /** Groups that some reading of the broad terms dissolves. */
  readonly hangOnBroad: readonly number[];
  /** Share of each record in each group, records by groups; null for large tables and fewer than two groups. */
  readonly graded: Float64Array | null;
  readonly context: readonly ContextTally[];
  readonly agreement: Agreement | null;
  /** Dissimilarities among the records at the places `inMatrix`: all, or a sample of a large table. */
  readonly matrix: Condensed;
  readonly inMatrix: Int32Array;
  readonly sampled: boolean;
  readonly notes: readonly string[];
}

/** The number of a group as tables and figures print it, 1 = largest. */
export function groupName(group: number): string {
  return group < 0 ? 'none' : String(group + 1);
}

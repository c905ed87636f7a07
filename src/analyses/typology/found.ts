import type { GroupStability } from '../../numerics/grouping/stability.ts';
import type { DipTest } from '../../numerics/modes/dip.ts';
import type { GaussianMixture } from '../../numerics/modes/gaussian-mixture.ts';
import type { BandwidthTest } from '../../numerics/modes/silverman.ts';
import type { Association } from '../../numerics/tests/contingency.ts';
import type { DispersionTest } from '../../numerics/tests/dispersion.ts';
import type { Kappa } from '../../numerics/tests/kappa.ts';
import type { PermutationalAnova } from '../../numerics/tests/permanova.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { LevelSaid } from '../level-said.ts';
import type { Told } from '../verdicts.ts';
import type { Typology } from './rules.ts';

/** Place of a record that is of no single type. */
export const NO_TYPE = { none: -1, several: -2, undecided: -3 } as const;

/** Which type each record is of. */
export interface Assignment {
  /** Rows of the table that the typology speaks of. */
  readonly rows: Int32Array;
  /** For each of them the place of its type, or one of NO_TYPE. */
  readonly type: Int32Array;
  /** For each undecided one the attribute that keeps it so. */
  readonly blame: readonly (string | null)[];
  /** Rows that the typology does not speak of, or may not. */
  readonly setAside: readonly { readonly reason: string; readonly fragments: number }[];
  /** Pairs of types that some record fits both, with the number of records. */
  readonly overlaps: readonly { readonly first: number; readonly second: number; readonly records: number }[];
}

export interface Limits {
  readonly low: number;
  readonly high: number;
}

/** Where two parts cross, with what items drawn again leave of it (expanded percentiles), in the attribute's unit. */
export interface Threshold extends Limits {
  readonly estimate: number;
  /** On the far side of the narrower part, where readings of the wider one lie beyond it; null where none do. */
  readonly second: (Limits & { readonly estimate: number }) | null;
  /** Whether parts of one spread or with their own fit better, by BIC. */
  readonly spread: 'equal' | 'own';
  /** How far apart the two parts lie, in standard deviations within a part. */
  readonly distance: number;
  /** The two readings between which none lies, where the whole interval does: any cut there parts the same. */
  readonly gap: Limits | null;
}

/** How a cut of the rules stands to the threshold that the readings show. */
export interface CutAnswer {
  readonly cut: number;
  /** Within the interval of the threshold. */
  readonly within: boolean;
  /** Readings between the cut and the estimate, of `n`. */
  readonly between: number;
  readonly n: number;
  /** Within, or so few readings between that both part the same records. */
  readonly agrees: boolean;
}

/** What the readings of one attribute say about a division where the rules cut them. */
export type SplitVerdict = 'divided at the cut' | 'divided elsewhere' | 'one range' | 'cannot be told';

/** Whether the readings of one attribute fall into two heaps where a typology cuts them. */
export interface Split {
  readonly attribute: string;
  readonly label: string;
  readonly unit: string;
  /** Cuts that the rules make, ascending, in the attribute's unit. */
  readonly cuts: readonly number[];
  readonly logarithm: boolean;
  /** Why that scale: the definition of the attribute says so, or the readings fit it better. */
  readonly scaleBy: 'definition' | 'fit';
  /** Smallest and largest step that readings were rounded to, in the attribute's unit; 0 where exact. */
  readonly steps: { readonly least: number; readonly most: number };
  /** Readings used, in the attribute's unit, and how many of them differ. */
  readonly values: Float64Array;
  readonly distinct: number;
  /** So few different readings that rounding could pass for heaps. */
  readonly coarse: boolean;
  readonly dip: DipTest | Unavailable;
  /** Silverman's test of one mode; its bandwidth is on the scale of comparison. */
  readonly bandwidth: BandwidthTest | Unavailable;
  /** The mixture of 1 to 5 parts that BIC prefers, on the scale of comparison. */
  readonly best: GaussianMixture | Unavailable;
  readonly bic: readonly { readonly parts: number; readonly bic: number | Unavailable }[];
  /** Two parts against one by resampled likelihood ratio. */
  readonly twoAgainstOne: { readonly statistic: number; readonly p: number } | Unavailable;
  readonly threshold: Threshold | Unavailable;
  /** Valley of the density between its two peaks, in the attribute's unit. */
  readonly valley: number | Unavailable;
  /** How each cut stands to the threshold; empty where there is none. */
  readonly answers: readonly CutAnswer[];
  /** The density of the readings, places in the attribute's unit. */
  readonly curve: { readonly at: Float64Array; readonly height: Float64Array };
  readonly verdict: SplitVerdict;
}

/** The smallest distance of two heaps that each test finds in 8 samples of 10 of this size, at 5 %. */
export interface Visible {
  /** Share of the smaller heap, as the rules part the readings. */
  readonly share: number;
  /** By the dip, heaps of equal size. */
  readonly halves: number | Unavailable;
  /** By the dip, heaps as the rules part them. */
  readonly dip: number | Unavailable;
  /** By the likelihood ratio of two parts against one, heaps as the rules part them. */
  readonly ratio: number | Unavailable;
}

/** How many records change sides when a cut moves. */
export interface MovedCut {
  readonly attribute: string;
  readonly cut: number;
  /** The cut moved by this share of itself. */
  readonly by: number;
  readonly to: number;
  /** Records whose whole reading lies between the old cut and the new one. */
  readonly changed: number;
  /** Records whose reading straddles the moved cut. */
  readonly undecided: number;
  readonly n: number;
}

/** Types predicted for each fold from all the others. */
export interface Prediction {
  /** confusion[true type][predicted type] */
  readonly confusion: readonly (readonly number[])[];
  /** Predicted type of each compared record, -1 for one that took no part. */
  readonly predicted: Int32Array;
  readonly n: number;
  /** Mean share of each type's records that were predicted rightly: large types do not drown small ones. */
  readonly balanced: number;
  /** Share of shuffled types that were predicted as well. */
  readonly p: number;
  /** What guessing gives on average: one over the number of types. */
  readonly chance: number;
  readonly folds: number;
  /** Agreement of predicted and true types beyond chance. */
  readonly kappa: Kappa | Unavailable;
  /** Attributes that it rests on. */
  readonly by: readonly string[];
}

/** Groups found without the types, set against them. */
export interface FreeGroups {
  /** Group of each compared record, as many groups as types. */
  readonly membership: Int32Array;
  /** counts[type][group] */
  readonly counts: readonly (readonly number[])[];
  /** Group that answers to each type, -1 for none. */
  readonly match: readonly number[];
  readonly adjustedRand: number | Unavailable;
  readonly adjustedMutualInformation: number | Unavailable;
  /** How well free groups of records drawn again find each type, by its place; none where a type has no record. */
  readonly stability: readonly GroupStability[];
  /** Types that free groups do not find again often enough to be trusted. */
  readonly shaky: readonly number[];
}

/** Would one type fewer do, or one more? Both judged in attributes that did not define the types. */
export interface FinerCoarser {
  readonly merged: Merged | Unavailable;
  readonly divided: Divided | Unavailable;
}

/** The two nearest types: are they distinguishable at all? */
export interface Merged {
  readonly first: number;
  readonly second: number;
  readonly difference: PermutationalAnova | Unavailable;
  readonly told: Told;
}

/** The widest type: does it fall into two groups that predict one another? */
export interface Divided {
  readonly type: number;
  readonly sizes: readonly number[];
  /** Mean over splits in halves. */
  readonly strength: number;
  readonly silhouette: number;
  /** Strong enough to speak for a division. */
  readonly mayBeTwo: boolean;
}

/** The types compared among records of one kind alone, such as the charred ones. */
export interface Within {
  readonly kind: string;
  readonly n: number;
  readonly difference: PermutationalAnova | Unavailable;
  /** Holm over the kinds that could be tested. */
  readonly pAdjusted: number | Unavailable;
  readonly told: Told;
}

/** The compared records on two axes. */
export interface TypeMap {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Share that each axis has of what any axes could show: of the sum of positive eigenvalues. */
  readonly shares: readonly [number, number];
}

/** An attribute that the records show to be computed from what defines the types. */
export interface ComputedFrom {
  readonly id: string;
  /** The defining attribute, and the one that it is joined with. */
  readonly from: readonly string[];
  /** Rank correlation with it. */
  readonly correlation: number;
}

/** How the types stand in attributes that did not define them. */
export interface Apart {
  /** Attributes compared, none of them defining. */
  readonly compared: readonly string[];
  /** Attributes that were asked to be compared although they define the types. */
  readonly usedTwice: readonly string[];
  /** Left out because the records show them to be computed from what defines the types. */
  readonly computed: readonly ComputedFrom[];
  /** Places (among the typed records) of the records compared, and their types. */
  readonly places: Int32Array;
  readonly labels: Int32Array;
  readonly difference: PermutationalAnova | Unavailable;
  readonly differ: Told;
  readonly dispersion: DispersionTest | Unavailable;
  readonly differInSpread: Told;
  /** Mean silhouette width of each type, in the order of the typology; null where it has no record. */
  readonly silhouettes: readonly (number | null)[];
  readonly meanSilhouette: number | Unavailable;
  readonly prediction: Prediction | Unavailable;
  readonly predicted: Told;
  readonly discriminant: Prediction | Unavailable;
  readonly freeGroups: FreeGroups | Unavailable;
  readonly finerCoarser: FinerCoarser;
  readonly within: readonly Within[];
  /** What could pass for the types: recorder, source, recovery, preservation, structure, period. */
  readonly conditions: readonly Condition[];
  /** Principal coordinates in the compared attributes. */
  readonly map: TypeMap | Unavailable;
}

/** Why nothing could be compared; `circular` where every attribute asked for defines the types. */
export interface NotApart extends Unavailable {
  readonly circular: boolean;
  readonly usedTwice: readonly string[];
}

/** Whether the types go with something outside themselves. */
export interface Meaning {
  readonly attribute: string;
  readonly label: string;
  readonly kinds: readonly string[];
  /** counts[type][kind], empty types and kinds left out. */
  readonly counts: readonly (readonly number[])[];
  /** Places of the types that the lines of `counts` stand for. */
  readonly types: readonly number[];
  readonly association: Association | Unavailable;
  /** Exact or resampled where an expected count is below 5, from chi-squared otherwise. */
  readonly p: number | Unavailable;
  /** Over all attributes set against the types (Holm). */
  readonly pAdjusted: number | Unavailable;
  readonly method: string;
  /** The cell with the largest adjusted residual, as places in `counts`; null where there is none. */
  readonly strongest: { readonly type: number; readonly kind: number; readonly residual: number } | null;
  readonly told: Told;
  /** At which level kinds were counted, and the verdict by the words as recorded; null where that changes nothing. */
  readonly level: LevelSaid;
  readonly asRecorded: Told | null;
}

/** What a typology costs to say, and what it saves in saying everything else. */
export interface Complexity {
  /** Bits that say the rules. */
  readonly rules: number;
  /** Bits that say the attributes, each fold told by the others, for records of known type. */
  readonly values: number;
  /** The same without any type. */
  readonly withoutTypes: number;
  /** withoutTypes - values - rules: what the typology saves after all; below 0 it does not pay for itself. */
  readonly saved: number;
  readonly attributes: readonly string[];
}

/** What one typology says of the records, and how well that holds. */
export interface Judged {
  readonly typology: Typology;
  /** The rule of each type as a reader would say it. */
  readonly rules: readonly string[];
  /** Conditions that the rules hold together. */
  readonly conditions: number;
  readonly defining: readonly string[];
  readonly assignment: Assignment;
  readonly apart: Apart | NotApart;
}

/** A typology with what it costs and saves, told on the same records and attributes as its rivals. */
export interface Weighed extends Judged {
  readonly complexity: Complexity;
}

/** What all tests together say of the claim. */
export type Verdict =
  | 'supported'
  /** Supported, but the types go so far with a condition that it alone may make them. */
  | 'may be a condition'
  /** No division is seen where the rules cut. */
  | 'one range'
  | 'divided elsewhere'
  | 'not distinguishable'
  | 'circular'
  | 'not testable'
  | 'open';

/** A condition that could pass for the types, such as preservation, and whether it may explain them. */
export interface Condition {
  readonly attribute: string;
  readonly label: string;
  readonly p: number | Unavailable;
  readonly verdict:
    | 'holds within it'
    | 'not told within it'
    | 'may explain them'
    | 'does not go with them'
    /** Not recorded, or known of less than half: it could not be looked at. */
    | 'unknown'
    | 'scarce';
  /** Kinds within which the types are told apart, are not, and could not be tested. */
  readonly holds: readonly string[];
  readonly fails: readonly string[];
  readonly untested: readonly string[];
}

export interface TypologyFound extends Findings, Weighed {
  readonly unit: 'fragment' | 'item';
  readonly confidence: number;
  readonly verdict: Verdict;
  /** Ids of the records that the typology speaks of, in the order of the assignment. */
  readonly ids: readonly string[];
  /** Types with too few records for anything to be said of them. */
  readonly small: readonly number[];
  readonly splits: readonly Split[];
  readonly moved: readonly MovedCut[];
  readonly meaning: readonly Meaning[];
  /** What could have been seen in the readings of each split. */
  readonly visible: readonly Visible[];
  readonly rivals: readonly Weighed[];
  readonly labelOf: ReadonlyMap<string, string>;
  /** Assemblages that the typed records come from. */
  readonly assemblages: readonly string[];
}

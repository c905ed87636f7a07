import type { GroupStability } from '../../numerics/grouping/stability.ts';
import type { DispersionTest } from '../../numerics/tests/dispersion.ts';
import type { Kappa } from '../../numerics/tests/kappa.ts';
import type { PermutationalAnova } from '../../numerics/tests/permanova.ts';
import type { Unavailable } from '../contract.ts';
import type { Told } from '../verdicts.ts';

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
  /** How many records have a type, where those compared were drawn from them by chance; null where all were taken. */
  readonly drawnFrom: number | null;
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
  readonly conditions: readonly RivalCondition[];
  /** Principal coordinates in the compared attributes. */
  readonly map: TypeMap | Unavailable;
}

/** Why nothing could be compared; `circular` where every attribute asked for defines the types. */
export interface NotApart extends Unavailable {
  readonly circular: boolean;
  readonly usedTwice: readonly string[];
}

/** A condition that could pass for the types, such as preservation, and whether it may explain them. */
export interface RivalCondition {
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

import type { BroadRule } from '../../fragments/comparison/broad.ts';
import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import type { Gap } from '../../numerics/grouping/gap.ts';
import type { GroupStability } from '../../numerics/grouping/stability.ts';
import type { Unavailable } from '../contract.ts';
import type { Told } from '../verdicts.ts';
import type { GroupingMethod } from './options.ts';

/** What the same method makes of tables that hold no groups. */
export interface Reference {
  /** Greatest mean silhouette width over the numbers of groups tried, in the table as it is. */
  readonly observed: number;
  /** Share of tables, the real one included, whose groups are as good or better: (b + 1) / (m + 1). */
  readonly p: number;
  /** Whether the groups here are better than theirs; cannot be told from too few tables. */
  readonly told: Told;
  readonly tables: number;
  /** Median and 95 % quantile of what the reference tables reach at their best. */
  readonly median: number;
  readonly high: number;
  /** For each number of groups: median and 95 % quantile of the reference tables' mean width. */
  readonly byCount: readonly { readonly k: number; readonly median: number; readonly high: number }[];
  /** For each table its log dispersions, for k = 1 and each number of groups tried. */
  readonly dispersions: readonly (readonly number[])[];
}

/** One other way to group the same records. */
export interface Variant {
  readonly method: GroupingMethod;
  readonly weights: string;
  readonly k: number;
  readonly meanSilhouette: number | null;
  /** Agreement with the groups chosen. */
  readonly adjustedRand: number | Unavailable;
}

export interface Variants {
  readonly variants: readonly Variant[];
  /** Share of the variants in which each pair falls into one group, condensed. */
  readonly together: Condensed;
  /** For each group its mean share with itself and each other one; null for a pair that is none. */
  readonly groups: readonly (readonly (number | null)[])[];
  /** For each record: mean share with its own group, and with the nearest other one. */
  readonly records: readonly {
    readonly own: number | null;
    readonly next: number;
    readonly other: number | null;
  }[];
}

/** What becomes of the groups when one assemblage had never been found. */
export interface LeftOut {
  readonly assemblage: string;
  /** Records of it. */
  readonly records: number;
  /** Agreement of the other records' groups with those that they form among themselves. */
  readonly adjustedRand: number | Unavailable;
  /** For each group the greatest Jaccard coefficient with a new one; null where it is all of this assemblage. */
  readonly groups: readonly (number | null)[];
  /** Groups that are then gone. */
  readonly gone: readonly number[];
}

/** What becomes of the groups when broad terms are read otherwise. */
export interface BroadTried {
  /** Labels of the broad terms that some record has. */
  readonly terms: readonly string[];
  readonly ways: readonly {
    readonly rule: BroadRule;
    /** For each group the greatest Jaccard coefficient with one made so; null where none of its records was compared. */
    readonly groups: readonly (number | null)[];
    /** Groups that are then gone. */
    readonly gone: readonly number[];
  }[];
}

/** Everything that says how far groups are to be trusted. */
export interface Trust {
  /** Records it was judged on: all, or a sample of a large table. */
  readonly records: number;
  readonly stability: readonly GroupStability[] | Unavailable;
  /** Tables with every attribute shuffled on its own. */
  readonly shuffled: Reference | Unavailable;
  /** Tables spread evenly over the same axes. */
  readonly even: Reference | Unavailable;
  /** Tables drawn from a single heap of the same spread. */
  readonly heap: Reference | Unavailable;
  readonly gaps: readonly Gap[] | Unavailable;
  /** Number of groups by the gap statistic, 1 for none. */
  readonly groupsByGap: number | Unavailable;
  readonly predictionStrength: readonly { readonly k: number; readonly mean: number }[] | Unavailable;
  /** What other methods, weights and numbers of groups make of the same records. */
  readonly variants: Variants | Unavailable;
  /** The groups with each assemblage left out in turn. */
  readonly leftOut: readonly LeftOut[] | Unavailable;
  /** Places of the records judged, in the order of `variants.records`. */
  readonly places: Int32Array;
}

/** A compared attribute whose own kinds, or own groups, the groups do no more than repeat. */
export interface Restated {
  readonly attribute: string;
  readonly label: string;
  readonly adjustedRand: number;
  readonly n: number;
}

/** Whether there are groups: nothing is claimed that a table without groups gives as well. */
export type GroupsVerdict =
  | 'groups'
  /** Groups, but those of one attribute over again. */
  | 'one attribute'
  /** Attributes shuffled on their own give groups as good. */
  | 'no better than shuffled'
  /** A cut through one heap or an even cloud is as good. */
  | 'no better than one heap'
  | 'no two groups'
  | 'cannot be told';

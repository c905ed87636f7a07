import type { UnseenChance } from '../../numerics/assemblages/unseen-kinds.ts';
import type { PercentileBounds } from '../../numerics/describing/percentile.ts';
import type { ConformalP, Verdict } from '../../numerics/tests/conformal.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Guard } from '../guard-found.ts';
import type { PlacementOptions } from './options.ts';

/** What is said of a label at a level of certainty. */
export interface LevelVerdict {
  readonly level: number;
  readonly verdict: Verdict;
}

/** One label of one attribute, judged. */
export interface JudgedLabel {
  readonly attribute: string;
  readonly label: string;
  /** Records that carry it, and those of them that it was judged by. */
  readonly size: number;
  readonly judgedBy: number;
  /** Whether it is judged by records, or by whole sites with one record of each. */
  readonly by: 'records' | 'sites';
  readonly outcome: ConformalP | Unavailable;
  /** Place of the label in the order of likelihood, 1 = first, and its share; null where it has none. */
  readonly likelihood: { readonly rank: number; readonly share: number } | null;
  /** At the level asked for. */
  readonly verdict: Verdict;
  /** At every level that is shown, lowest first. */
  readonly verdicts: readonly LevelVerdict[];
}

/**
 * The labels of one attribute that may hold the find at one level. A label with too few records to be
 * judged stays in the set: nothing is known against it.
 */
export interface LabelSet {
  readonly attribute: string;
  /** What its labels are judged by, and may have too few of. */
  readonly by: 'records' | 'sites';
  readonly level: number;
  /** Whether this is the level asked for. */
  readonly asked: boolean;
  /** Labels that cannot be excluded, likeliest first; so are the others. */
  readonly kept: readonly string[];
  /** Labels with too few records to exclude. */
  readonly tooFew: readonly string[];
  readonly excluded: readonly string[];
}

/** The labels of one attribute in order of likelihood for the find. */
export interface LabelRanking {
  readonly attribute: string;
  /** What is left out in turn to see how often the order is right: records (with their items), or whole sites. */
  readonly by: 'records' | 'sites';
  /** Likeliest first; shares sum to 1, if all labels are equally likely beforehand and the find is of one of them. */
  readonly order: readonly { readonly label: string; readonly share: number }[];
  readonly accuracy:
    | {
        /** Records left out in turn; those whose own label came first, and would by the nearest record alone. */
        readonly leftOut: number;
        readonly right: number;
        readonly nearestRight: number;
        /** Labels among them, so that a guess is right once in so many. */
        readonly labels: number;
        readonly verdict: 'better than a guess' | 'no better than a guess';
      }
    | Unavailable;
}

/**
 * Whether the find belongs to any of the labels of one attribute, at `noneLevel`. "None of these" takes
 * that every label was judged and excluded; where the others are excluded and some have too few records,
 * only these are left.
 */
export interface Novelty {
  readonly attribute: string;
  readonly verdict: 'none of these' | 'only small ones left' | 'cannot be excluded' | 'too few to judge';
  /** Greatest p of the labels that can be judged at `noneLevel`. */
  readonly greatest: number | Unavailable;
  readonly tooFew: readonly string[];
  readonly unseen: UnseenChance | Unavailable;
}

export type Change = 'its own ranges' | 'other weights' | 'an assemblage left out' | 'complete records alone';

/** How the p value of one label moves under one kind of change. */
export interface Move {
  readonly attribute: string;
  readonly label: string;
  readonly change: Change;
  readonly lowest: number;
  readonly highest: number;
  /** The verdict at the level as it stands. */
  readonly verdict: Verdict;
  /** Changes under which the verdict at the level is another, and all changes tried. */
  readonly turned: number;
  readonly tried: number;
  /** Whether so many changes turn it that the verdict hangs on them. */
  readonly fragile: boolean;
  /** Named changes that turn it: weights or assemblages. */
  readonly by: readonly string[];
}

/** What the comparanda lack of what the find has: so far each is set against the find without it. */
export interface Lacked {
  /** Comparanda that lack anything of it, and all that were compared. */
  readonly records: number;
  readonly of: number;
  /** The attributes, with how many lack each; most first, none that nothing lacks. */
  readonly attributes: readonly { readonly label: string; readonly records: number }[];
}

/** What measuring one more attribute is expected to settle. */
export interface NextMeasurement {
  readonly id: string;
  readonly label: string;
  /** Attribute of the labels that are counted. */
  readonly of: string;
  /** Labels that cannot be excluded now, and on average once it is measured. */
  readonly now: number;
  readonly expected: number;
  /** Plausible values tried: those of the nearest comparanda that have it. */
  readonly values: number;
}

/** One of the nearest comparanda. */
export interface Neighbour {
  readonly row: number;
  readonly id: string;
  readonly item: string;
  readonly assemblage: string;
  readonly distance: number;
  /** Block -> what it adds to the distance; null where nothing of it could be compared. */
  readonly blocks: readonly { readonly block: string; readonly contribution: number | null }[];
  /** What the find has and this record lacks. */
  readonly notCompared: readonly string[];
  readonly source: string;
  readonly sourceRow: number;
  /** Use as the source records it, and how it was known; empty where it says nothing. */
  readonly use: string;
  readonly useBasis: string;
}

/** Where one measurement of the find stands among the records of one label. */
export interface Percentile {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  /** Attribute and label of the group; both empty for all records together. */
  readonly by: string;
  readonly group: string;
  readonly bounds: PercentileBounds | Unavailable;
}

export interface MapPosition {
  readonly places: readonly {
    readonly row: number;
    readonly id: string;
    readonly x: number;
    readonly y: number;
  }[];
  readonly shares: readonly [number, number];
  readonly find: readonly [number, number];
  readonly cloud: readonly (readonly [number, number])[];
}

/** Conditions that may stand for what excludes labels of one attribute. */
export interface GuardedSet {
  readonly attribute: string;
  readonly guard: Guard;
}

export interface PlacementFound extends Findings {
  readonly options: PlacementOptions;
  readonly unit: 'fragment' | 'item';
  /** What a record of the comparanda stands for, when the find is set among them. */
  readonly standsFor: 'one fragment an item' | 'whole items' | 'independent records' | 'dependent fragments';
  /** Why the find could not be placed at all; null when it could. */
  readonly unplaced: string | null;
  /** Labels of the attributes that the find was compared on, and of those that it lacks. */
  readonly comparedOn: readonly string[];
  readonly lacking: readonly string[];
  readonly lacked: Lacked;
  /** Attributes of labels that are compared as well, so that their labels are judged by themselves. */
  readonly circular: readonly string[];
  readonly neighbours: readonly Neighbour[];
  readonly percentiles: readonly Percentile[];
  readonly judged: readonly JudgedLabel[];
  /** One for each attribute of two labels or more. */
  readonly rankings: readonly LabelRanking[];
  /** A set for each attribute and level shown. */
  readonly sets: readonly LabelSet[];
  /** Conditions that may stand for an exclusion, for each attribute that excludes some of its labels. */
  readonly guarded: readonly GuardedSet[];
  /** p of the find among all comparanda together, whatever their labels. */
  readonly anywhere: ConformalP | Unavailable;
  readonly novelty: readonly Novelty[];
  readonly moves: readonly Move[];
  readonly next: readonly NextMeasurement[];
  readonly position: MapPosition | Unavailable;
  readonly notes: readonly string[];
}

import type { PercentileBounds } from '../../numerics/describing/percentile.ts';
import type { ConformalP, LabelVerdict } from '../../numerics/tests/conformal.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Marks } from '../shared/figure/marks.ts';
import type { PlacementOptions } from './options.ts';
import type {
  GuardedSet,
  JudgedLabel,
  LabelRanking,
  LabelSet,
  Novelty,
  SimulatedCoverage,
} from './sets-found.ts';

export type KindOfChange =
  | 'its own ranges'
  | 'broad terms'
  | 'other weights'
  | 'an assemblage left out'
  | 'complete records alone';

/** How the p value of one label moves under one kind of change. */
export interface Move {
  readonly attribute: string;
  readonly label: string;
  readonly change: KindOfChange;
  readonly lowest: number;
  readonly highest: number;
  /** The verdict at the level as it stands. */
  readonly verdict: LabelVerdict;
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
  /** The same with every broad term read as near, and as far, as its kinds allow; equal where none is broad. */
  readonly least: number;
  readonly greatest: number;
  /** Block -> what it adds to the distance; null where nothing of it could be compared. */
  readonly blocks: readonly { readonly block: string; readonly contribution: number | null }[];
  /** What the find has and this record lacks. */
  readonly notCompared: readonly string[];
  /** Attributes that both have, and all that the find has; what follows from others that both have is not counted. */
  readonly shared: number;
  readonly of: number;
  readonly source: string;
  readonly sourceRow: number;
  /** Use as the source records it, and how it was known; empty where it says nothing. */
  readonly use: string;
  readonly useBasis: string;
}

/** As many of the nearest comparanda are named in the evidence. */
export const NAMED_NEAREST = 3;

/** The nearest comparanda that are named lack more of what the find has than others do. */
export interface LessKnown {
  readonly named: number;
  /** Attributes of the find that the named ones have, and that all comparanda have, on average. */
  readonly shared: number;
  readonly others: number;
  readonly of: number;
  /** What some of those named lack. */
  readonly lacking: readonly string[];
  /** The nearest of those that lack nothing; null where each lacks something. */
  readonly whole: { readonly id: string; readonly assemblage: string; readonly distance: number } | null;
}

/** Terms of the find or of comparanda that say less than a kind, and what that does to the nearest comparanda. */
export interface BroadFound {
  readonly terms: readonly string[];
  /** Comparanda that are not listed, and may be nearer than one that is. */
  readonly more: number;
  readonly nearest: 'stay' | 'order may differ' | 'others may be nearer';
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
    /** Its label of the first attribute judged; empty where it has none. */
    readonly label: string;
  }[];
  readonly shares: readonly [number, number];
  readonly find: readonly [number, number];
  readonly cloud: readonly (readonly [number, number])[];
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
  /** Null where the nearest that are named lack no more than others. */
  readonly lessKnown: LessKnown | null;
  /** Null where nothing that is compared says less than a kind. */
  readonly broad: BroadFound | null;
  readonly percentiles: readonly Percentile[];
  readonly judged: readonly JudgedLabel[];
  /** Attribute -> symbols and colours of its labels; the attributes in the order in which they are judged. */
  readonly marks: ReadonlyMap<string, Marks>;
  /** One for each attribute of two labels or more. */
  readonly rankings: readonly LabelRanking[];
  /** A set for each attribute and level shown. */
  readonly sets: readonly LabelSet[];
  /** Conditions that may stand for an exclusion, for each attribute that excludes some of its labels. */
  readonly guarded: readonly GuardedSet[];
  /** One for each attribute and each level that was simulated. */
  readonly simulated: readonly SimulatedCoverage[];
  /** p of the find among all comparanda together, whatever their labels. */
  readonly anywhere: ConformalP | Unavailable;
  readonly novelty: readonly Novelty[];
  readonly moves: readonly Move[];
  readonly next: readonly NextMeasurement[];
  readonly position: MapPosition | Unavailable;
  readonly notes: readonly string[];
}

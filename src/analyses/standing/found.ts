import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { SimilarityCoefficient } from '../../numerics/assemblages/similarity.ts';
import type { Limits } from '../../numerics/foundation/limits.ts';
import type { MantelTest } from '../../numerics/tests/mantel.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Rank, TooFew } from '../likeness-rank.ts';
import type { Marks } from '../shared/figure/marks.ts';
import type { Beside as ConditionsBeside } from '../shared/guard/beside.ts';
import type { Guard } from '../shared/guard/found.ts';
import type { CloserSaid, LevelSaid } from '../shared/level/said.ts';
import type { MissingKinds } from '../shared/missing/compute.ts';
import type { Loss } from '../shared/survival/found.ts';
import type { Told } from '../verdicts.ts';
import type { StandingOptions } from './options.ts';

/** How alike the site is to another assemblage in counts of kinds. */
export interface Likeness {
  readonly label: string;
  /** Items of the other assemblage that were counted. */
  readonly items: number;
  readonly value: number;
  readonly interval: Limits | Unavailable;
  /** Chance of a coefficient as low if both were draws from one source; adjusted over the assemblages (Holm). */
  readonly p: number;
  readonly pAdjusted: number;
  readonly method: string;
  /** Whether the two are told apart from draws from one source. */
  readonly told: Told;
}

/** The same within one value of an attribute, the commonest at the site. */
export interface WithinSame {
  readonly attribute: string;
  readonly value: string;
  /** Items of the site that have the value. */
  readonly items: number;
  readonly likeness: readonly Likeness[];
  /** Assemblages without any item of the value. */
  readonly without: readonly string[];
  /** Who is the most alike among these, where the items are enough to rank anybody. */
  readonly most: Pick<Rank, 'labels' | 'value'> | Unavailable;
  /** Whether nobody who is the most alike in all items is so among these. */
  readonly overturns: boolean;
  /** Whether most of the site's items have the value and nobody else's have: place and value are one then. */
  readonly standsAlone: boolean;
}

/** Who is the most alike by another coefficient of shares. */
export interface OtherCoefficient {
  readonly coefficient: SimilarityCoefficient;
  readonly labels: readonly string[];
  readonly overturns: boolean;
}

/** Who is like the site: made from the likenesses after what could overturn them has been tried. */
export interface Ranking {
  readonly most: Rank | Unavailable;
  /** Unavailable where there is but one to rank. */
  readonly least: Rank | Unavailable;
  /** Labels by whether they are told apart from draws of the site's source. */
  readonly toldApart: readonly string[];
  readonly notToldApart: readonly string[];
  /** Assemblages with too few items to be ranked. */
  readonly tooFew: readonly TooFew[];
  readonly otherCoefficients: readonly OtherCoefficient[];
}

/** A value that all compared items share. */
export interface Region {
  readonly attribute: string;
  readonly value: string;
}

export interface AssemblagePoint {
  readonly label: string;
  readonly items: number;
  readonly at: readonly number[];
}

/** The site among the other assemblages on axes that these alone have made. */
export interface AxesPlace {
  /** Share of the inertia of each axis shown. */
  readonly shares: readonly number[];
  readonly others: readonly AssemblagePoint[];
  readonly kinds: readonly AssemblagePoint[];
  readonly site: readonly number[];
  readonly cloud: readonly (readonly number[])[];
  /** Percentile limits of the cloud, axis by axis. */
  readonly limits: readonly (Limits | Unavailable)[];
  /** Items of the site of kinds that no other assemblage has; they do not move it. */
  readonly unplaced: number;
}

/** Mean dissimilarity of the site's items to those of an assemblage. */
export interface Unlike {
  readonly label: string;
  readonly items: number;
  readonly between: number | Unavailable;
  readonly interval: Limits | Unavailable;
  /** Among the items of the other assemblage itself. */
  readonly within: number | Unavailable;
  /** `between` less the mean of both `within`. */
  readonly excess: number | Unavailable;
}

/** An item of the site most of whose nearest items belong to others. */
export interface Elsewhere {
  readonly id: string;
  /** Assemblage with most of the nearest, by share. */
  readonly home: string;
  readonly share: number;
  readonly nearest: string;
  readonly nearestAt: string;
  readonly distance: number;
}

export interface AtHome {
  readonly judged: number;
  readonly elsewhere: readonly Elsewhere[];
  /** Share of nearest items of other assemblages, over the items judged; and that of labels dealt at random. */
  readonly share: number;
  readonly expected: number;
}

/** How far an attribute sets the site apart from all others together. */
export interface Apart {
  readonly attribute: string;
  readonly unit: string;
  readonly measure: 'Cliff’s delta' | 'corrected Cramér’s V';
  readonly siteItems: number;
  readonly otherItems: number;
  readonly effect: number | Unavailable;
  readonly p: number | Unavailable;
  readonly pAdjusted: number | Unavailable;
  readonly method: string;
  /** Medians, or the kind most in excess at the site. */
  readonly says: string;
  /** Whether the site is told apart by it from all others together. */
  readonly told: Told;
  /** The same effect among items of the same value, one an attribute of `sameWithin`. */
  readonly within: readonly (number | Unavailable)[];
}

export interface NearerIn {
  readonly who: 'all assemblages' | 'this one';
  readonly against: 'space' | 'time';
  readonly apartFrom: 'space' | 'time' | null;
  readonly answer: Pick<MantelTest, 'statistic' | 'p' | 'n' | 'method' | 'relabellings'> | Unavailable;
  /** Whether unlikeness is told to grow with the distance. */
  readonly told: Told;
}

export interface Quartiles {
  readonly q1: number;
  readonly median: number;
  readonly q3: number;
}

/** Shares of the kinds of an attribute, commonest first; null where nothing is recorded. */
export interface BesideKind {
  readonly kind: 'kinds';
  readonly label: string;
  readonly siteN: number;
  readonly othersN: number;
  readonly kinds: readonly {
    readonly label: string;
    readonly siteCount: number;
    readonly site: number | null;
    readonly othersCount: number;
    readonly others: number | null;
    /** Least and greatest share of single other assemblages. */
    readonly range: readonly [number, number] | null;
  }[];
}

export interface BesideNumber {
  readonly kind: 'numbers';
  readonly label: string;
  readonly unit: string;
  readonly logarithmic: boolean;
  readonly siteN: number;
  readonly othersN: number;
  /** Readings with an open end, which stand at their known one. */
  readonly openEnded: number;
  readonly site: Quartiles | null;
  readonly others: Quartiles | null;
  /** Least and greatest median of single other assemblages. */
  readonly range: readonly [number, number] | null;
}

/** The site beside all others together in one attribute. */
export type Beside = BesideKind | BesideNumber;

export interface StandingFound extends Findings {
  readonly options: StandingOptions;
  readonly amongLabel: string;
  readonly kindsLabel: string;
  /** What the comparison was confined to; empty where to nothing. */
  readonly region: readonly Region[];
  /** At which level kinds were counted, and what that changed. */
  readonly level: LevelSaid;
  readonly table: CrossedTable;
  /** Place of the site among the rows of `table`. */
  readonly row: number;
  /** Items of the site that were counted. */
  readonly siteItems: number;
  /** Most alike first. */
  readonly likeness: readonly Likeness[];
  readonly ranking: Ranking;
  /** Who would be the most and the least alike, counted as recorded; null where the level changes nothing. */
  readonly asRecorded: Pick<Ranking, 'most' | 'least'> | null;
  /** Who would be with what a few broad records fold told apart; null where nothing is folded by few. */
  readonly toldCloser: {
    readonly said: CloserSaid;
    readonly ranking: Pick<Ranking, 'most' | 'least'>;
  } | null;
  readonly sameWithin: readonly (WithinSame | { readonly attribute: string; readonly why: string })[];
  /** Conditions that may stand for what tells the site apart. */
  readonly guard: Guard;
  /** What the missing kinds would have to be for it to be most like another. */
  readonly missing: MissingKinds | null;
  /** Fibre whose absence from a place says nothing, where kinds of fibre are counted. */
  readonly losses: readonly Loss[];
  readonly axes: AxesPlace | Unavailable;
  readonly within: number | Unavailable;
  readonly unlike: readonly Unlike[];
  readonly atHome: AtHome | Unavailable;
  /** How many items of the site its distances to others and `atHome` rest on, where not all; they are drawn by the seed. */
  readonly ownDrawn: number | null;
  /** Largest effect first. */
  readonly apart: readonly Apart[];
  readonly nearer: readonly NearerIn[];
  /** In the order asked, kinds first. */
  readonly beside: readonly Beside[];
  /** Conditions that go with the site against all others, but for those that its standing was looked at for. */
  readonly besideConditions: ConditionsBeside;
  /** Of the assemblages, in the study's order of symbols and colours. */
  readonly marks: Marks;
  readonly comparedOn: readonly string[];
  readonly notes: readonly string[];
}

import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { WhereWhen } from '../../fragments/where-when.ts';
import type { SimilarityCoefficient } from '../../numerics/assemblages/similarity.ts';
import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import type { Correspondence } from '../../numerics/ordination/correspondence.ts';
import type { ResampledInterval } from '../../numerics/resampling/bootstrap.ts';
import type { MantelTest } from '../../numerics/tests/mantel.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Rank, TooFew } from '../likeness-rank.ts';
import type { Marks } from '../shared/figure/marks.ts';
import type { Guard } from '../shared/guard/found.ts';
import type { CloserSaid, LevelSaid } from '../shared/level/said.ts';
import type { MissingKinds } from '../shared/missing/compute.ts';
import type { MixturesCounted } from '../shared/options/mixtures.ts';
import type { Loss } from '../shared/survival/found.ts';
import type { Told } from '../verdicts.ts';
import type { SimilarityOptions } from './options.ts';

/** One measure of diversity with its limits. */
export interface DiversityMeasure {
  readonly value: number | Unavailable;
  readonly low: number | Unavailable;
  readonly high: number | Unavailable;
}

export interface AssemblageDiversity {
  readonly n: number;
  readonly items: number;
  /** Kinds seen. */
  readonly richness: number;
  /** Share of the whole that is of kinds seen. */
  readonly coverage: number | Unavailable;
  /** Kinds in a sample of the size, or of the coverage, at which all are compared. */
  readonly rarefied: DiversityMeasure;
  readonly atCoverage: DiversityMeasure;
  /** Of the whole, unseen kinds made up for: Hill numbers of order 0, 1 and 2. */
  readonly chao1: DiversityMeasure;
  readonly common: DiversityMeasure;
  readonly dominant: DiversityMeasure;
  readonly shannon: DiversityMeasure;
  readonly simpson: DiversityMeasure;
  /** Of the kinds seen. */
  readonly evenness: number | Unavailable;
}

/** p of "both are draws from one source" for a pair, plain and adjusted (Holm) over the pairs. */
export interface SameSource {
  readonly p: number;
  readonly pAdjusted: number;
  readonly method: string;
  readonly told: Told;
}

/** Does unlikeness grow with a distance, apart from another one or not? */
export interface DistanceTest {
  readonly against: 'space' | 'time';
  readonly apartFrom: 'space' | 'time' | null;
  readonly answer: MantelTest | Unavailable;
  readonly told: Told;
}

/** Where every assemblage lies on the axes; placed ones took no part in finding them. */
export interface AxisPlaces {
  readonly found: Correspondence;
  /** Coordinates of every assemblage on the first two axes (the second 0 where there is one axis), null where it has none. */
  readonly rows: readonly (readonly [number, number] | null)[];
  readonly columns: readonly (readonly [number, number] | null)[];
  readonly placed: readonly boolean[];
  /** Assemblages from one end of the first axis to the other, the earlier end first where dates tell. */
  readonly order: readonly number[];
  readonly againstDates: DateAgreement | Unavailable;
}

export interface DateAgreement {
  /** Spearman's rho of place on the first axis and date, 0 to 1 since an axis has no direction of its own. */
  readonly rho: number;
  readonly p: number;
  readonly method: string;
  readonly n: number;
  /** Over years drawn within the spans: central part, at the confidence, of the absolute rho. */
  readonly low: number;
  readonly high: number;
  readonly told: Told;
}

/** An assemblage that took no part in finding the axes, and was placed on them afterwards. */
export interface Newcomer {
  readonly label: string;
  /** Records counted, and those of kinds that no assemblage on the axes has: they do not move it. */
  readonly n: number;
  readonly unplaced: number;
  readonly at: readonly [number, number] | Unavailable;
  /** The same for its items drawn again; limits of each axis at the confidence. */
  readonly cloud: readonly (readonly [number, number])[];
  readonly limits: readonly ({ readonly low: number; readonly high: number } | Unavailable)[];
  /** To every other assemblage, most alike first. Of counts typed in; others stand among the pairs. */
  readonly likeness: readonly {
    readonly label: string;
    readonly value: number;
    readonly interval: ResampledInterval | Unavailable;
  }[];
  /** Who is the most alike among those with enough items; of counts typed in. */
  readonly most: Pick<Rank, 'labels' | 'value'> | Unavailable;
}

/** Which pairs are the most and the least alike; a pair is called "A with B". */
export interface PairRanking {
  readonly most: Rank | Unavailable;
  /** Unavailable where there is but one pair to rank. */
  readonly least: Rank | Unavailable;
}

export interface SimilarityFound extends Findings {
  readonly options: SimilarityOptions;
  readonly unit: 'fragment' | 'item';
  readonly assemblagesLabel: string;
  readonly kindsLabel: string;
  /** Of the assemblages, in the study's order of symbols and colours. */
  readonly marks: Marks;
  /** At which level kinds were counted, and what that changed. */
  readonly level: LevelSaid;
  /** Where mixtures count in each of their kinds; null where they are kinds of their own. */
  readonly mixtures: MixturesCounted;
  /** Rankings in which kinds that a piece may show alike are one, by the kinds; null where nothing else is counted. */
  readonly lookAlikes: readonly { readonly kinds: readonly string[]; readonly ranking: PairRanking | null }[];
  readonly table: CrossedTable;
  readonly likeness: Condensed;
  /** One a pair, in the order of `likeness`. */
  readonly intervals: readonly (ResampledInterval | Unavailable)[];
  readonly sameSource: readonly SameSource[];
  /** Pairs by whether they are told apart from draws from one source; "A with B". */
  readonly notToldApart: readonly string[];
  readonly ranking: PairRanking;
  /** What could stand for the differences between assemblages. */
  readonly guard: Guard;
  /** What the missing kinds would have to be for others to be the most alike. */
  readonly missing: MissingKinds | null;
  /** Fibre whose absence from a place says nothing, where kinds of fibre are counted. */
  readonly losses: readonly Loss[];
  /** The same, counted as recorded; null where the level changes nothing. */
  readonly asRecorded: PairRanking | null;
  /** The same with what a few broad records fold told apart; null where nothing is folded by few. */
  readonly toldCloser: { readonly said: CloserSaid; readonly ranking: PairRanking } | null;
  /** By other coefficients of shares, where other pairs are then the most or the least alike. */
  readonly otherCoefficients: readonly {
    readonly coefficient: SimilarityCoefficient;
    readonly most: readonly string[];
    readonly overturns: boolean;
  }[];
  /** Assemblages with too few items to be ranked, and those with few. */
  readonly tooFew: readonly TooFew[];
  readonly few: readonly TooFew[];
  /** Kinds of which fewer than five were counted: they can dominate the map. */
  readonly rare: readonly string[];
  /** Order in which neighbours are alike: the leaves of an average-linkage tree. */
  readonly foundOrder: readonly number[];
  readonly diversity: readonly AssemblageDiversity[];
  /** Records to which richness is rarefied. */
  readonly rarefiedTo: number;
  /** Coverage at which kinds are compared: the least of the assemblages large enough. */
  readonly coverageTo: number | Unavailable;
  readonly whereWhen: WhereWhen;
  readonly axes: AxisPlaces | Unavailable;
  /** Assemblages placed on the axes afterwards: those of the table that were named, then those typed in. */
  readonly newcomers: readonly Newcomer[];
  readonly distances: readonly DistanceTest[];
}

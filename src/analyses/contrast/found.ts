import type { AttributeDefinition } from '../../attributes/definition.ts';
import type { ResampledInterval } from '../../numerics/resampling/bootstrap.ts';
import type { BlockedSample } from '../../numerics/tests/blocked-sample.ts';
import type { Equivalence } from '../../numerics/tests/equivalence.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Marks } from '../shared/figure/marks.ts';
import type { Guard } from '../shared/guard/found.ts';
import type { PooledMeans } from '../shared/pooled/means.ts';
import type { Told } from '../verdicts.ts';
import type { ContrastOptions } from './options.ts';
import type { Together } from './together-found.ts';
import type { Trend } from './trend-found.ts';

/** The values of one group, fragments of one item as one block. */
export interface ContrastGroup {
  readonly label: string;
  /** Rows with a value, in the order of the values. */
  readonly rows: readonly number[];
  /** Fragments behind these rows. */
  readonly fragments: number;
  /** Middle of each reading, an open-ended one at its known end. */
  readonly points: BlockedSample;
  /** Lower and upper ends of the readings. */
  readonly low: BlockedSample;
  readonly high: BlockedSample;
  /** Lower quartile, median, upper quartile (type 7) of the points. */
  readonly quartiles: readonly [q1: number, median: number, q3: number];
  readonly openEnded: number;
  readonly missing: number;
  /** Those of the missing that could have had a value: the attribute applies to them. */
  readonly unread: number;
  /** Whether it has items enough to be quoted as evidence. */
  readonly quotable: boolean;
}

/** One attribute, its values laid out by groups. */
export interface AttributeSamples {
  readonly attribute: AttributeDefinition;
  /** Grades stand for their place in the order; differences and ratios of them say nothing. */
  readonly graded: boolean;
  /** Ratios matter, and all values allow them. */
  readonly logarithmic: boolean;
  /** All groups with a value. */
  readonly groups: readonly ContrastGroup[];
  /** Groups with values of two items or more: the ones that are tested. */
  readonly tested: readonly ContrastGroup[];
  /** Items with values in more than one group. */
  readonly straddling: number;
}

/** What a test asks about the groups. */
export type TestQuestion = 'place' | 'shape' | 'curve' | 'spread' | 'means' | 'welch';

export interface TestAnswer {
  readonly question: TestQuestion;
  readonly name: string;
  /** Letter by which the statistic is known. */
  readonly symbol: string;
  readonly statistic: number;
  readonly df: number | null;
  readonly dfWithin: number | null;
  readonly p: number;
  /** Where the p comes from. */
  readonly method: string;
}

/** A test of one attribute, its p adjusted over the attributes asked. */
export interface FurtherTest {
  readonly question: TestQuestion;
  readonly name: string;
  readonly answer: TestAnswer | Unavailable;
  readonly pAdjusted: number | Unavailable;
  readonly told: Told;
}

/** An effect, first group against second: positive (or above 1) when the first is larger. */
export interface Effect {
  readonly estimate: number;
  readonly interval: Pick<ResampledInterval, 'low' | 'high' | 'level'> | Unavailable;
}

/** Two groups set against each other. Places count among the tested groups. */
export interface PairContrast {
  readonly first: number;
  readonly second: number;
  /** Dunn's z where there are more than two groups, otherwise null: the test is the main one. */
  readonly z: number | null;
  readonly p: number | Unavailable;
  readonly method: string;
  readonly delta: Effect | Unavailable;
  readonly shift: Effect | Unavailable;
  readonly ratio: Effect | Unavailable;
  readonly equivalence: Equivalence | Unavailable;
  /** Smallest Cliff's delta that these numbers of items would show with the stated power. */
  readonly detectableDelta: number | Unavailable;
  /** The same as a shift in the unit of the attribute, or as a factor where ratios matter. */
  readonly detectable: number | Unavailable;
}

/** A pair with its verdicts, adjusted over all pairs of the contrast. */
export interface JudgedPair extends PairContrast {
  readonly pAdjusted: number | Unavailable;
  readonly told: Told;
  /** Which of the two tends to be larger, where they are told apart. */
  readonly larger: 'first' | 'second' | null;
  readonly alikePAdjusted: number | Unavailable;
  /** Whether they are shown to be alike within the margin. */
  readonly alike: Told;
  /** Items of each that would show the delta found with the stated power, where they are told apart. */
  readonly findsNeeded: number | Unavailable;
  /** Whether both groups have items enough to be quoted. */
  readonly quotable: boolean;
}

/** The question of place asked again, something done otherwise. */
export interface AskedOtherwise {
  readonly change:
    | 'ends of the readings'
    | 'spreads may differ'
    | 'a group left out'
    | 'small groups left out';
  /** Where the readings stand, or the groups left out. */
  readonly what: string;
  readonly answer: TestAnswer | Unavailable;
  readonly told: Told;
}

/** How far the missing values of a group would have to lie from those recorded there for another verdict. */
export interface MissingShift {
  readonly label: string;
  readonly missing: number;
  /**
   * In the unit of the attribute, or as a factor where ratios matter; 0, or 1, where it turns were they like those
   * recorded; null where no shift turns it.
   */
  readonly shift: number | null;
  readonly becomes: Told;
}

/** One attribute across the groups. */
export interface AttributeContrast {
  readonly samples: AttributeSamples;
  /** Median of each tested group with its interval. */
  readonly medians: readonly (ResampledInterval | Unavailable)[];
  readonly place: TestAnswer | Unavailable;
  /** p of place adjusted over the attributes asked, and what it says at the confidence. */
  readonly pAdjusted: number | Unavailable;
  readonly told: Told;
  readonly further: readonly FurtherTest[];
  /** Share of the variance of ranks between the groups; given from three groups on. */
  readonly epsilonSquared: Effect | Unavailable;
  /** Means drawn towards what the groups have in common; null for grades. */
  readonly pooled: PooledMeans | Unavailable | null;
  readonly pairs: readonly JudgedPair[];
  readonly otherwise: readonly AskedOtherwise[];
  /** Those of `otherwise` that give another verdict. */
  readonly hangsOn: readonly AskedOtherwise[];
  /** What the missing would have to be, the groups in their order; of two groups. */
  readonly missingShifts: readonly MissingShift[];
  readonly trend: Trend | Unavailable | null;
  /** Whether some item has several fragments here, so that whole items are dealt and drawn. */
  readonly shared: boolean;
  /** Share of the readings that equal another one, where they are enough to be mentioned; null otherwise. */
  readonly tied: number | null;
  /** The least p that so few items allow, where it is above what the confidence asks; null otherwise. */
  readonly leastP: number | null;
  /** What who recorded, sources, recovery, preservation, structure and period make of the verdict. */
  readonly guard: Guard;
}

export interface ContrastFound extends Findings {
  readonly options: ContrastOptions;
  readonly unit: 'fragment' | 'item';
  readonly by: string;
  /** Symbols and colours of the groups. */
  readonly marks: Marks;
  readonly attributes: readonly AttributeContrast[];
  readonly together: Together | Unavailable | null;
  /** Labels of attributes of kinds, compared only together with the others. */
  readonly kinds: readonly string[];
  /** Tests of place asked: attributes and pairs. */
  readonly tests: number;
}

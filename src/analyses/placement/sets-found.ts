import type { UnseenChance } from '../../numerics/assemblages/unseen-kinds.ts';
import type { ConformalP, LabelVerdict } from '../../numerics/tests/conformal.ts';
import type { Unavailable } from '../contract.ts';
import type { Guard } from '../shared/guard/found.ts';

/** What is said of a label at a level of certainty. */
export interface LevelVerdict {
  readonly level: number;
  readonly verdict: LabelVerdict;
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
  readonly verdict: LabelVerdict;
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

/** Conditions that may stand for what excludes labels of one attribute. */
export interface GuardedSet {
  readonly attribute: string;
  readonly guard: Guard;
}

/** How often sets held the true label of simulated finds, in the cells nearest to this placement. */
export interface SimulatedCoverage {
  readonly attribute: string;
  readonly level: number;
  /** What was simulated: labels, items a label (and how many sites these are of, where sites are judged), share not recorded. */
  readonly labels: number;
  readonly items: number;
  readonly sites: number | null;
  readonly gaps: number;
  /** Finds of all cells, and the least and greatest share of a cell. */
  readonly finds: number;
  readonly least: number;
  readonly greatest: number;
  /** Whether that is what the level says, and if not, why. */
  readonly verdict:
    | 'as asked'
    | 'too few to exclude'
    | 'gaps exclude less'
    | 'steps of p'
    | 'less than asked';
  readonly simulation: string;
  readonly date: string;
}

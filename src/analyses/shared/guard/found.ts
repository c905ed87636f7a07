import type { MixedEstimate } from '../../../numerics/models/mixed-model.ts';
import type { Unavailable } from '../../contract.ts';
import type { Told } from '../../verdicts.ts';

/**
 * What a condition (who recorded, which table, how recovered and preserved, structure, period) makes of a difference
 * between labels, or of the lack of one:
 * - `unknown`, `scarce`: it could not be looked at; `one`: the same for all compared;
 * - `does not go with them`: it is not associated with the labels;
 * - `holds within it`, `reversed within it`, `vanishes within it`: among records where it is the same, the difference
 *   is there, the other way round, or gone; `appears within it`: it is there only among such records;
 * - `none within it`: there is none overall nor among such records;
 * - `cannot be told apart`: too few records share it, or none, to tell the labels from it.
 */
export type GuardVerdict =
  | 'unknown'
  | 'scarce'
  | 'one'
  | 'does not go with them'
  | 'holds within it'
  | 'reversed within it'
  | 'vanishes within it'
  | 'appears within it'
  | 'none within it'
  | 'cannot be told apart';

/** A difference between labels among the records that share the condition with another label. */
export interface SharedEffect {
  readonly n: number;
  readonly strata: number;
  /** Strength (0 to 1) with the condition left out of account, and within it, of the same records. */
  readonly plain: number;
  readonly within: number;
  readonly statistic: number;
  readonly df: number;
  /** By dealing labels within the condition again. */
  readonly p: number | Unavailable;
  readonly method: string;
  /** Whether labels differ the same way: sign of what plain and within have in common. */
  readonly sameWay: boolean;
}

/**
 * The effect of the named pair with the condition left out and taken into account: first against second, by mixed
 * models; of two by two kinds the odds ratio, by Mantel and Haenszel.
 */
export interface AdjustedEffect {
  readonly plain: MixedEstimate;
  readonly within: MixedEstimate;
  /** Ratios are of geometric means; errors of ratios and odds ratios are those of the logarithm. */
  readonly scale: 'difference' | 'ratio' | 'odds ratio';
  /** What has random intercepts, as words: "item", "site". */
  readonly random: readonly string[];
}

/** Labels that share a kind of a condition with another: whether these are told apart among records that share it. */
export interface ToldAmong {
  readonly labels: readonly string[];
  readonly told: Told;
}

export interface LookedAt {
  readonly id: string;
  readonly label: string;
  readonly known: number;
  readonly kinds: number;
  readonly verdict: GuardVerdict;
  /** Its association with the labels: p by Holm over the conditions looked at, bias-corrected Cramér's V. */
  readonly p: number | Unavailable;
  readonly v: number | Unavailable;
  readonly shared: SharedEffect | Unavailable;
  readonly adjusted: AdjustedEffect | Unavailable | null;
  /** Whether each kind of it has one label only. */
  readonly oneEach: boolean;
  /** Whether the difference is less than half as strong within it, which alone takes none away. */
  readonly weaker: boolean;
  /** Whether the study's own, and of one kind for each label: a property of the labels, as the valley of a site is. */
  readonly ofLabels: boolean;
  /** Whether the labels that the answer names can be compared through kinds that they share. */
  readonly bridged: boolean;
  /** What can be told although the named labels share no kind of it; null where nothing can, or they do. */
  readonly among: ToldAmong | null;
}

/** Two conditions that go with the labels and with each other: each kind of the first is of one kind of the second. */
export interface Tied {
  readonly inner: string;
  readonly outer: string;
  /** And the other way round: they are one and the same here. */
  readonly mutual: boolean;
}

export interface Guard {
  /** Label of the attribute whose groups are compared. */
  readonly by: string;
  /** Records compared. */
  readonly n: number;
  readonly conditions: readonly LookedAt[];
  /** The condition that changes the answer, worst first; empty where none does. */
  readonly changes: readonly LookedAt[];
  /** What is a property of the labels and cannot be told from them; it changes no answer. */
  readonly ofLabels: readonly LookedAt[];
  /**
   * What is not shown to go with the labels but may, with so few records, and within which the difference is gone or
   * turned; it changes no answer.
   */
  readonly hinted: readonly LookedAt[];
  /** Conditions that could not be looked at. */
  readonly unseen: readonly LookedAt[];
  /** Those that go with the labels and that the difference withstands. */
  readonly withstood: readonly LookedAt[];
  /** Which of those that go with the labels cannot be told from each other, since they were judged one at a time. */
  readonly tied: readonly Tied[];
}

import type { RecordsCondition } from '../../../fragments/conditions.ts';
import type { Random } from '../../../numerics/foundation/random.ts';
import type { Unavailable } from '../../contract.ts';
import type { Told } from '../../verdicts.ts';
import type { AdjustedEffect } from './found.ts';

/** What the guard is given: labels of the records compared, and what is compared. */
export interface GuardRequest {
  /** Label of the attribute whose groups are compared. */
  readonly by: string;
  readonly labels: Int32Array;
  readonly labelCount: number;
  /** Places, or what else the labels are made of, where a label holds several; the labels themselves if left out. */
  readonly places?: Int32Array;
  /** Names of the labels, where an answer can say of some of them what is told among kinds that they share. */
  readonly names?: readonly string[];
  readonly items: readonly string[];
  readonly conditions: readonly RecordsCondition[];
  /** What is compared, as columns of ranks or of kinds, made within strata; the stratum of each record is given. */
  readonly scores: (strata: ArrayLike<number>, rows: readonly number[]) => readonly ArrayLike<number>[];
  /** Whether the labels are told apart with no condition taken into account. */
  readonly told: Told;
  /** Labels that the answer names; none where it names none. */
  readonly named: readonly number[];
  /** The effect with and without a condition, where there is a model of it. */
  readonly adjust?: (condition: RecordsCondition) => AdjustedEffect | Unavailable;
  readonly confidence: number;
  readonly relabellings: number;
  readonly random: Random;
}

/**
 * What a comparison of records is made of. Everything here is plain arrays: the caller has already
 * scaled, taken logarithms, ranked grades and laid out the distances between kinds.
 */

interface Placed {
  readonly block: number;
  readonly weight: number;
  /** Brought along with another variable: its gaps do not count where a least overlap is asked of a pair. */
  readonly besides?: true;
  /**
   * Ways in which it follows from other variables, each as their places: of two records that both have all of one way
   * it is not compared, since it would count the same measurement twice (said-already.ts).
   */
  readonly insteadOf?: readonly (readonly number[])[];
}

/** A measured number as an interval; `low === high` when exact, both NaN when there is none. */
export interface QuantityVariable extends Placed {
  readonly kind: 'quantity';
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Difference that counts as 1 (Gower: the range of the sample); 0 when all values are equal. */
  readonly range: number;
}

/** Kinds or grades with a distance between any two of them. */
export interface KindsVariable extends Placed {
  readonly kind: 'kinds';
  /** 0 … levels - 1, or -1 when there is none. */
  readonly codes: Int32Array;
  /** levels * levels, row by row, 0 to 1, symmetric, 0 on the diagonal. */
  readonly between: Float64Array;
  readonly levels: number;
}

/** A trait that is there (1), not there (0) or unknown (-1); two records that both lack it are not compared by it. */
export interface PresenceVariable extends Placed {
  readonly kind: 'presence';
  readonly codes: Int32Array;
}

export type Variable = QuantityVariable | KindsVariable | PresenceVariable;

/**
 * How far two interval readings are apart: by their midpoints; the expected distance of two values
 * drawn evenly from them; the least or the greatest distance that they allow.
 */
export type IntervalRule = 'midpoint' | 'expected' | 'least' | 'greatest';

export interface DissimilaritySpec {
  readonly variables: readonly Variable[];
  /** Weight of each block; `block` of a variable is a place in this list. */
  readonly blockWeights: readonly number[];
  /** `blocks`: weighted mean of block means; `plain`: Gower's coefficient over all variables at once. */
  readonly mode: 'blocks' | 'plain';
  readonly intervals: IntervalRule;
  /** Share (0 to 1) of the total weight that both records must have; a pair below it is unknown. */
  readonly minimumOverlap: number;
}

/**
 * One value of one record: the ends of a quantity (NaN when unknown), or the code of a kind or
 * presence (-1 when unknown). The part that does not apply to the variable is ignored.
 */
export interface RecordValue {
  readonly low: number;
  readonly high: number;
  readonly code: number;
}

/** A quantity of a record. */
export function quantityValue(low: number, high: number = low): RecordValue {
  return { low, high, code: 0 };
}

/** A kind, grade or presence of a record; -1 for unknown. */
export function codeValue(code: number): RecordValue {
  return { low: 0, high: 0, code };
}

/** The value that record i has for this variable. */
export function valueAt(variable: Variable, i: number): RecordValue {
  if (variable.kind === 'quantity') return quantityValue(variable.low[i], variable.high[i]);
  return codeValue(variable.codes[i]);
}

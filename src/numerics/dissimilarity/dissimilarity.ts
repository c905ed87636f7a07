import { type Condensed, pairCount } from './condensed.ts';
import { compareRun, createRun, sharedRun } from './kernel.ts';
import { type PreparedComparison, prepareComparison } from './prepare.ts';
import { type FindWriter, type RowWriter, simdRows, simdTo } from './simd.ts';

/**
 * What a comparison of records is made of. Everything here is plain arrays: the caller has already
 * scaled, taken logarithms, ranked grades and laid out the distances between kinds.
 */

/** A measured number as an interval; `low === high` when exact, both NaN when there is none. */
export interface QuantityVariable {
  readonly kind: 'quantity';
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Difference that counts as 1 (Gower: the range of the sample); 0 when all values are equal. */
  readonly range: number;
  readonly block: number;
  readonly weight: number;
}

/** Kinds or grades with a distance between any two of them. */
export interface KindsVariable {
  readonly kind: 'kinds';
  /** 0 … levels - 1, or -1 when there is none. */
  readonly codes: Int32Array;
  /** levels * levels, row by row, 0 to 1, symmetric, 0 on the diagonal. */
  readonly between: Float64Array;
  readonly levels: number;
  readonly block: number;
  readonly weight: number;
}

/** A trait that is there (1), not there (0) or unknown (-1); two records that both lack it are not compared by it. */
export interface PresenceVariable {
  readonly kind: 'presence';
  readonly codes: Int32Array;
  readonly block: number;
  readonly weight: number;
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

/**
 * How unlike any two records are: the general coefficient of Gower 1971, Biometrics 27:857, as a
 * distance (1 - similarity).
 *
 * Per variable, two records are |difference| / range apart (quantity), `between` apart (kinds), or 0
 * or 1 apart (presence, pairs without the trait not compared). In `plain` mode the dissimilarity is the
 * weighted mean over the variables that both records have. In `blocks` mode that mean is taken
 * within each block first, and then over the blocks that have anything to compare, by block weight: so
 * that eight measurements of spacing do not outvote one structure.
 *
 * @returns 0 to 1 for the records that the ranges were taken from; NaN where nothing can be compared or
 * less than `minimumOverlap` of the weight. A gap is never filled in.
 * @param into memory of the right length to write to, so that repeated runs need no new memory.
 * @throws RangeError when variables differ in length or an interval is open-ended.
 */
export function dissimilarities(spec: DissimilaritySpec, into?: Float64Array): Condensed {
  const prepared = prepareComparison(spec);
  const { n } = prepared;
  const values = into ?? new Float64Array(pairCount(n));
  if (values.length !== pairCount(n))
    throw new RangeError(`dissimilarities: memory for ${pairCount(n)} pairs is needed`);
  const writeRow = simdRows(prepared) ?? plainRows(prepared);
  let place = 0;
  for (let i = 0; i < n - 1; i++) {
    writeRow(i, values, place);
    place += n - 1 - i;
  }
  return { n, values };
}

/** The plain loops, record by record: what `simdRows` does for many records, for every kind of comparison. */
export function plainRows(prepared: PreparedComparison): RowWriter {
  const active = activeVariables(prepared.spec);
  const run = createRun(prepared);
  return (i, out, place) => {
    const record = active.map((variable) => valueAt(variable, i));
    compareRun(prepared, record, i + 1, prepared.n, out, place, run);
  };
}

/**
 * How unlike a record from outside is to each record of the specification, by the same scales and
 * weights. A quantity beyond the sample's range counts more than 1: it is farther away than any two
 * known records are from each other.
 *
 * @param record one value a variable, in the order of `spec.variables`.
 */
export function dissimilaritiesTo(
  comparison: DissimilaritySpec | PreparedComparison,
  record: readonly RecordValue[],
): Float64Array {
  const prepared = 'lanes' in comparison ? comparison : prepareComparison(comparison);
  const { spec, n } = prepared;
  if (record.length !== spec.variables.length) {
    throw new RangeError(`dissimilaritiesTo: ${record.length} values for ${spec.variables.length} variables`);
  }
  const active = new Set(activeVariables(spec));
  const values = record.filter((_, index) => active.has(spec.variables[index]));
  const quick = quickly(prepared, values);
  if (quick !== null) return quick;
  const out = new Float64Array(n);
  compareRun(prepared, values, 0, n, out, 0, sharedRun(prepared));
  return out;
}

/** From so many records on, a comparison that is asked again is worth a kernel of its own. */
const MANY = 20_000;
const asked = new WeakMap<PreparedComparison, { kernel: FindWriter | null | undefined }>();

/** The answer of the kernel for two pairs at a time, made when a large comparison is asked for the second time. */
function quickly(prepared: PreparedComparison, record: readonly RecordValue[]): Float64Array | null {
  if (prepared.n < MANY) return null;
  const before = asked.get(prepared);
  if (before === undefined) {
    asked.set(prepared, { kernel: undefined });
    return null;
  }
  if (before.kernel === undefined) before.kernel = simdTo(prepared);
  const midpoints = prepared.spec.intervals === 'midpoint';
  const fits = record.every(
    ({ low, high, code }) => code >= 0 && !Number.isNaN(low) && (low === high || midpoints),
  );
  if (before.kernel === null || !fits) return null;
  const own = record.map(({ low, high, code }, index) => {
    const { offset, scale } = prepared.lanes[index];
    return { middle: ((low - offset) * scale + (high - offset) * scale) / 2, code };
  });
  return before.kernel(own);
}

/** The variables that take part, in order: those whose own weight and block weight are above 0. */
function activeVariables(spec: DissimilaritySpec): readonly Variable[] {
  return spec.variables.filter(
    (variable) =>
      variable.weight > 0 && (spec.mode === 'plain' || (spec.blockWeights[variable.block] ?? 0) > 0),
  );
}

/** The same comparison of some of its variables only, by place. Scales and weights stay as they are. */
export function pickVariables(spec: DissimilaritySpec, places: readonly number[]): DissimilaritySpec {
  return { ...spec, variables: places.map((place) => spec.variables[place]) };
}

/** The same comparison of some of its records only, in the given order. Ranges stay those of all. */
export function pickRecords(spec: DissimilaritySpec, rows: ArrayLike<number>): DissimilaritySpec {
  const numbers = (values: Float64Array) => Float64Array.from(rows, (row) => values[row]);
  const variables = spec.variables.map((variable): Variable => {
    if (variable.kind !== 'quantity') {
      return { ...variable, codes: Int32Array.from(rows, (row) => variable.codes[row]) };
    }
    return { ...variable, low: numbers(variable.low), high: numbers(variable.high) };
  });
  return { ...spec, variables };
}

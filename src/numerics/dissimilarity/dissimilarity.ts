import { type Condensed, pairCount } from './condensed.ts';
import { joinKinds } from './joined-kinds.ts';
import { compareRun, createRun, sharedRun } from './kernel.ts';
import { type PreparedComparison, prepareComparison } from './prepare.ts';
import { openWays, openWaysOfAll, saidByBoth, waysOf, withoutVariables } from './said-already.ts';
import { type FindWriter, type RowWriter, simdRows, simdTo } from './simd.ts';
import { type DissimilaritySpec, type RecordValue, type Variable, valueAt } from './variables.ts';

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
  const ways = waysOf(spec);
  const values = into ?? new Float64Array(pairCount(n));
  if (values.length !== pairCount(n))
    throw new RangeError(`dissimilarities: memory for ${pairCount(n)} pairs is needed`);
  const writeRow = simdRows(prepared) ?? plainRows(prepared);
  let place = 0;
  for (let i = 0; i < n - 1; i++) {
    writeRow(i, values, place);
    place += n - 1 - i;
  }
  if (ways.length > 0) leaveOutSaid(spec, openWaysOfAll(spec, ways, n), { n, values });
  return { n, values };
}

/** Writes the pairs anew of which both records have what some of the variables follow from. */
function leaveOutSaid(spec: DissimilaritySpec, open: Int32Array, { n, values }: Condensed): void {
  const ways = waysOf(spec);
  const kinds = [...new Set(open)];
  const shared = new Set(kinds.flatMap((one) => kinds.map((other) => one & other)));
  shared.delete(0);
  for (const bits of shared) {
    const rest = dissimilarities(withoutVariables(spec, saidByBoth(ways, bits)));
    let pair = 0;
    for (let i = 0; i < n - 1; i++)
      for (let j = i + 1; j < n; j++, pair++)
        if ((open[i] & open[j]) === bits) values[pair] = rest.values[pair];
  }
}

/** The plain loops, record by record: what `simdRows` does for many records, for every kind of comparison. */
export function plainRows(prepared: PreparedComparison): RowWriter {
  const active = activeVariables(prepared.spec);
  const run = createRun(prepared);
  const joined = joinKinds(prepared);
  const together = { ...prepared, lanes: joined.map(({ lane }) => lane) };
  return (i, out, place) => {
    const record = joined.map(({ lane, of: [first = 0, ...more] }) =>
      more.length === 0 ? valueAt(active[first], i) : { low: 0, high: 0, code: lane.codes[i] },
    );
    const own = prepared.masks.map(({ bits }) => bits[i]);
    compareRun(together, record, i + 1, prepared.n, out, place, run, own);
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
  const { spec } = prepared;
  if (record.length !== spec.variables.length) {
    throw new RangeError(`dissimilaritiesTo: ${record.length} values for ${spec.variables.length} variables`);
  }
  const out = toEach(prepared, record);
  const ways = waysOf(spec);
  const own = openWays(ways, (place) => record[place]);
  if (own === 0) return out;
  const { open, without } = keptWithout(prepared);
  for (const bits of new Set(open.map((one) => one & own))) {
    if (bits === 0) continue;
    const said = saidByBoth(ways, bits);
    const rest = toEach(
      without(said),
      record.filter((_, place) => !said.includes(place)),
    );
    open.forEach((one, row) => {
      if ((one & own) === bits) out[row] = rest[row];
    });
  }
  return out;
}

interface Without {
  /** Ways open to each record. */
  readonly open: Int32Array;
  /** The comparison laid out without these variables. */
  readonly without: (places: readonly number[]) => PreparedComparison;
}

const laidOut = new WeakMap<PreparedComparison, Without>();

/** Made once for a comparison that many finds are held against. */
function keptWithout(prepared: PreparedComparison): Without {
  const before = laidOut.get(prepared);
  if (before !== undefined) return before;
  const { spec, n } = prepared;
  const layouts = new Map<string, PreparedComparison>();
  const made: Without = {
    open: openWaysOfAll(spec, waysOf(spec), n),
    without: (places) => {
      const layout = layouts.get(places.join()) ?? prepareComparison(withoutVariables(spec, places));
      layouts.set(places.join(), layout);
      return layout;
    },
  };
  laidOut.set(prepared, made);
  return made;
}

/** Compared on every variable that both have. */
function toEach(prepared: PreparedComparison, record: readonly RecordValue[]): Float64Array {
  const { spec, n } = prepared;
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

/**
 * The same comparison of some of its variables only, by place. Scales and weights stay as they are; what follows from
 * a variable that is not among them is compared for itself.
 */
export function pickVariables(spec: DissimilaritySpec, places: readonly number[]): DissimilaritySpec {
  const variables = places.map((place) => {
    const variable = spec.variables[place];
    if (variable.insteadOf === undefined) return variable;
    const insteadOf = variable.insteadOf
      .map((inputs) => inputs.map((input) => places.indexOf(input)))
      .filter((inputs) => !inputs.includes(-1));
    return { ...variable, insteadOf };
  });
  return { ...spec, variables };
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

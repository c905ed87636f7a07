import { InputError } from '../../errors.ts';
import type { Comparison } from '../../fragments/comparison/comparison.ts';
import { type Condensed, pairCount, takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../numerics/dissimilarity/dissimilarity.ts';
import { waysOf } from '../../numerics/dissimilarity/said-already.ts';
import type { DissimilaritySpec, Variable } from '../../numerics/dissimilarity/variables.ts';
import type { Points } from '../../numerics/grouping/kmeans.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import type { GroupingMethod } from './options.ts';

/** Records ready to be grouped: their dissimilarities, and for k-means the points behind them. */
export interface Compared {
  readonly matrix: Condensed;
  readonly points: Points | null;
}

/** The records at these places. */
export function takeCompared({ matrix, points }: Compared, places: ArrayLike<number>): Compared {
  return { matrix: takeRecords(matrix, places), points: points === null ? null : takePoints(points, places) };
}

/** The specification for the records at these rows only; scales stay those of the whole table. */
export function takeVariables(spec: DissimilaritySpec, rows: ArrayLike<number>): DissimilaritySpec {
  const numbers = (values: Float64Array) => Float64Array.from(rows, (row) => values[row]);
  const variables = spec.variables.map((variable): Variable => {
    if (variable.kind === 'quantity') {
      return { ...variable, low: numbers(variable.low), high: numbers(variable.high) };
    }
    const { codes } = variable;
    return { ...variable, codes: Int32Array.from(rows, (row) => codes[row]) };
  });
  return { ...spec, variables };
}

/**
 * Compares all records of a specification, and says which of them are fully comparable: `places` into its
 * records, ascending. For k-means those are the records with every number, as points scaled by range and
 * weight with plain Euclidean distances; otherwise those without an unknown dissimilarity among them.
 */
export function compareAll(
  spec: DissimilaritySpec,
  method: GroupingMethod,
): Compared & { readonly places: Int32Array } {
  if (method === 'kmeans') {
    const all = pointsOf(spec);
    const places = Int32Array.from({ length: all.n }, (_, row) => row).filter((row) =>
      all.values.subarray(row * all.columns, (row + 1) * all.columns).every(Number.isFinite),
    );
    const points = takePoints(all, places);
    return { points, matrix: euclidean(points), places };
  }
  const whole = dissimilarities(spec);
  const { kept } = knownRecords(whole);
  return { matrix: kept.length === whole.n ? whole : takeRecords(whole, kept), points: null, places: kept };
}

/** Complete numeric records as points; k-means has no use for kinds. */
export function pointsOf(spec: DissimilaritySpec): Points {
  const computed = waysOf(spec).map(({ variable }) => variable);
  const active = spec.variables.filter(
    ({ weight, block }, place) =>
      // Complete records have what these follow from.
      !computed.includes(place) &&
      weight > 0 &&
      (spec.mode === 'plain' || (spec.blockWeights[block] ?? 0) > 0),
  );
  const n = active.length === 0 ? 0 : lengthOf(active[0]);
  const values = new Float64Array(n * active.length);
  for (const [column, variable] of active.entries()) {
    if (variable.kind !== 'quantity') throw new RangeError('k-means takes numbers only');
    const blockWeight = spec.mode === 'plain' ? 1 : (spec.blockWeights[variable.block] ?? 0);
    const scale = variable.range > 0 ? Math.sqrt(variable.weight * blockWeight) / variable.range : 0;
    for (let i = 0; i < n; i++) {
      values[i * active.length + column] = ((variable.low[i] + variable.high[i]) / 2) * scale;
    }
  }
  return { values, n, columns: active.length };
}

/** InputError where the method cannot take what is compared. */
export function requireNumbers({ attributes }: Comparison, method: GroupingMethod): void {
  if (method !== 'kmeans') return;
  const kinds = attributes.filter(({ coding }) => coding.kind !== 'number');
  if (kinds.length === 0) return;
  throw new InputError(
    `k-means takes numbers only, and "${kinds[0].attribute.label}" (${kinds[0].attribute.id}) is not one`,
    { path: 'of' },
    'name numeric attributes under "of", or choose medoids',
  );
}

function takePoints({ values, columns }: Points, places: ArrayLike<number>): Points {
  const taken = new Float64Array(places.length * columns);
  for (let t = 0; t < places.length; t++) {
    taken.set(values.subarray(places[t] * columns, (places[t] + 1) * columns), t * columns);
  }
  return { values: taken, n: places.length, columns };
}

export function euclidean({ values, n, columns }: Points): Condensed {
  const distances = new Float64Array(pairCount(n));
  let pair = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      let square = 0;
      for (let c = 0; c < columns; c++) {
        const difference = values[i * columns + c] - values[j * columns + c];
        square += difference * difference;
      }
      distances[pair++] = Math.sqrt(square);
    }
  }
  return { n, values: distances };
}

function lengthOf(variable: Variable): number {
  return variable.kind === 'quantity' ? variable.low.length : variable.codes.length;
}

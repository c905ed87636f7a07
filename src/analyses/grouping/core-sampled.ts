import { InputError } from '../../errors.ts';
import { dissimilarities, dissimilaritiesTo } from '../../numerics/dissimilarity/dissimilarity.ts';
import { prepareComparison } from '../../numerics/dissimilarity/prepare.ts';
import { type DissimilaritySpec, valueAt } from '../../numerics/dissimilarity/variables.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import {
  type DissimilaritySource,
  sampledMedoids,
  sampleRows,
  simplifiedWidth,
} from '../../numerics/grouping/sampled-medoids.ts';
import { silhouette } from '../../numerics/grouping/silhouette.ts';
import { type Compared, takeVariables } from './compared.ts';
import { type Core, LARGEST_MATRIX, without } from './core-found.ts';
import { countsToTry, requireDifferences } from './counts-to-try.ts';
import type { Partition } from './found.ts';
import type { GroupingOptions } from './options.ts';
import { bySize } from './partition.ts';

/** Samples of a larger table, and records in each. */
const SAMPLES = 5;

const SAMPLE_SIZE = 1000;

export function fromSamples(
  spec: DissimilaritySpec,
  n: number,
  options: GroupingOptions,
  random: Random,
): Core {
  if (options.method !== 'medoids') {
    throw new InputError(
      `${n} records are too many for "${options.method}", which needs every dissimilarity (up to ${LARGEST_MATRIX})`,
      { path: 'method' },
      'choose medoids, which large tables are sampled for, or select fewer fragments',
    );
  }
  const chance = random.stream('samples');
  const samples = Array.from({ length: SAMPLES }, () => {
    const rows = sampleRows(n, SAMPLE_SIZE, chance);
    const { kept } = knownRecords(dissimilarities(takeVariables(spec, rows)));
    return kept.map((place) => rows[place]);
  });
  const smallest = samples.reduce((least, rows) => Math.min(least, rows.length), n);
  const [least, most] = countsToTry(options, smallest);
  const prepared = prepareComparison(spec);
  const source: DissimilaritySource = {
    n,
    among: (rows) => dissimilarities(takeVariables(spec, rows)),
    to: (row) =>
      dissimilaritiesTo(
        prepared,
        spec.variables.map((variable) => valueAt(variable, row)),
      ),
  };
  const all = sampledMedoids(source, samples, least, most);
  const best = all.reduce((one, next) => (next.meanWidth > one.meanWidth ? next : one));
  const membership = bySize(best.membership);
  const rows = Int32Array.from({ length: n }, (_, row) => row).filter((row) => membership[row] >= 0);
  const placeOf = new Int32Array(n).fill(-1);
  for (const [place, row] of rows.entries()) placeOf[row] = place;
  const core = samples[0].filter((row) => placeOf[row] >= 0);
  const inner = takeVariables(spec, core);
  const compared: Compared = { matrix: dissimilarities(inner), points: null };
  requireDifferences(compared.matrix, n);
  const measured = all.map(({ k, membership: labels }): Partition => {
    const sorted = bySize(labels);
    const part = core.map((row) => sorted[row]);
    return { k, membership: part, meanSilhouette: silhouette(compared.matrix, part)?.mean ?? null };
  });
  const numberOf = new Map(Array.from(best.medoids, (row) => [membership[row], row]));
  const medoids = Array.from({ length: best.k }, (_, group) => numberOf.get(group) ?? -1);
  return {
    rows,
    membership: rows.map((row) => membership[row]),
    k: best.k,
    widths: Float64Array.from(rows, (row) => simplifiedWidth(best.first[row], best.second[row])),
    neighbour: nextGroups(source, medoids, membership, rows),
    toMedoid: Float64Array.from(rows, (row) => best.first[row]),
    medoids: medoids.map((row) => placeOf[row]),
    inMatrix: core.map((row) => placeOf[row]),
    compared,
    spec: inner,
    tried: measured,
    chosen: measured[best.k - least],
    tree: null,
    setAside: without(n, rows),
    sampled: true,
  };
}

function nextGroups(
  source: DissimilaritySource,
  medoids: readonly number[],
  membership: Int32Array,
  rows: Int32Array,
): Int32Array {
  const next = new Int32Array(source.n).fill(-1);
  const nearest = new Float64Array(source.n).fill(Number.POSITIVE_INFINITY);
  for (const [group, medoid] of medoids.entries()) {
    const distances = source.to(medoid);
    for (let row = 0; row < source.n; row++) {
      if (membership[row] === group || !(distances[row] < nearest[row])) continue;
      nearest[row] = distances[row];
      next[row] = group;
    }
  }
  return rows.map((row) => next[row]);
}

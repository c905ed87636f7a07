import { InputError } from '../../errors.ts';
import { type Condensed, dissimilarityAt, takeRecords } from '../../numerics/dissimilarity/condensed.ts';
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
import { groupSizes, silhouette } from '../../numerics/grouping/silhouette.ts';
import type { MergeTree } from '../../numerics/grouping/tree.ts';
import { printCount } from '../phrasing.ts';
import { type Compared, compareAll, takeVariables } from './compared.ts';
import type { Partition } from './found.ts';
import type { GroupingOptions } from './options.ts';
import { bestPartition, bySize, partitionsOf } from './partition.ts';

/** Above this many records a full matrix (4 bytes times n squared) is not made: 100 MB at 5,000. */
export const LARGEST_MATRIX = 5000;
/** Samples of a larger table, and records in each. */
const SAMPLES = 5;
const SAMPLE_SIZE = 1000;

/** Fewest records among which groups can be looked for: two groups of two. */
const FEWEST = 4;

/** The records grouped, and those among them whose whole matrix is at hand. */
export interface Core {
  /** Rows of all grouped records, ascending, with the chosen group of each (-1: in none). */
  readonly rows: Int32Array;
  readonly membership: Int32Array;
  readonly k: number;
  /** Silhouette width and next group of each; simplified (medoids in place of groups) where sampled. */
  readonly widths: Float64Array;
  readonly neighbour: Int32Array;
  /** Dissimilarity of each to the medoid of its group; the medoids as places in `rows`, one a group. */
  readonly toMedoid: Float64Array;
  readonly medoids: readonly number[];
  /** Places in `rows` that `compared` is of: all of them, or a sample of a large table. */
  readonly inMatrix: Int32Array;
  readonly compared: Compared;
  readonly spec: DissimilaritySpec;
  readonly tried: readonly Partition[];
  readonly chosen: Partition;
  readonly tree: MergeTree | null;
  /** Rows that could not be compared with the others. */
  readonly setAside: Int32Array;
  readonly sampled: boolean;
}

/** Compares the records and groups them; large tables by medoids of samples (CLARA). */
export function findCore(spec: DissimilaritySpec, n: number, options: GroupingOptions, random: Random): Core {
  return n > LARGEST_MATRIX ? fromSamples(spec, n, options, random) : fromMatrix(spec, n, options, random);
}

function fromMatrix(spec: DissimilaritySpec, n: number, options: GroupingOptions, random: Random): Core {
  const { places: rows, ...compared } = compareAll(spec, options.method);
  const { matrix } = compared;
  requireDifferences(matrix, rows.length);
  const [least, most] = countsToTry(options, rows.length);
  const { partitions: tried, tree } = partitionsOf(compared, options, least, most, random.stream('groups'));
  if (tried.length === 0) {
    throw new InputError(
      `fewer than ${least} records differ in the chosen attributes`,
      { path: 'k' },
      'ask for fewer groups or name more attributes',
    );
  }
  const chosen = bestPartition(tried);
  const found = silhouette(matrix, chosen.membership);
  const medoids = medoidsOf(compared, chosen);
  const toMedoid = new Float64Array(rows.length).fill(Number.NaN);
  for (const [group, medoid] of medoids.entries()) {
    for (let place = 0; place < rows.length; place++) {
      if (chosen.membership[place] === group) toMedoid[place] = dissimilarityAt(matrix, place, medoid);
    }
  }
  return {
    rows,
    membership: chosen.membership,
    k: chosen.k,
    widths: found?.widths ?? new Float64Array(rows.length).fill(Number.NaN),
    neighbour: found?.neighbour ?? new Int32Array(rows.length).fill(-1),
    toMedoid,
    medoids,
    inMatrix: rows.map((_, place) => place),
    compared,
    spec: rows.length === n ? spec : takeVariables(spec, rows),
    tried,
    chosen,
    tree,
    setAside: without(n, rows),
    sampled: false,
  };
}

/** Any groups of records that are all alike would be made up. */
function requireDifferences({ values }: Condensed, n: number): void {
  if (values.length === 0 || values.some((value) => value > 0)) return;
  throw new InputError(
    `all ${n} records are alike in the chosen attributes, so that there is nothing to group them by`,
    { path: 'of' },
    'name attributes in which they differ',
  );
}

function fromSamples(spec: DissimilaritySpec, n: number, options: GroupingOptions, random: Random): Core {
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

function countsToTry(options: GroupingOptions, records: number): [least: number, most: number] {
  if (records < FEWEST) {
    throw new InputError(
      `only ${printCount(records, 'record')} can be compared with each other, and grouping needs ${FEWEST}`,
      {},
      'choose attributes that more records have, lower "minimumOverlap", or select more fragments',
    );
  }
  if (options.k === 'choose') return [2, Math.min(options.mostGroups, records - 1)];
  if (options.method === 'density') {
    throw new InputError(
      `"density" finds the number of groups itself, and "k" asks for ${options.k}`,
      { path: 'k' },
      'leave "k" out, or choose another method',
    );
  }
  if (options.k < records) return [options.k, options.k];
  throw new InputError(
    `${options.k} groups are asked for among ${records} records`,
    { path: 'k' },
    `ask for fewer than ${records}`,
  );
}

/** Of each group the member with the least sum of dissimilarities to the other members; of equals the first. */
function medoidsOf(compared: Compared, { membership, k }: Partition): number[] {
  const size = groupSizes(membership);
  return Array.from({ length: k }, (_, group) => {
    const members = new Int32Array(size[group]);
    let next = 0;
    for (const [place, label] of membership.entries()) if (label === group) members[next++] = place;
    const { n, values } = takeRecords(compared.matrix, members);
    const sums = new Float64Array(n);
    let pair = 0;
    for (let i = 0; i < n; i++) {
      for (let j = i + 1; j < n; j++) {
        sums[i] += values[pair];
        sums[j] += values[pair++];
      }
    }
    return members[sums.indexOf(sums.reduce((least, sum) => Math.min(least, sum)))];
  });
}

function without(n: number, rows: Int32Array): Int32Array {
  const kept = new Uint8Array(n);
  for (const row of rows) kept[row] = 1;
  return Int32Array.from({ length: n }, (_, row) => row).filter((row) => kept[row] === 0);
}

import { InputError } from '../../errors.ts';
import { dissimilarityAt, takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import type { DissimilaritySpec } from '../../numerics/dissimilarity/variables.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { groupSizes, silhouette } from '../../numerics/grouping/silhouette.ts';
import { type Compared, compareAll, takeVariables } from './compared.ts';
import { type Core, LARGEST_MATRIX, without } from './core-found.ts';
import { fromSamples } from './core-sampled.ts';
import { countsToTry, requireDifferences } from './counts-to-try.ts';
import type { Partition } from './found.ts';
import type { GroupingOptions } from './options.ts';
import { bestPartition, partitionsOf } from './partition.ts';

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

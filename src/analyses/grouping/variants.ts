import type { DissimilaritySpec } from '../../numerics/dissimilarity/variables.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { adjustedRand, contingency } from '../../numerics/grouping/agreement.ts';
import { coMembership } from '../../numerics/grouping/co-membership.ts';
import { silhouette } from '../../numerics/grouping/silhouette.ts';
import type { Unavailable } from '../contract.ts';
import { compareAll } from './compared.ts';
import type { Partition } from './found.ts';
import type { GroupingMethod } from './options.ts';
import { type How, partitionsOf } from './partition.ts';
import type { Variant, Variants } from './trust-found.ts';

const METHODS: readonly GroupingMethod[] = ['medoids', 'average', 'complete'];
/** How much more one block counts than it was given. */
const HEAVIER = 2;

export interface VariantsRequest {
  readonly spec: DissimilaritySpec;
  readonly chosen: Partition;
  readonly how: How;
  /** Names of the blocks, in the order of the weights. */
  readonly blocks: readonly string[];
  readonly random: Random;
  readonly onProgress: (share: number) => void;
}

/**
 * Which records stay together whatever the method, the weights and the number of groups? Medoids, mean and
 * complete linkage, and the chosen method; the weights as given and with each block counting twice; one group
 * fewer, as many, and one more.
 */
export function variantsOf(request: VariantsRequest): Variants | Unavailable {
  const { spec, chosen, how, random } = request;
  if (how.method === 'kmeans') return { why: 'k-means takes points, which the other methods do not' };
  if (chosen.k < 2) return { why: 'there are fewer than two groups' };
  const n = chosen.membership.length;
  const least = Math.max(2, chosen.k - 1);
  const most = Math.min(n - 1, chosen.k + 1);
  const methods = [...new Set([...(how.method === 'density' ? [] : [how.method]), ...METHODS])];
  const groupings: Int32Array[] = [];
  const variants: Variant[] = [];
  const weightings = weightingsOf(request);
  for (const [step, { name, weights }] of weightings.entries()) {
    request.onProgress(step / weightings.length);
    const { matrix, points, places } = compareAll({ ...spec, blockWeights: weights }, 'medoids');
    for (const method of methods) {
      const chance = random.stream(`${name}, ${method}`);
      const { partitions } = partitionsOf({ matrix, points }, { ...how, method }, least, most, chance);
      for (const { k, membership } of partitions) {
        const labels = new Int32Array(n).fill(-1);
        places.forEach((place, at) => {
          labels[place] = membership[at];
        });
        groupings.push(labels);
        variants.push({
          method,
          weights: name,
          k,
          meanSilhouette: silhouette(matrix, membership)?.mean ?? null,
          adjustedRand: adjustedRand(contingency(chosen.membership, labels)),
        });
      }
    }
  }
  const together = coMembership(groupings);
  return { variants, together, ...summed(together, chosen) };
}

function weightingsOf({ spec, blocks }: VariantsRequest): { name: string; weights: readonly number[] }[] {
  const given = { name: 'as given', weights: spec.blockWeights };
  const used = spec.blockWeights.flatMap((weight, block) =>
    weight > 0 && spec.variables.some((one) => one.block === block && one.weight > 0) ? [block] : [],
  );
  if (spec.mode === 'plain' || used.length < 2) return [given];
  return [
    given,
    ...used.map((heavy) => ({
      name: `${blocks[heavy] ?? 'block'} twice`,
      weights: spec.blockWeights.map((weight, block) => (block === heavy ? HEAVIER * weight : weight)),
    })),
  ];
}

function summed(together: Variants['together'], { k, membership }: Partition) {
  const n = membership.length;
  const sums = new Float64Array(n * k);
  const counts = new Int32Array(n * k);
  let pair = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const share = together.values[pair++];
      if (Number.isNaN(share)) continue;
      for (const [one, other] of [
        [i, membership[j]],
        [j, membership[i]],
      ]) {
        if (other < 0) continue;
        sums[one * k + other] += share;
        counts[one * k + other]++;
      }
    }
  }
  const mean = (i: number, group: number) =>
    group < 0 || counts[i * k + group] === 0 ? null : sums[i * k + group] / counts[i * k + group];
  const records = Array.from({ length: n }, (_, i) => {
    const own = membership[i];
    let next = -1;
    for (let group = 0; group < k; group++) {
      if (group !== own && (mean(i, group) ?? -1) > (next < 0 ? -1 : (mean(i, next) ?? -1))) next = group;
    }
    return { own: mean(i, own), next, other: mean(i, next) };
  });
  const groups = Array.from({ length: k }, (_, a) =>
    Array.from({ length: k }, (_, b) => {
      let total = 0;
      let pairs = 0;
      for (let i = 0; i < n; i++) {
        if (membership[i] !== a) continue;
        total += sums[i * k + b];
        pairs += counts[i * k + b];
      }
      return pairs === 0 ? null : total / pairs;
    }),
  );
  return { records, groups };
}

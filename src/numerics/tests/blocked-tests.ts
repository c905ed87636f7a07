import { quantileSorted, sortedValues } from '../describing/quantile.ts';
import { midranks } from '../foundation/ranks.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type PermutationOptions, type PermutationTest, permutationTest } from '../resampling/permutation.ts';
import { andersonDarling } from './anderson-darling.ts';
import type { BlockedSample } from './blocked-sample.ts';
import { whyNotCompared } from './samples.ts';

/**
 * Tests of several samples whose readings come in blocks (fragments of one item). Under "no difference"
 * the labels of whole blocks could have been dealt in any way, so whole blocks are dealt again; a
 * block counts as one thing however many readings it holds. Exact where all ways can be tried
 * (permutationTest). With one reading a block they are the usual permutation tests.
 */

/** Do some groups tend to larger values? The Kruskal-Wallis H, p by dealing blocks (two groups: as Mann-Whitney). */
export function blockedRankTest(
  samples: readonly BlockedSample[],
  options: PermutationOptions,
): PermutationTest | Unavailable {
  const refusal = whyNot(samples);
  if (refusal) return refusal;
  const pooled = pool(samples);
  const { ranks, tieSum } = midranks(pooled.values);
  const n = ranks.length;
  const variance = (n * (n + 1)) / 12 - tieSum / (12 * (n - 1));
  const ratio = dealer(pooled, samples.length, ranks);
  return permutationTest(
    pooled.labels,
    (labels) => {
      const { sums, sizes } = ratio(labels);
      let between = 0;
      for (let group = 0; group < sums.length; group++) {
        const shift = sums[group] / sizes[group] - (n + 1) / 2;
        between += sizes[group] * shift * shift;
      }
      return between / variance;
    },
    options,
  );
}

/**
 * Do some groups spread wider? The F of Brown & Forsythe 1974 over the distances to each group's own
 * median, p by dealing the distances of whole blocks.
 */
export function blockedSpreadTest(
  samples: readonly BlockedSample[],
  options: PermutationOptions,
): PermutationTest | Unavailable {
  const refusal = whyNot(samples);
  if (refusal) return refusal;
  const pooled = pool(samples);
  const medians = samples.map((sample) => quantileSorted(sortedValues(sample.values), 0.5));
  const distances = Float64Array.from(
    samples.flatMap((sample, group) =>
      Array.from(sample.values, (value) => Math.abs(value - medians[group])),
    ),
  );
  const n = distances.length;
  const k = samples.length;
  if (n <= k) return { why: 'every group has a single value, so there is no spread to judge by' };
  const mean = distances.reduce((sum, value) => sum + value, 0) / n;
  const total = distances.reduce((sum, value) => sum + (value - mean) * (value - mean), 0);
  if (!(total > 0)) return { why: 'all values lie equally far from the median of their group' };
  const deal = dealer(pooled, k, distances);
  return permutationTest(
    pooled.labels,
    (labels) => {
      const { sums, sizes } = deal(labels);
      let between = 0;
      for (let group = 0; group < k; group++) {
        const shift = sums[group] / sizes[group] - mean;
        between += sizes[group] * shift * shift;
      }
      const within = total - between;
      return within <= total * 1e-14 ? Number.MAX_VALUE : between / (k - 1) / (within / (n - k));
    },
    options,
  );
}

/**
 * Do the groups differ in place, spread or shape? The Anderson-Darling statistic of several samples
 * (Scholz & Stephens 1987), p by dealing blocks.
 */
export function blockedShapeTest(
  samples: readonly BlockedSample[],
  options: PermutationOptions,
): PermutationTest | Unavailable {
  return shapeTest(samples, options, (values, labels) => andersonDarling(values, labels, samples.length));
}

/** Greatest distance of two cumulative curves (Smirnov 1939), p by dealing blocks. */
export function blockedSmirnovTest(
  samples: readonly [BlockedSample, BlockedSample],
  options: PermutationOptions,
): PermutationTest | Unavailable {
  return shapeTest(samples, options, (values, labels) => {
    const second = labels.reduce((sum, label) => sum + label, 0);
    const steps = [1 / (labels.length - second), -1 / second];
    let gap = 0;
    let widest = 0;
    for (let i = 0; i < values.length; i++) {
      gap += steps[labels[i]];
      if (i === values.length - 1 || values[i] !== values[i + 1]) widest = Math.max(widest, Math.abs(gap));
    }
    return widest;
  });
}

function shapeTest(
  samples: readonly BlockedSample[],
  options: PermutationOptions,
  statistic: (sorted: Float64Array, labels: Int32Array) => number,
): PermutationTest | Unavailable {
  const refusal = whyNot(samples);
  if (refusal) return refusal;
  const pooled = pool(samples);
  const order = Array.from(pooled.values.keys()).sort((a, b) => compare(pooled.values[a], pooled.values[b]));
  const values = Float64Array.from(order, (i) => pooled.values[i]);
  const blocks = Int32Array.from(order, (i) => pooled.blocks[i]);
  const dealt = new Int32Array(values.length);
  return permutationTest(
    pooled.labels,
    (labels) => {
      for (let i = 0; i < dealt.length; i++) dealt[i] = labels[blocks[i]];
      return statistic(values, dealt);
    },
    { exactLimit: 20_000, ...options },
  );
}

/** Order that holds for infinite ends too, whose difference would be no number. */
function compare(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

interface Pooled {
  readonly values: Float64Array;
  /** Block of each value, numbered through all samples. */
  readonly blocks: Int32Array;
  /** Group of each block. */
  readonly labels: Int32Array;
}

function pool(samples: readonly BlockedSample[]): Pooled {
  const starts: number[] = [];
  let blocks = 0;
  for (const { count } of samples) {
    starts.push(blocks);
    blocks += count;
  }
  return {
    values: Float64Array.from(samples.flatMap((sample) => Array.from(sample.values))),
    blocks: Int32Array.from(
      samples.flatMap((sample, s) => Array.from(sample.blocks, (block) => starts[s] + block)),
    ),
    labels: Int32Array.from(samples.flatMap((sample, s) => new Array<number>(sample.count).fill(s))),
  };
}

/** Sums of scores and numbers of readings of each group, from totals of the blocks. */
function dealer({ blocks, labels }: Pooled, k: number, scores: Float64Array) {
  const sumOf = new Float64Array(labels.length);
  const sizeOf = new Float64Array(labels.length);
  scores.forEach((score, i) => {
    sumOf[blocks[i]] += score;
    sizeOf[blocks[i]]++;
  });
  const sums = new Float64Array(k);
  const sizes = new Float64Array(k);
  return (dealt: Int32Array) => {
    sums.fill(0);
    sizes.fill(0);
    for (let block = 0; block < dealt.length; block++) {
      sums[dealt[block]] += sumOf[block];
      sizes[dealt[block]] += sizeOf[block];
    }
    return { sums, sizes };
  };
}

function whyNot(samples: readonly BlockedSample[]): Unavailable | undefined {
  return whyNotCompared(samples.map((sample) => sample.values));
}

import { Matrix, pseudoInverse } from 'ml-matrix';
import { chiSquaredUpper } from '../foundation/distributions.ts';
import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { countRelabellings, nextRelabelling, shuffle } from '../resampling/permutation.ts';
import { drawsWithinReach } from '../resampling/within-reach.ts';

/** Readings with a label each, in strata within which labels are compared. */
export interface StratifiedData {
  /** Label 0 … labelCount - 1 of each reading. */
  readonly labels: ArrayLike<number>;
  readonly labelCount: number;
  /** Stratum of each reading, any whole numbers. */
  readonly strata: ArrayLike<number>;
  /** What is compared: one column of ranks or values; for kinds one column of 0 and 1 for each kind. */
  readonly scores: readonly ArrayLike<number>[];
  /** Item of each reading, where items have several: their readings keep one label. */
  readonly items?: readonly string[];
}

export interface StratifiedTest {
  /** Generalised Cochran-Mantel-Haenszel statistic. */
  readonly statistic: number;
  readonly df: number;
  /** By the chi-squared distribution, which takes readings as independent. */
  readonly pAsymptotic: number;
  readonly n: number;
  /** Strata in which labels can be compared. */
  readonly strata: number;
  /** By how much the scores of each label pass what its strata lead to expect: label by column, sums. */
  readonly excess: readonly Float64Array[];
  /** The same over its standard deviation under no difference; 0 where that is nothing. */
  readonly standardised: readonly Float64Array[];
  /**
   * Share of the spread within strata that lies between the labels, less what chance gives, as a root: 0 to 1, to be
   * held against the same of other strata.
   */
  readonly strength: number;
}

/**
 * Do the scores differ between labels within strata? Generalised Cochran-Mantel-Haenszel statistic: with one column
 * of ranks the mean score test, with columns of kinds the general association (Landis, Heyman & Koch 1978, Int. Stat.
 * Rev. 46:237; Mantel & Haenszel 1959, J. Natl Cancer Inst. 22:719). Dependent columns lower the degrees of freedom.
 * Unavailable where no stratum has two labels, or nothing varies there.
 */
export function stratifiedTest(data: StratifiedData): StratifiedTest | Unavailable {
  const parts = partsOf(data);
  if ('why' in parts) return parts;
  return statisticOf(data, parts);
}

interface Parts {
  /** Readings of strata in which labels can be compared. */
  readonly rows: readonly Int32Array[];
  /** Scores less the mean of their stratum, column by column. */
  readonly centred: readonly Float64Array[];
  readonly covariance: Float64Array;
  /** Its generalised inverse. */
  readonly inverse: Float64Array;
  readonly df: number;
  readonly n: number;
}

function partsOf({ labels, labelCount, strata, scores }: StratifiedData): Parts | Unavailable {
  const rows = rowsByStratum(strata, labels.length).filter((own) =>
    own.some((row) => labels[row] !== labels[own[0]]),
  );
  if (rows.length === 0) return { why: 'no stratum has two of the groups' };
  const centred = scores.map(() => new Float64Array(labels.length));
  const columns = scores.length;
  const size = (labelCount - 1) * columns;
  const covariance = new Float64Array(size * size);
  for (const own of rows) {
    const n = own.length;
    for (const [column, values] of scores.entries()) {
      let sum = 0;
      for (let i = 0; i < n; i++) sum += values[own[i]];
      for (let i = 0; i < n; i++) centred[column][own[i]] = values[own[i]] - sum / n;
    }
    const counts = new Float64Array(labelCount);
    for (let i = 0; i < n; i++) counts[labels[own[i]]]++;
    for (let a = 0; a < columns; a++)
      for (let b = 0; b < columns; b++) {
        let product = 0;
        for (let i = 0; i < n; i++) product += centred[a][own[i]] * centred[b][own[i]];
        for (let g = 0; g < labelCount - 1; g++)
          for (let h = 0; h < labelCount - 1; h++)
            covariance[(g * columns + a) * size + h * columns + b] +=
              ((g === h ? counts[g] : 0) - (counts[g] * counts[h]) / n) * (product / (n - 1));
      }
  }
  const matrix = new Matrix(
    Array.from({ length: size }, (_, i) => Array.from(covariance.subarray(i * size, (i + 1) * size))),
  );
  const largest = covariance.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (!(largest > 1e-12)) return { why: 'nothing varies within the strata that groups share' };
  const inverted = pseudoInverse(matrix, 1e-9 * largest);
  const inverse = Float64Array.from(inverted.to1DArray());
  const projection = matrix.mmul(inverted);
  return {
    rows,
    centred,
    covariance,
    inverse,
    df: Math.round(projection.trace()),
    n: rows.reduce((sum, own) => sum + own.length, 0),
  };
}

/** The rows of each stratum, in the order in which the strata first come. */
function rowsByStratum(strata: ArrayLike<number>, n: number): readonly Int32Array[] {
  const sizes = new Map<number, number>();
  for (let row = 0; row < n; row++) sizes.set(strata[row], (sizes.get(strata[row]) ?? 0) + 1);
  const rows = new Map([...sizes].map(([stratum, size]) => [stratum, new Int32Array(size)]));
  const filled = new Map([...sizes.keys()].map((stratum) => [stratum, 0]));
  for (let row = 0; row < n; row++) {
    const place = filled.get(strata[row]) ?? 0;
    const own = rows.get(strata[row]);
    if (own !== undefined) own[place] = row;
    filled.set(strata[row], place + 1);
  }
  return [...rows.values()];
}

function excessOf(data: StratifiedData, { rows, centred }: Parts): Float64Array[] {
  const excess = Array.from({ length: data.labelCount }, () => new Float64Array(centred.length));
  for (const own of rows)
    for (const row of own)
      for (let column = 0; column < centred.length; column++)
        excess[data.labels[row]][column] += centred[column][row];
  return excess;
}

function quadratic(excess: readonly Float64Array[], inverse: Float64Array): number {
  const columns = excess[0].length;
  const size = (excess.length - 1) * columns;
  let sum = 0;
  for (let i = 0; i < size; i++) {
    const left = excess[Math.floor(i / columns)][i % columns];
    if (left === 0) continue;
    for (let j = 0; j < size; j++)
      sum += left * inverse[i * size + j] * excess[Math.floor(j / columns)][j % columns];
  }
  return sum;
}

function statisticOf(data: StratifiedData, parts: Parts): StratifiedTest {
  const excess = excessOf(data, parts);
  const statistic = quadratic(excess, parts.inverse);
  const spreads = spreadsOf(data, parts);
  const free = parts.n - parts.rows.length;
  // With c columns of kinds the statistic can reach c times what one column can.
  const side = Math.max(
    1,
    Math.min(data.labelCount - 1, data.scores.length > 1 ? data.scores.length - 1 : 1),
  );
  return {
    statistic,
    df: parts.df,
    pAsymptotic: chiSquaredUpper(statistic, parts.df),
    n: parts.n,
    strata: parts.rows.length,
    excess,
    standardised: excess.map((line, label) =>
      line.map((value, column) => {
        const sd = Math.sqrt(spreads[label][column]);
        return sd > 1e-9 ? value / sd : 0;
      }),
    ),
    strength: free > 0 ? Math.min(1, Math.sqrt(Math.max(0, statistic - parts.df) / free / side)) : 0,
  };
}

/** Variance of each excess under no difference. */
function spreadsOf({ labels, labelCount }: StratifiedData, { rows, centred }: Parts): Float64Array[] {
  const spreads = Array.from({ length: labelCount }, () => new Float64Array(centred.length));
  for (const own of rows) {
    const n = own.length;
    const counts = new Float64Array(labelCount);
    for (const row of own) counts[labels[row]]++;
    for (let column = 0; column < centred.length; column++) {
      let squares = 0;
      for (let i = 0; i < n; i++) squares += centred[column][own[i]] ** 2;
      for (let label = 0; label < labelCount; label++)
        spreads[label][column] += ((counts[label] * (n - counts[label])) / n) * (squares / (n - 1));
    }
  }
  return spreads;
}

export interface StratifiedPermutation {
  readonly p: number;
  readonly method: 'exact' | 'resampled';
  readonly relabellings: number;
}

/**
 * The same question with the p from dealing the labels again within each stratum, whole items as one: exact over all
 * relabellings where they are few, else (b + 1) / (m + 1) over random ones. Valid however small the strata are
 * (Pesarin & Salmaso 2010, Permutation Tests for Complex Data, 1.9).
 */
export function stratifiedPermutation(
  data: StratifiedData,
  {
    random,
    relabellings,
    exactLimit = 20_000,
  }: { random: Random; relabellings: number; exactLimit?: number },
): StratifiedPermutation | Unavailable {
  const parts = partsOf(data);
  if ('why' in parts) return parts;
  const strata = parts.rows.map((own) => blocksOf(data, parts, own));
  if (strata.every(({ labels }) => new Set(labels).size < 2))
    return { why: 'no stratum has two of the groups' };
  const excess = Array.from({ length: data.labelCount }, () => new Float64Array(data.scores.length));
  const statistic = () => {
    for (const line of excess) line.fill(0);
    for (const { labels, sums } of strata)
      labels.forEach((label, block) => {
        for (let column = 0; column < excess[label].length; column++)
          excess[label][column] += sums[block][column];
      });
    return quadratic(excess, parts.inverse);
  };
  const observed = statistic();
  const threshold = observed - 1e-9 * Math.max(1, observed);
  const ways = strata.reduce((product, { labels }) => product * countRelabellings(labels), 1);
  if (ways <= exactLimit) {
    for (const { labels } of strata) labels.sort();
    let reached = 0;
    let tried = 0;
    do {
      tried++;
      if (statistic() >= threshold) reached++;
    } while (strata.some(({ labels }) => nextOrFirst(labels)));
    return { p: reached / tried, method: 'exact', relabellings: tried };
  }
  const draws = drawsWithinReach(relabellings, data.labels.length);
  let reached = 0;
  for (let i = 0; i < draws; i++) {
    for (const { labels } of strata) shuffle(labels, random);
    if (statistic() >= threshold) reached++;
  }
  return { p: (reached + 1) / (draws + 1), method: 'resampled', relabellings: draws };
}

/** An odometer's wheel: false, and back at its start, when it has gone round. */
function nextOrFirst(labels: Int32Array): boolean {
  if (nextRelabelling(labels)) return true;
  labels.sort();
  return false;
}

interface Blocks {
  readonly labels: Int32Array;
  readonly sums: readonly Float64Array[];
}

/** Readings of one item with one label stay together; an item with two labels counts as one thing in each. */
function blocksOf({ labels, items }: StratifiedData, { centred }: Parts, own: Int32Array): Blocks {
  const blocks = new Map<string, { label: number; sums: Float64Array }>();
  for (const row of own) {
    const key = items === undefined ? String(row) : `${labels[row]} ${items[row]}`;
    const block = blocks.get(key) ?? { label: labels[row], sums: new Float64Array(centred.length) };
    centred.forEach((values, column) => {
      block.sums[column] += values[row];
    });
    blocks.set(key, block);
  }
  const all = [...blocks.values()];
  return { labels: Int32Array.from(all, ({ label }) => label), sums: all.map(({ sums }) => sums) };
}

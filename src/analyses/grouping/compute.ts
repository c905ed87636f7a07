import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { compareRecords } from '../../fragments/comparison.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { type Condensed, dissimilarityAt, takeRecords } from '../../numerics/condensed.ts';
import { dissimilarities } from '../../numerics/dissimilarity.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import { silhouette } from '../../numerics/grouping/silhouette.ts';
import type { GroupStability } from '../../numerics/grouping/stability.ts';
import { copheneticCorrelation, type MergeTree } from '../../numerics/grouping/tree.ts';
import { comparisonSettings } from '../comparison-options.ts';
import type { AnalysisInput, Findings, SetAside, Unavailable } from '../contract.ts';
import { type Agreement, agreementWith } from './compare-with.ts';
import { type ContextTally, contextTallies } from './context.ts';
import { type Mark, marksOf } from './marks.ts';
import type { GroupingOptions } from './options.ts';
import { bestPartition, type Partition, partitionsOf } from './partition.ts';
import { type Rule, separatingRules } from './rules.ts';
import { groupingTables } from './tables.ts';
import { partitionStability, type ShuffledReference, shuffledReference } from './trust.ts';

/** One record, with its place among the groups. */
export interface GroupedRecord {
  /** Row in the table of records. */
  readonly row: number;
  readonly id: string;
  readonly item: string;
  readonly source: string;
  readonly sourceRow: number;
  /** 0 = largest group, -1 = in none. */
  readonly group: number;
  readonly silhouette: number;
  /** The nearest other group. */
  readonly neighbour: number;
  /** Dissimilarity to the medoid of its own group. */
  readonly toMedoid: number;
}

export interface Group {
  readonly size: number;
  /** Place in `records` of the member with the least sum of dissimilarities to the others. */
  readonly medoid: number;
  readonly silhouette: number;
  readonly stability: GroupStability | Unavailable;
  readonly marks: readonly Mark[];
  readonly rule: Rule;
  /** Members whose silhouette width is at most BORDERLINE. */
  readonly borderline: number;
}

export interface GroupingFound extends Findings {
  readonly options: GroupingOptions;
  readonly unit: 'fragment' | 'item';
  readonly k: number;
  readonly records: readonly GroupedRecord[];
  readonly groups: readonly Group[];
  readonly meanSilhouette: number;
  readonly tried: readonly Partition[];
  readonly tree: MergeTree | null;
  readonly cophenetic: number | null;
  readonly reference: ShuffledReference | Unavailable;
  readonly context: readonly ContextTally[];
  readonly agreement: Agreement | null;
  /** Dissimilarities of `records`, for the figures. */
  readonly matrix: Condensed;
  readonly notes: readonly string[];
}

/** At this silhouette width or below a record sits hardly better in its group than in the next. */
export const BORDERLINE = 0.05;

/** Fewest records among which groups can be looked for: two groups of two. */
const FEWEST = 4;

/**
 * Which fragments belong together, what does each group consist of, and how far is it to be trusted?
 *
 * Records are compared block by block; those that cannot be compared with all others are set aside with
 * the reason; the rest is grouped by the chosen method; groups are numbered by size and described by their
 * medoid, marks, sites and periods, shortest rule, silhouette, stability under resampling of items, and
 * against tables whose attributes were shuffled.
 *
 * @throws InputError when fewer than four records can be compared, or k exceeds what they allow.
 */
export function computeGrouping(input: AnalysisInput, options: GroupingOptions): GroupingFound {
  const { records, register, random } = input;
  const progress = (from: number, to: number, what: string) => (share: number) =>
    input.onProgress?.(from + share * (to - from), what);
  const comparison = compareRecords(records, register, comparisonSettings(options));
  const whole = dissimilarities(comparison.spec);
  const { kept, setAside } = knownRecords(whole);
  requireRecords(kept.length, options);
  const matrix = kept.length === whole.n ? whole : takeRecords(whole, kept);
  progress(0, 0.1, 'grouping')(1);

  const least = options.k === 'choose' ? 2 : options.k;
  const most = options.k === 'choose' ? Math.min(options.mostGroups, matrix.n - 1) : options.k;
  const { partitions: tried, tree } = partitionsOf(matrix, options.method, least, most);
  const best = bestPartition(tried);
  progress(0.1, 0.2, 'grouping')(1);

  const items = itemNumbers(records, kept);
  const stability =
    options.resamples === 0
      ? null
      : partitionStability(
          matrix,
          best,
          options.method,
          items,
          options.resamples,
          random.stream('stability'),
          progress(0.2, 0.5, 'resampling items'),
        );
  const reference =
    options.permutations === 0
      ? { why: 'not asked for' }
      : shuffledReference({
          spec: comparison.spec,
          items: itemNumbers(records, null),
          method: options.method,
          tried,
          tables: options.permutations,
          random: random.stream('shuffled tables'),
          onProgress: progress(0.5, 0.95, 'grouping shuffled tables'),
        });

  const attributes = comparison.attributes.map(({ attribute }) => attribute.id);
  const rules = separatingRules(records, attributes, kept, best.membership, best.k, register);
  const widths = silhouette(matrix, best.membership);
  const medoids = Array.from({ length: best.k }, (_, group) => medoidOf(matrix, best.membership, group));
  const grouped = Array.from(kept, (row, place): GroupedRecord => {
    const group = best.membership[place];
    return {
      row,
      id: records.id[row],
      item: records.item[row],
      source: records.sources[records.origin[row].source] ?? '',
      sourceRow: records.origin[row].row,
      group,
      silhouette: widths?.widths[place] ?? Number.NaN,
      neighbour: widths?.neighbour[place] ?? -1,
      toMedoid: dissimilarityAt(matrix, place, medoids[group]),
    };
  });
  const groups = medoids.map((medoid, group): Group => {
    const members = grouped.filter((record) => record.group === group);
    return {
      size: members.length,
      medoid,
      silhouette: widths?.groups[group] ?? Number.NaN,
      stability: stability?.[group] ?? { why: 'not asked for' },
      marks: marksOf(records, attributes, kept, best.membership, group, register),
      rule: rules[group],
      borderline: members.filter((record) => record.silhouette <= BORDERLINE).length,
    };
  });
  const compared = {
    options,
    unit: input.unit,
    k: best.k,
    records: grouped,
    groups,
    meanSilhouette: best.meanSilhouette ?? Number.NaN,
    tried,
    tree,
    cophenetic: tree === null ? null : copheneticCorrelation(matrix, tree),
    reference,
    context: contextTallies(records, kept, best.membership, best.k, attributes, register),
    agreement:
      options.compareWith === undefined
        ? null
        : agreementWith(records, kept, best.membership, best.k, options.compareWith, register),
    matrix,
    notes: comparison.notes,
  };
  progress(0.95, 1, 'describing groups')(1);
  return {
    ...compared,
    n: {
      ...countBehind(input.fragments, records, input.unit, kept),
      setAside: reasons(input, setAside),
    },
    tables: groupingTables(compared),
  };
}

function requireRecords(count: number, options: GroupingOptions): void {
  if (count < FEWEST) {
    throw new InputError(
      `only ${count} records can be compared with each other, and grouping needs ${FEWEST}`,
      {},
      'choose attributes that more records have, lower "minimumOverlap", or select more fragments',
    );
  }
  if (options.k !== 'choose' && options.k >= count) {
    throw new InputError(
      `${options.k} groups are asked for among ${count} records`,
      { path: 'k' },
      `ask for fewer than ${count}`,
    );
  }
}

/** Numbers 0, 1, … for the items of these rows, in order of appearance. */
function itemNumbers(records: FragmentTable, rows: Int32Array | null): Int32Array {
  const numbers = new Map<string, number>();
  const list = rows ?? Int32Array.from({ length: records.rows }, (_, row) => row);
  return list.map((row) => {
    const item = records.item[row];
    const known = numbers.get(item);
    if (known !== undefined) return known;
    numbers.set(item, numbers.size);
    return numbers.size - 1;
  });
}

/** The member with the least sum of dissimilarities to the other members; of equals the first. */
function medoidOf(matrix: Condensed, membership: Int32Array, group: number): number {
  const members = [...membership.keys()].filter((place) => membership[place] === group);
  let best = members[0];
  let least = Number.POSITIVE_INFINITY;
  for (const i of members) {
    let sum = 0;
    for (const j of members) sum += dissimilarityAt(matrix, i, j);
    if (sum < least) {
      least = sum;
      best = i;
    }
  }
  return best;
}

function reasons(input: AnalysisInput, setAside: readonly { readonly row: number }[]): readonly SetAside[] {
  if (setAside.length === 0) return [];
  const rows = setAside.map(({ row }) => row);
  return [
    {
      reason: 'too little recorded in common with other records to be compared with them',
      fragments: countBehind(input.fragments, input.records, input.unit, rows).fragments,
    },
  ];
}

import { countBehind } from '../../fragments/behind.ts';
import { compareRecords } from '../../fragments/comparison.ts';
import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import { fuzzyMembership } from '../../numerics/grouping/fuzzy-membership.ts';
import type { GroupStability } from '../../numerics/grouping/stability.ts';
import { copheneticCorrelation, type MergeTree } from '../../numerics/grouping/tree.ts';
import type { FindingsWithTables } from '../before-answers.ts';
import { comparisonSettings } from '../comparison-options.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { type Agreement, agreementWith } from './compare-with.ts';
import { requireNumbers } from './compared.ts';
import { type ContextTally, contextTallies } from './context.ts';
import { findCore } from './core.ts';
import { type Mark, marksOf } from './marks.ts';
import type { GroupingOptions } from './options.ts';
import type { Partition } from './partition.ts';
import { type Rule, separatingRules } from './rules.ts';
import { groupingTables } from './tables.ts';
import { renumber, type Trust, trustIn } from './trust.ts';

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
  /** NaN for a record in no group. */
  readonly silhouette: number;
  /** The nearest other group. */
  readonly neighbour: number;
  /** Dissimilarity to the medoid of its own group. */
  readonly toMedoid: number;
}

export interface Group {
  readonly size: number;
  /** Place in `records` of the member that stands best for the others. */
  readonly medoid: number;
  readonly silhouette: number;
  readonly stability: GroupStability | Unavailable;
  readonly marks: readonly Mark[];
  readonly rule: Rule;
  /** Members whose silhouette width is at most BORDERLINE. */
  readonly borderline: number;
}

export interface GroupingFound extends FindingsWithTables {
  readonly options: GroupingOptions;
  readonly unit: 'fragment' | 'item';
  readonly k: number;
  readonly records: readonly GroupedRecord[];
  readonly groups: readonly Group[];
  readonly meanSilhouette: number | null;
  readonly tried: readonly Partition[];
  readonly tree: MergeTree | null;
  readonly cophenetic: number | null;
  readonly trust: Trust;
  /** Share of each record in each group, records by groups; null for large tables and fewer than two groups. */
  readonly graded: Float64Array | null;
  readonly context: readonly ContextTally[];
  readonly agreement: Agreement | null;
  /** Dissimilarities among the records at the places `inMatrix`: all, or a sample of a large table. */
  readonly matrix: Condensed;
  readonly inMatrix: Int32Array;
  readonly sampled: boolean;
  readonly notes: readonly string[];
}

/** At this silhouette width or below a record sits hardly better in its group than in the next. */
export const BORDERLINE = 0.05;

/**
 * Which fragments belong together, what does each group consist of, and how far is it to be trusted?
 *
 * Records are compared block by block; those that cannot be compared with all others are set aside with
 * the reason; the rest is grouped by the chosen method; groups are numbered by size and described by their
 * medoid, marks, sites and periods, shortest rule, silhouette, stability under resampling of items, and
 * against tables without groups. Tables of more than 5,000 records are grouped by medoids of samples.
 *
 * @throws InputError when fewer than four records can be compared, k exceeds what they allow, or the method
 * does not fit the attributes or the size of the table.
 */
export function computeGrouping(input: AnalysisInput, options: GroupingOptions): GroupingFound {
  const { records, register, random } = input;
  const report = (share: number, what: string) => input.onProgress?.(share, what);
  const comparison = compareRecords(records, register, comparisonSettings(options));
  requireNumbers(comparison, options.method);
  report(0.02, 'comparing records');
  const core = findCore(comparison.spec, records.rows, options, random);
  report(0.2, 'judging groups');
  const trust = trustIn({
    compared: core.compared,
    spec: core.spec,
    items: renumber(Array.from(core.inMatrix, (place) => records.item[core.rows[place]])),
    assemblages: Array.from(core.inMatrix, (place) => records.assemblage[core.rows[place]]),
    chosen: core.chosen,
    tried: core.tried,
    options,
    random,
    onProgress: (share, what) => report(0.2 + 0.7 * share, what),
  });
  report(0.9, 'describing groups');
  const { rows, membership, k, matrix } = { ...core, matrix: core.compared.matrix };
  const grouped = Array.from(
    rows,
    (row, place): GroupedRecord => ({
      row,
      id: records.id[row],
      item: records.item[row],
      source: records.sources[records.origin[row].source] ?? '',
      sourceRow: records.origin[row].row,
      group: membership[place],
      silhouette: core.widths[place],
      neighbour: core.neighbour[place],
      toMedoid: core.toMedoid[place],
    }),
  );
  const attributes = comparison.attributes.map(({ attribute }) => attribute.id);
  const inMatrix = core.inMatrix.map((place) => rows[place]);
  const rules = separatingRules(records, attributes, inMatrix, core.chosen.membership, k, register);
  const groups = core.medoids.map((medoid, group): Group => {
    const members = grouped.filter((record) => record.group === group);
    const { stability } = trust;
    return {
      size: members.length,
      medoid,
      silhouette: members.reduce((sum, record) => sum + record.silhouette, 0) / members.length,
      stability: isUnavailable(stability)
        ? stability
        : (stability[group] ?? { why: 'the group has no member among the records resampled' }),
      marks: marksOf(records, attributes, rows, membership, group, register),
      rule: rules[group],
      borderline: members.filter((record) => record.silhouette <= BORDERLINE).length,
    };
  });
  const placed = grouped.filter((record) => record.group >= 0);
  const found = {
    options,
    unit: input.unit,
    k,
    records: grouped,
    groups,
    meanSilhouette: k < 2 ? null : placed.reduce((sum, record) => sum + record.silhouette, 0) / placed.length,
    tried: core.tried,
    tree: core.tree,
    cophenetic: core.tree === null ? null : copheneticCorrelation(matrix, core.tree),
    trust,
    graded: core.sampled || k < 2 ? null : fuzzyMembership(matrix, core.medoids, options.fuzziness),
    context: contextTallies(records, rows, membership, k, attributes, register),
    agreement:
      options.compareWith === undefined
        ? null
        : agreementWith(records, rows, membership, k, options.compareWith, register),
    matrix,
    inMatrix: core.inMatrix,
    sampled: core.sampled,
    notes: comparison.notes,
  };
  const behind = (list: Int32Array) => countBehind(input.fragments, records, input.unit, list);
  return {
    ...found,
    n: {
      ...behind(rows),
      setAside:
        core.setAside.length === 0
          ? []
          : [{ reason: reasonFor(options), fragments: behind(core.setAside).fragments }],
    },
    tables: groupingTables(found),
  };
}

function reasonFor({ method }: GroupingOptions): string {
  return method === 'kmeans'
    ? 'a number is missing, and k-means takes complete records only'
    : 'too little recorded in common with other records to be compared with them';
}

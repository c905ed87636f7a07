import { countBehind } from '../../fragments/behind.ts';
import { compareRecords } from '../../fragments/comparison/comparison.ts';
import { KIND } from '../../fragments/kinds/kinds.ts';
import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import { fuzzyMembership } from '../../numerics/grouping/fuzzy-membership.ts';
import { groupSizes } from '../../numerics/grouping/silhouette.ts';
import { copheneticCorrelation } from '../../numerics/grouping/tree.ts';
import { validity } from '../../numerics/grouping/validity.ts';
import type { AnalysisInput } from '../contract.ts';
import { conditionsBeside } from '../shared/guard/beside.ts';
import { comparisonSettings } from '../shared/options/comparison.ts';
import { broadTried } from './broad.ts';
import { agreementWith } from './compare-with.ts';
import { requireNumbers } from './compared.ts';
import { contextTallies } from './context.ts';
import { findCore } from './core.ts';
import {
  BORDERLINE,
  type FoundGroup,
  type GroupedRecord,
  type GroupingFound,
  type Partition,
  type Tried,
} from './found.ts';
import { marksOf } from './marks.ts';
import { namesOf, sidesOfKind } from './names.ts';
import type { GroupingOptions } from './options.ts';
import { restatedBy } from './restated.ts';
import { separatingRules } from './rules.ts';
import { trustIn } from './trust.ts';
import type { Variants } from './trust-found.ts';
import { renumber } from './trust-sample.ts';
import { againOf, structureOf, verdictOf } from './verdict.ts';

/** Nothing is typical of fewer records (common practice, no source). */
const FEWEST_OF_A_GROUP = 5;
/** A pair of one group should fall together in this share of other ways for the group to be called firm. */
const FIRM = 0.8;

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
  const { rows } = core;
  const { matrix } = core.compared;
  // Groups are numbered by size, so that those of one record are the last ones.
  const k = Array.from(groupSizes(core.membership)).filter((size) => size > 1).length;
  const membership = core.membership.map((group) => (group < k ? group : -1));
  const medoids = core.medoids.slice(0, k);
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
      borderline: membership[place] >= 0 && core.widths[place] <= BORDERLINE,
      neighbour: core.neighbour[place],
      toMedoid: core.toMedoid[place],
    }),
  );
  const attributes = comparison.attributes.map(({ attribute }) => attribute.id);
  const inMatrix = core.inMatrix.map((place) => rows[place]);
  const rules = separatingRules(records, attributes, inMatrix, core.chosen.membership, k, register);
  // A group of one structure is called by its kind, which says its openness and the like too.
  const told =
    attributes.includes('structure') && records.columns.has(KIND) ? [...attributes, KIND] : attributes;
  const marks = medoids.map((_, group) => marksOf(records, told, rows, membership, group, register));
  const names = namesOf(marks, sidesOfKind(register));
  const groups = medoids.map((medoid, group): FoundGroup => {
    const members = grouped.filter((record) => record.group === group);
    const stability = isUnavailable(trust.stability)
      ? trust.stability
      : (trust.stability[group] ?? { why: 'the group has no member among the records resampled' });
    const drawn = isUnavailable(stability) || stability.resamples === 0 ? null : stability.mean;
    return {
      size: members.length,
      name: names[group],
      small: members.length < FEWEST_OF_A_GROUP,
      medoid,
      silhouette: members.reduce((sum, record) => sum + record.silhouette, 0) / members.length,
      stability,
      again: againOf(drawn),
      firm: isUnavailable(trust.variants) ? null : isFirm(trust.variants, group),
      marks: marks[group],
      rule: rules[group],
      borderline: members.filter(({ borderline }) => borderline).length,
    };
  });
  const placed = grouped.filter((record) => record.group >= 0);
  const meanSilhouette =
    k < 2
      ? null
      : placed.reduce((sum, record) => sum + record.silhouette, 0) /
        (options.method === 'density' ? placed.length : grouped.length);
  const judged = Int32Array.from(trust.places, (place) => core.inMatrix[place]);
  const broad = broadTried({
    records,
    register,
    options,
    comparison,
    rows: judged.map((place) => rows[place]),
    membership: judged.map((place) => membership[place]),
    k,
    random: random.stream('broad terms'),
  });
  const restated = restatedBy(records, attributes, rows, membership, k, register, random.stream('restated'));
  const behind = (list: Int32Array) => countBehind(input.fragments, records, input.unit, list);
  return {
    options,
    unit: input.unit,
    verdict: verdictOf(meanSilhouette, trust, restated),
    restated,
    k,
    records: grouped,
    groups,
    meanSilhouette,
    structure: structureOf(meanSilhouette),
    tried: core.tried.map((partition) => measured(matrix, partition, partition === core.chosen)),
    tree: core.tree,
    cophenetic: core.tree === null ? null : copheneticCorrelation(matrix, core.tree),
    trust,
    broad,
    hangOnBroad: [...new Set(broad?.ways.flatMap(({ gone }) => gone) ?? [])].sort((a, b) => a - b),
    graded: core.sampled || k < 2 ? null : fuzzyMembership(matrix, medoids, options.fuzziness),
    beside: conditionsBeside({
      records,
      register,
      by: 'the groups',
      groups: groups.map((_, group) => placed.filter((one) => one.group === group).map(({ row }) => row)),
      about: attributes,
      across: null,
      which: ({ id, own }) => !own && id !== 'period',
      confidence: options.confidence,
      random: random.stream('conditions'),
    }),
    context: contextTallies(records, rows, membership, k, attributes, register),
    agreement:
      options.compareWith === undefined
        ? null
        : agreementWith(records, rows, membership, k, options.compareWith, register),
    matrix,
    inMatrix: core.inMatrix,
    sampled: core.sampled,
    notes: comparison.notes,
    n: {
      ...behind(rows),
      setAside:
        core.setAside.length === 0
          ? []
          : [{ reason: reasonFor(options), fragments: behind(core.setAside).fragments }],
    },
  };
}

function measured(matrix: Condensed, partition: Partition, chosen: boolean): Tried {
  const sizes = new Int32Array(partition.k);
  for (const group of partition.membership) if (group >= 0) sizes[group]++;
  return {
    ...partition,
    validity: validity(matrix, partition.membership),
    chosen,
    smallest: partition.k === 0 ? 0 : sizes.reduce((least, size) => Math.min(least, size)),
  };
}

function isFirm({ groups }: Variants, group: number): boolean {
  return (groups[group]?.[group] ?? 0) >= FIRM;
}

function reasonFor({ method }: GroupingOptions): string {
  return method === 'kmeans'
    ? 'a number is missing, and k-means takes complete records only'
    : 'too little recorded in common with other records to be compared with them';
}

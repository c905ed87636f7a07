import { pointOf } from '../../fragments/accessors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { groupRows } from '../../fragments/groups.ts';
import { KIND, restates } from '../../fragments/kinds/kinds.ts';
import { isMissing } from '../../fragments/missing.ts';
import { quantile } from '../../numerics/describing/quantile.ts';
import { adjustP } from '../../numerics/tests/adjust.ts';
import { pooledCorrelation } from '../../numerics/tests/rank-correlation-limits.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { withKindsBeside } from '../shared/kinds-beside.ts';
import { toldAt } from '../verdicts.ts';
import type {
  Derived,
  RecordPoint,
  Relation,
  RelationVerdict,
  SymbolGroup,
  ThreadcountFound,
  Within,
} from './found.ts';
import { contoursOf, drawnWithin, isRange } from './moved.ts';
import type { ThreadcountOptions } from './options.ts';
import { findToMark, type Gathered, gatherPoints, NOT_RECORDED, untoldSystems } from './points.ts';
import { itemPairs, ratioOf, relationOf, spearmanOf } from './relation.ts';

/** What follows from counts and diameters, shown beside them where it can be had. */
const FOLLOWS = ['balance', 'cover1', 'cover2', 'openness'];

/**
 * How do two measurements of one fabric go together: do they rise together, still so within one kind of fabric, and
 * which of the two is the greater?
 *
 * @throws InputError for a measurement that no source records or that is not a number.
 */
export function computeThreadcount(input: AnalysisInput, options: ThreadcountOptions): ThreadcountFound {
  const { records, unit, random } = input;
  const gathered = gatherPoints(input, options);
  const { x, y, points } = gathered;
  const { confidence } = options;
  const itemOf = (point: RecordPoint) => records.item[(point as Gathered['points'][number]).row];
  const pairs = itemPairs(points, itemOf);
  const sameUnit = (x.attribute.unit ?? '') === (y.attribute.unit ?? '');
  const all = relationOf(pairs, { confidence, random: random.stream('all') });
  const grouped = gathered.labels.map((_, group) => points.filter((point) => point.group === group));
  const relations = grouped.map((own, group) =>
    relationOf(itemPairs(own, itemOf), { confidence, random: random.stream(`group ${group}`) }),
  );
  const adjusted = adjustedOf(relations);
  const within = [options.by, ...options.within.filter((id) => id !== options.by)].flatMap((id) => [
    ...withinOf(input, id, points, itemOf, all, options),
    ...(id === KIND ? withinKindsBeside(input, points, itemOf, all, options) : []),
  ]);
  const rows = points.map(({ row }) => row);
  const positive = points.every((point) =>
    [point.x, point.y].every(({ low, point: at }) => at > 0 && low >= 0),
  );
  const logarithmic = options.scale === 'log' && positive;
  const behind = (list: readonly number[]) => countBehind(input.fragments, records, unit, list);
  return {
    options,
    unit,
    x: { id: options.x, label: x.attribute.label, unit: x.attribute.unit ?? '' },
    y: { id: options.y, label: y.attribute.label, unit: y.attribute.unit ?? '' },
    byLabel: labelOf(input, options.by),
    points: points.map(({ row: _, ...point }) => point),
    groups: gathered.labels.map(
      (label, group): SymbolGroup => ({
        label,
        mark: gathered.marks[group],
        items: relations[group].n,
        relation: relations[group],
        pAdjusted: adjusted[group],
        ratio: sameUnit ? ratioOf(itemPairs(grouped[group], itemOf), confidence) : null,
        derived: derivedOf(input, grouped[group]),
      }),
    ),
    all,
    within,
    verdict: verdictOf(
      all,
      within.filter(({ attribute }) => attribute === options.by),
    ),
    logarithmic,
    ratio: sameUnit ? ratioOf(pairs, confidence) : null,
    derived: derivedOf(input, points),
    ranges: points.filter((point) => isRange(point.x) || isRange(point.y)).length,
    openEnded: points.filter((point) => point.x.openEnded || point.y.openEnded).length,
    drawn: drawnWithin(input, points, itemOf, all, options),
    untold: untoldSystems(input, options, rows),
    contours: points.length < options.contoursFrom ? null : contoursOf(points, logarithmic),
    ...findToMark(input, options),
    n: {
      ...behind(rows),
      setAside: gathered.lacking.map((one) => ({
        reason: one.reason,
        fragments: behind(one.rows).fragments,
      })),
    },
  };
}

function labelOf({ register }: AnalysisInput, id: string): string {
  return register.attributes.get(id)?.label ?? (id === 'assemblage' ? 'Assemblage' : id);
}

function adjustedOf(relations: readonly Relation[]): (number | Unavailable)[] {
  const tested = relations.flatMap(({ p }) => (typeof p === 'number' ? [p] : []));
  const adjusted = adjustP(tested, 'holm');
  let next = 0;
  return relations.map(({ p }) => (typeof p === 'number' ? adjusted[next++] : p));
}

/** Nothing where the attribute is not recorded: it was asked for in case it is. */
function withinOf(
  input: AnalysisInput,
  id: string,
  points: Gathered['points'],
  itemOf: (point: RecordPoint) => string,
  all: Relation,
  { by, confidence }: ThreadcountOptions,
): Within[] {
  if (id !== by && id !== 'assemblage' && !input.records.columns.has(id)) return [];
  const labels = new Map(
    groupRows(input.records, [id], input.register).groups.flatMap((group) =>
      group.rows.map((row) => [row, group.labels[0]] as const),
    ),
  );
  const met = new Set(points.map(({ row }) => labels.get(row)));
  const kinds = [...new Set(labels.values())].filter((label) => label !== NOT_RECORDED && met.has(label));
  // Among those of one kind alone is among all where there is no other.
  if (kinds.length < 2 && id !== by) return [];
  const parts =
    kinds.length < 2
      ? []
      : kinds.flatMap((label) => {
          const pairs = itemPairs(
            points.filter(({ row }) => labels.get(row) === label),
            itemOf,
          );
          const found = spearmanOf(pairs);
          return 'why' in found ? [] : [{ rho: found.statistic, n: pairs.length }];
        });
  const pooled: Within['pooled'] =
    kinds.length < 2 ? { why: 'all are of one kind' } : pooledCorrelation(parts, confidence);
  const told = toldAt('why' in pooled ? pooled : pooled.p, confidence);
  const turned = typeof all.rho === 'number' && !('why' in pooled) && all.rho * pooled.rho < 0;
  return [
    {
      attribute: id,
      label: labelOf(input, id),
      pooled,
      told,
      overturns:
        all.told === 'told apart' && told !== 'cannot be told' && (told === 'not told apart' || turned),
    },
  ];
}

/** Within kinds with and without the face that both counts tell: what only one of them shows is not shown. */
function verdictOf(all: Relation, groups: readonly Within[]): RelationVerdict {
  const [within] = groups;
  if (typeof all.rho !== 'number') return 'cannot be told';
  const directions = new Set(groups.map(directionOf));
  const [inside = null] = directions.size === 1 ? directions : [];
  const outside =
    all.told === 'told apart' ? (all.rho > 0 ? 'rise together' : 'run against each other') : null;
  if (outside === null) return inside === null ? 'not told apart' : `${inside} within groups`;
  if (inside === outside) return outside;
  if (inside !== null) return `${inside} within groups`;
  return within?.overturns === true ? `${outside} across groups` : outside;
}

function directionOf({ told, pooled }: Within): 'rise together' | 'run against each other' | null {
  if (told !== 'told apart' || 'why' in pooled) return null;
  return pooled.rho > 0 ? 'rise together' : 'run against each other';
}

/**
 * The kinds again without the facets that follow from both measurements together: face is told by the ratio of the
 * counts, and within one ratio both rise together for that alone. Nothing where no such facet is recorded or derived.
 */
function withinKindsBeside(
  input: AnalysisInput,
  points: Gathered['points'],
  itemOf: (point: RecordPoint) => string,
  all: Relation,
  options: ThreadcountOptions,
): Within[] {
  const compared = [options.x, options.y];
  const beside = withKindsBeside(input, [KIND], compared, 'all');
  if (beside === input) return [];
  const left = [...input.records.columns.values()]
    .filter(({ attribute }) => attribute.facet !== undefined && restates(attribute.id, compared, 'all'))
    .map(({ attribute }) => attribute.label.toLowerCase());
  return withinOf(beside, KIND, points, itemOf, all, options).map((one) => ({
    ...one,
    label: `${one.label} without ${left.join(' and ')}`,
    // The verdict rests on both ways already.
    overturns: false,
  }));
}

function derivedOf({ records }: AnalysisInput, points: Gathered['points']): Derived[] {
  return FOLLOWS.flatMap((id) => {
    const column = records.columns.get(id);
    if (column?.kind !== 'numeric') return [];
    const values = points.flatMap(({ row }) => (isMissing(column, row) ? [] : [pointOf(column, row)]));
    const { label, unit = '' } = column.attribute;
    const [q1, median, q3] = [0.25, 0.5, 0.75].map((share) => quantile(values, share));
    return [{ label, unit, n: values.length, median, q1, q3 }];
  });
}

import type { ResultTable, TableCell } from '../contract.ts';
import { inSentence, printLevel } from '../phrasing.ts';
import type { Derived, Ratio, Relation, ThreadcountFound } from './found.ts';

export function threadcountTables(found: ThreadcountFound): Readonly<Record<string, ResultTable>> {
  return {
    relation: relationTable(found),
    within: withinTable(found),
    ...(found.derived.length === 0 ? {} : { derived: derivedTable(found) }),
    points: pointsTable(found),
  };
}

const ALL = 'all';

function relationTable(found: ThreadcountFound): ResultTable {
  const { x, y, byLabel, groups, all, ratio, options } = found;
  const line = (label: string, one: Relation, pAdjusted: TableCell, own: Ratio | null): TableCell[] => [
    label,
    one.n,
    one.rho,
    ...ends(one.limits),
    one.p,
    pAdjusted,
    one.method,
    ...(own === null ? [] : [own.median, ...ends(own.limits), ...ends(own.bounds)]),
  ];
  return {
    title: `${x.label} and ${inSentence(y.label)}`,
    columns: [
      { id: 'group', label: byLabel },
      { id: 'n', label: 'n' },
      { id: 'statistic', label: 'rank correlation (Spearman)' },
      { id: 'low', label: 'lower limit' },
      { id: 'high', label: 'upper limit' },
      { id: 'p', label: 'p' },
      { id: 'pAdjusted', label: 'p adjusted (Holm)' },
      { id: 'method', label: 'method' },
      ...(ratio === null
        ? []
        : [
            { id: 'median', label: 'median ratio' },
            { id: 'medianLow', label: 'lower limit of the ratio' },
            { id: 'medianHigh', label: 'upper limit of the ratio' },
            { id: 'rangeLow', label: 'least that ranges allow' },
            { id: 'rangeHigh', label: 'most that ranges allow' },
          ]),
    ],
    rows: [
      line(ALL, all, null, ratio),
      ...groups.map((group) => line(group.label, group.relation, group.pAdjusted, group.ratio)),
    ],
    briefly: ['group', 'n', 'statistic', 'low', 'high', 'p', ...(ratio === null ? [] : ['median'])],
    note:
      `Positive: both rise together. One pair of values an item; limits at ${printLevel(options.confidence)} by Fisher’s z with the variance of Bonett and Wright. ` +
      `${ratio === null ? 'The two have different units, so that their ratio says nothing.' : `The ratio is ${inSentence(x.label)} divided by ${inSentence(y.label)}.`}`,
  };
}

function withinTable({ within, options }: ThreadcountFound): ResultTable {
  return {
    title: 'The same within groups',
    columns: [
      { id: 'within', label: 'within groups of' },
      { id: 'groups', label: 'groups' },
      { id: 'n', label: 'n' },
      { id: 'statistic', label: 'rank correlation within' },
      { id: 'low', label: 'lower limit' },
      { id: 'high', label: 'upper limit' },
      { id: 'p', label: 'p' },
      { id: 'told', label: 'verdict' },
    ],
    rows: within.map(({ label, pooled, told }) =>
      'why' in pooled
        ? [label, pooled, pooled, pooled, pooled, pooled, pooled, told]
        : [label, pooled.groups, pooled.n, pooled.rho, pooled.low, pooled.high, pooled.p, told],
    ),
    note: `Each group ranked by itself, then pooled by Fisher’s z; groups of fewer than 5 take no part. Limits at ${printLevel(options.confidence)}.`,
  };
}

function derivedTable({ derived, groups, byLabel }: ThreadcountFound): ResultTable {
  const lines = (label: string, list: readonly Derived[]): TableCell[][] =>
    list
      .filter(({ n }) => n > 0)
      .map((one) => [label, one.label, one.unit, one.n, one.median, one.q1, one.q3]);
  return {
    title: 'Balance, cover and openness',
    columns: [
      { id: 'group', label: byLabel },
      { id: 'attribute', label: 'measure' },
      { id: 'unit', label: 'unit' },
      { id: 'n', label: 'n' },
      { id: 'median', label: 'median' },
      { id: 'q1', label: 'lower quartile' },
      { id: 'q3', label: 'upper quartile' },
    ],
    rows: [...lines(ALL, derived), ...groups.flatMap((group) => lines(group.label, group.derived))],
    note: 'They follow from counts and diameters. Of straight opaque elements: flattened ones cover more.',
  };
}

function pointsTable({ points, groups, x, y, byLabel, unit }: ThreadcountFound): ResultTable {
  const open = (end: number): TableCell => (Number.isFinite(end) ? end : { why: 'open-ended' });
  const units = (own: string) => (own === '' ? {} : { unit: own });
  return {
    title: `The ${unit}s drawn`,
    columns: [
      { id: 'id', label: unit },
      { id: 'group', label: byLabel },
      { id: 'x', label: x.label, ...units(x.unit) },
      { id: 'xLow', label: 'from', ...units(x.unit) },
      { id: 'xHigh', label: 'to', ...units(x.unit) },
      { id: 'y', label: y.label, ...units(y.unit) },
      { id: 'yLow', label: 'from', ...units(y.unit) },
      { id: 'yHigh', label: 'to', ...units(y.unit) },
    ],
    rows: points.map((point) => [
      point.id,
      groups[point.group].label,
      ...[point.x, point.y].flatMap((end) => [end.point, open(end.low), open(end.high)]),
    ]),
  };
}

function ends(
  limits: { readonly low: number; readonly high: number } | { readonly why: string },
): [TableCell, TableCell] {
  return 'why' in limits ? [limits, limits] : [limits.low, limits.high];
}

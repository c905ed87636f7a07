import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FindingsWithTables } from '../before-answers.ts';
import type { AnalysisInput, ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { type Axes, type AxesOrWhy, PASSIVE_RECORD, type Place } from './axes.ts';
import { componentsOf, kindsOf, mixtureOf } from './by-attributes.ts';
import { countsOf } from './by-counts.ts';
import { coordinatesOf } from './by-dissimilarity.ts';
import { type Centre, centresOf } from './centres.ts';
import type { Method, OrdinationOptions } from './options.ts';
import { type Supplementary, supplementaryOf, supplementaryTable } from './supplementary.ts';
import { NO_SAY, type Split, splitRecords } from './supplementary-records.ts';

export interface OrdinationFound extends FindingsWithTables {
  readonly options: OrdinationOptions;
  readonly unit: 'fragment' | 'item';
  readonly axes: AxesOrWhy;
  readonly centres: readonly Centre[];
  /** Attributes laid over the axes. */
  readonly supplementary: readonly Supplementary[];
  /** Label of the attribute that symbols show; empty where none does. */
  readonly by: string;
  /** Label of each record, "" where it has none; in the order of `axes.records`. */
  readonly labels: readonly string[];
  /** The same in the order of `axes.passive`. */
  readonly passiveLabels: readonly string[];
}

const METHOD: Readonly<
  Record<Method, (input: AnalysisInput, options: OrdinationOptions, split: Split) => AxesOrWhy>
> = {
  pcoa: coordinatesOf,
  pca: componentsOf,
  mca: kindsOf,
  mixed: mixtureOf,
  ca: countsOf,
};

/**
 * How do the records spread out, and what spreads them? Records, or rows and columns of a table of counts,
 * as points on a few axes, with what each contributes and how well it is shown.
 *
 * @throws InputError for attributes that the method cannot take, or labels that are not there.
 */
export function computeOrdination(input: AnalysisInput, options: OrdinationOptions): OrdinationFound {
  input.onProgress?.(0, 'spreading the records out');
  const split = splitRecords(input, options);
  const axes = METHOD[options.method](input, options, split);
  const { records, unit } = input;
  const base = { options, unit, axes };
  const behind = (rows: readonly number[]) => countBehind(input.fragments, records, unit, rows);
  if ('why' in axes) {
    return {
      ...base,
      centres: [],
      supplementary: [],
      by: '',
      labels: [],
      passiveLabels: [],
      n: { fragments: 0, items: 0, setAside: [] },
      tables: {},
    };
  }
  if (axes.records[0]?.at.length === 0)
    throw new InputError('the ordination has no axis', {}, 'add attributes');
  const centres = centresOf(input, axes, options);
  const supplementary = supplementaryOf(input, axes, options);
  const by = byLabel(input, options, axes);
  const setAside = [...split.undecided, ...axes.setAside, { reason: NO_SAY, rows: axes.passiveRows }].filter(
    ({ rows }) => rows.length > 0,
  );
  const aside = new Set(setAside.flatMap(({ rows }) => rows));
  const used = Array.from({ length: records.rows }, (_, row) => row).filter((row) => !aside.has(row));
  return {
    ...base,
    centres,
    supplementary,
    ...by,
    n: {
      ...behind(used),
      setAside: setAside.map(({ reason, rows }) => ({ reason, fragments: behind(rows).fragments })),
    },
    tables: {
      ...tablesOf(input, axes, centres, by),
      ...(supplementary.length === 0
        ? {}
        : { supplementary: supplementaryTable(supplementary, axes.eigenvalues.length) }),
    },
  };
}

function byLabel(input: AnalysisInput, options: OrdinationOptions, axes: Axes) {
  if (options.by === undefined || axes.rows.length === 0) return { by: '', labels: [], passiveLabels: [] };
  const labelOf = new Map<number, string>();
  for (const { labels, rows } of groupRows(input.records, [options.by], input.register).groups) {
    for (const row of rows) labelOf.set(row, labels[0]);
  }
  return {
    by: input.register.attributes.get(options.by)?.label ?? options.by,
    labels: axes.rows.map((row) => labelOf.get(row) ?? ''),
    passiveLabels: axes.passiveRows.map((row) => labelOf.get(row) ?? ''),
  };
}

function tablesOf(
  input: AnalysisInput,
  axes: Axes,
  centres: readonly Centre[],
  by: Pick<OrdinationFound, 'by' | 'labels' | 'passiveLabels'>,
): Readonly<Record<string, ResultTable>> {
  const count = axes.eigenvalues.length;
  const axisColumns = axes.shares.map((share, k) => ({
    id: `axis${k + 1}`,
    label: `axis ${k + 1} (${(share * 100).toFixed(1)} %)`,
  }));
  const detail = (name: string, label: string): ResultColumn[] =>
    Array.from({ length: count }, (_, k) => ({ id: `${name}${k + 1}`, label: `${label} axis ${k + 1}` }));
  const cells = (values: readonly number[], why: string): TableCell[] =>
    Array.from({ length: count }, (_, k) => (Number.isFinite(values[k]) ? values[k] : { why }));
  const full = (place: Place): TableCell[] => [
    ...cells(place.at, 'an attribute as a whole has no place here'),
    ...cells(place.contributions, 'it has no say'),
    ...cells(place.cos2, 'not computed for it'),
  ];
  const details = [...axisColumns, ...detail('contribution', 'share of'), ...detail('cos2', 'shown by')];
  const hasBy = by.by !== '';
  const labels = [...by.labels, ...by.passiveLabels];
  const hasPassive = axes.passive.length > 0;
  const tables: Record<string, ResultTable> = {
    coordinates: {
      title: axes.rows.length > 0 ? 'Positions' : 'Rows',
      columns: [
        { id: 'id', label: axes.rows.length > 0 ? input.unit : 'row' },
        { id: 'role', label: 'role' },
        ...(hasBy ? [{ id: 'label', label: by.by }] : []),
        ...details,
      ],
      rows: [...axes.records, ...axes.passive].map((place, i) => [
        place.label,
        place.role,
        ...(hasBy ? [labels[i]] : []),
        ...full(place),
      ]),
      note: 'Directions of axes are arbitrary; here the entry of greatest size on each is positive.',
    },
    variables: variablesTable(axes, details, full, detail, cells),
    axes: {
      title: 'Axes',
      columns: [
        { id: 'axis', label: 'axis' },
        { id: 'eigenvalue', label: 'eigenvalue' },
        { id: 'share', label: 'share' },
        { id: 'cumulative', label: 'cumulative' },
      ],
      rows: axes.eigenvalues.map((value, k) => [
        k + 1,
        value,
        axes.shares[k],
        axes.shares.slice(0, k + 1).reduce((sum, share) => sum + share, 0),
      ]),
    },
    centres: {
      title: `Centres by ${by.by.toLowerCase()}`,
      columns: [
        { id: 'label', label: by.by },
        ...(hasPassive ? [{ id: 'role', label: 'role' }] : []),
        { id: 'n', label: 'n' },
        ...axisColumns,
      ],
      rows: centres.map(({ label, passive, members, at }) => [
        label,
        ...(hasPassive ? [passive ? `${PASSIVE_RECORD}s` : 'records'] : []),
        members.length,
        ...at,
      ]),
      note: 'Means of the records; they had no say in the axes.',
    },
  };
  return Object.fromEntries(Object.entries(tables).filter(([, table]) => table.rows.length > 0));
}

/** Attributes or columns with their places; where they have none, what each has in common with the axes. */
function variablesTable(
  axes: Axes,
  details: readonly ResultColumn[],
  full: (place: Place) => TableCell[],
  detail: (name: string, label: string) => ResultColumn[],
  cells: (values: readonly number[], why: string) => TableCell[],
): ResultTable {
  const placed = axes.variables.some(({ at }) => at.length > 0);
  const head = [
    { id: 'label', label: 'label' },
    { id: 'role', label: 'role' },
  ];
  return {
    title: axes.rows.length > 0 ? 'Attributes' : 'Columns',
    columns: [...head, ...(placed ? details : detail('common', 'in common with'))],
    rows: axes.variables.map((place) => [
      place.label,
      place.role,
      ...(placed ? full(place) : cells(place.cos2, 'too few values, or all the same')),
    ]),
    ...(placed ? {} : { note: 'Squared correlation (numbers) or correlation ratio (kinds) with each axis.' }),
  };
}

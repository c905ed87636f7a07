import type { ResultColumn, ResultTable, TableCell, Unavailable } from '../contract.ts';
import { levelNote } from '../shared/level/said.ts';
import { type Axes, type OrdinationFound, PASSIVE_RECORD, type PlacedPoint } from './found.ts';
import { supplementaryTable } from './supplementary-table.ts';

/** Positions, what makes the axes, the axes themselves, centres and what lies over them. */
export function ordinationTables(found: OrdinationFound): Readonly<Record<string, ResultTable>> {
  const { axes, centres, supplementary, unit, level } = found;
  if ('why' in axes) return {};
  const count = axes.eigenvalues.length;
  const axisColumns = axes.shares.map((_, k) => ({
    id: `axis${k + 1}`,
    label: axisName(axes, k),
  }));
  const detail = (name: string, label: string): ResultColumn[] =>
    Array.from({ length: count }, (_, k) => ({ id: `${name}${k + 1}`, label: `${label} axis ${k + 1}` }));
  const cells = (values: readonly number[], why: string): TableCell[] =>
    Array.from({ length: count }, (_, k) => (Number.isFinite(values[k]) ? values[k] : { why }));
  const full = (place: PlacedPoint): TableCell[] => [
    ...cells(place.at, 'an attribute as a whole has no place here'),
    ...cells(place.contributions, 'it has no say'),
    ...cells(place.cos2, 'not computed for it'),
  ];
  const details = [...axisColumns, ...detail('contribution', 'share of'), ...detail('cos2', 'shown by')];
  const hasBy = found.by !== '';
  const labels = [...found.labels, ...found.passiveLabels];
  const hasPassive = axes.passive.length > 0;
  const tables: Record<string, ResultTable> = {
    coordinates: {
      title: axes.rows.length > 0 ? 'Positions' : 'Rows',
      columns: [
        { id: 'id', label: axes.rows.length > 0 ? unit : 'row' },
        { id: 'role', label: 'role' },
        ...(hasBy ? [{ id: 'label', label: found.by }] : []),
        ...details,
      ],
      rows: [...axes.records, ...axes.passive].map((place, i) => [
        place.label,
        place.role,
        ...(hasBy ? [labels[i]] : []),
        ...full(place),
      ]),
      note: `Directions of axes are arbitrary; here the entry of greatest size on each is positive.${level === null ? '' : levelNote(level, unit)}`,
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
      rows: axes.eigenvalues.map((value, k) => [k + 1, value, axes.shares[k], cumulative(axes.shares, k)]),
    },
    centres: {
      title: `Centres by ${found.by.toLowerCase()}`,
      columns: [
        { id: 'label', label: found.by },
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
  const categories = axes.variables.some(({ role }) => role === 'category');
  if (categories) tables.attributes = attributesTable(axes, detail, cells);
  if (supplementary.length > 0) tables.supplementary = supplementaryTable(supplementary, count);
  return Object.fromEntries(Object.entries(tables).filter(([, table]) => table.rows.length > 0));
}

/** "axis 1 (48.2 %)"; the number alone where the axis has no share. */
export function axisName({ shares, sharesAtMost }: Axes, k: number): string {
  const share = shares[k];
  if (typeof share !== 'number') return `axis ${k + 1}`;
  return `axis ${k + 1} (${sharesAtMost === true ? 'at most ' : ''}${(share * 100).toFixed(1)} %)`;
}

function cumulative(shares: Axes['shares'], last: number): number | Unavailable {
  let sum = 0;
  for (const share of shares.slice(0, last + 1)) {
    if (typeof share !== 'number') return share;
    sum += share;
  }
  return sum;
}

/** Attributes as wholes, where `variables` are their categories. */
function attributesTable(
  axes: Axes,
  detail: (name: string, label: string) => ResultColumn[],
  cells: (values: readonly number[], why: string) => TableCell[],
): ResultTable {
  return {
    title: 'Attributes as wholes',
    columns: [{ id: 'label', label: 'label' }, ...detail('common', 'in common with')],
    rows: axes.attributes.map(({ label, shares }) => [
      label,
      ...cells(shares, 'too few values, or all the same'),
    ]),
    note: 'Squared correlation (numbers) or correlation ratio (kinds) with each axis.',
  };
}

/** Attributes or columns with their places; where they have none, what each has in common with the axes. */
function variablesTable(
  axes: Axes,
  details: readonly ResultColumn[],
  full: (place: PlacedPoint) => TableCell[],
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

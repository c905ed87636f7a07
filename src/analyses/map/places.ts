import { midpoint } from '../../fragments/accessors.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { NumericColumn } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { sineAndCosine } from '../../numerics/foundation/angles.ts';
import type { AnalysisInput } from '../contract.ts';
import { markPlaces } from '../shared/figure/marks.ts';
import type { MapFound, MapPlace } from './found.ts';
import type { MapOptions } from './options.ts';

/** Where the places lie, how closely that is known, and to which group they belong. */

type Located = Pick<MapPlace, 'at' | 'within'>;

export function locate(
  { records, register }: AnalysisInput,
  table: CrossedTable,
  options: MapOptions,
): { readonly located: readonly Located[]; readonly coordinates: MapFound['coordinates'] } {
  const geographic = options.places === undefined;
  const [acrossId, upId] = options.places ?? ['longitude', 'latitude'];
  const across = records.columns.get(acrossId);
  const up = records.columns.get(upId);
  const nowhere = table.rows.map((): Located => ({ at: null, within: 0 }));
  if (across?.kind !== 'numeric' || up?.kind !== 'numeric') {
    const [x, y] = [acrossId, upId].map((id) => register.attributes.get(id)?.label ?? id);
    return {
      located: nowhere,
      coordinates: { why: `no source records ${x.toLowerCase()} and ${y.toLowerCase()} as numbers` },
    };
  }
  const rowsOf = table.rows.map((_, place) =>
    table.entries.filter((entry) => entry.row === place).map(({ record }) => record),
  );
  const located = rowsOf.map((rows): Located => {
    const [x, y] = [middle(across, rows), middle(up, rows)];
    if (x === null || y === null) return { at: null, within: 0 };
    return { at: [x, y], within: Math.max(halfWidth(across, rows), halfWidth(up, rows)) };
  });
  const heights = located.flatMap(({ at }) => (at === null ? [] : [at[1]]));
  const unit = across.attribute.unit ?? '';
  const [, cosine] = sineAndCosine(((heights.length === 0 ? 0 : median(heights)) * Math.PI) / 180);
  return {
    located,
    coordinates:
      heights.length === 0
        ? { why: 'no place has coordinates' }
        : {
            geographic,
            x: across.attribute.label,
            y: up.attribute.label,
            unit,
            kilometres: geographic ? DEGREE * cosine : unit === 'km' ? 1 : unit === 'm' ? 0.001 : null,
            stretch: geographic ? 1 / cosine : 1,
          },
  };
}

/** Kilometres of a degree of a great circle of the mean Earth (radius 6371.0088 km, IUGG). */
const DEGREE = 111.195;

function middle(column: NumericColumn, rows: readonly number[]): number | null {
  const values = rows.map((row) => midpoint(column, row)).filter((value) => !Number.isNaN(value));
  return values.length === 0 ? null : median(values);
}

function median(values: readonly number[]): number {
  return quantileSorted(sortedValues(values), 0.5);
}

function halfWidth(column: NumericColumn, rows: readonly number[]): number {
  const widths = rows.map((row) => (column.high[row] - column.low[row]) / 2).filter(Number.isFinite);
  return widths.length === 0 ? 0 : median(widths);
}

/** The one group of each place, and its symbol; null where none is recorded or its records name several. */
export function groupsOf(
  input: AnalysisInput,
  table: CrossedTable,
  { group }: MapOptions,
): { readonly label: string; readonly of: readonly Pick<MapPlace, 'group' | 'mark'>[] } | null {
  const { records, register } = input;
  if (group !== 'assemblage' && !records.columns.has(group)) return null;
  const named = new Map(
    groupRows(records, [group], register).groups.flatMap(({ labels, rows }) =>
      rows.map((row) => [row, labels[0]] as const),
    ),
  );
  if (named.size === 0) return null;
  const places = markPlaces(input.fragments, group, register, input.marks);
  return {
    label: register.attributes.get(group)?.label ?? group,
    of: table.rows.map((_, row) => {
      const labels = new Set(
        table.entries.flatMap((entry) => (entry.row === row ? [named.get(entry.record) ?? ''] : [])),
      );
      labels.delete('');
      const [only] = labels;
      return labels.size === 1
        ? { group: only, mark: places.get(only) ?? null }
        : { group: null, mark: null };
    }),
  };
}

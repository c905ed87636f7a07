import type { Register } from '../attributes/definition.ts';
import { quantileSorted, sortedValues } from '../numerics/describing/quantile.ts';
import type { Condensed } from '../numerics/dissimilarity/condensed.ts';
import { chordDistance } from '../numerics/dissimilarity/great-circle.ts';
import { greatest, least } from '../numerics/foundation/lists.ts';
import type { Unavailable } from '../numerics/foundation/unavailable.ts';
import { midpoint } from './accessors.ts';
import type { CrossedTable } from './crossed-table.ts';
import type { FragmentTable, NumericColumn } from './table.ts';

/** Span of years of an assemblage: hull of those of its records, with the median of their middles. */
export interface AssemblageSpan {
  readonly from: number;
  readonly to: number;
  readonly middle: number;
}

export interface Coordinates {
  readonly first: number;
  readonly second: number;
}

export interface WhereWhen {
  readonly spans: readonly (AssemblageSpan | null)[];
  readonly places: readonly (Coordinates | null)[];
  /** How the distance in space is measured, or why it is not known. */
  readonly measure:
    | { readonly said: string; readonly geographic: boolean; readonly unit: string }
    | Unavailable;
}

/**
 * When and where each assemblage was, from the dates and coordinates of its records.
 *
 * @param named attributes that say where (east, north); latitude and longitude where not named.
 */
export function whereAndWhen(
  records: FragmentTable,
  table: CrossedTable,
  named: readonly [string, string] | undefined,
  register: Register,
): WhereWhen {
  const rowsOf = table.rows.map((_, place) =>
    table.entries.filter((entry) => entry.row === place).map(({ record }) => record),
  );
  const dates = numeric(records, 'date');
  const [firstId, secondId] = named ?? ['latitude', 'longitude'];
  const first = numeric(records, firstId);
  const second = numeric(records, secondId);
  const geographic = named === undefined;
  const absent = [first === null ? firstId : null, second === null ? secondId : null]
    .filter((id) => id !== null)
    .map((id) => (register.attributes.get(id)?.label ?? id).toLowerCase());
  return {
    spans: rowsOf.map((rows) => (dates === null ? null : spanOf(dates, rows))),
    places: rowsOf.map((rows) => {
      if (first === null || second === null) return null;
      const [a, b] = [medianOf(first, rows), medianOf(second, rows)];
      return a === null || b === null ? null : { first: a, second: b };
    }),
    measure:
      first === null || second === null
        ? {
            why: geographic
              ? 'no source records latitude and longitude, and no "places" are named'
              : `no source records ${absent.join(' and ')} as numbers`,
          }
        : {
            said: geographic
              ? 'straight distance between latitudes and longitudes'
              : `${first.attribute.label} and ${second.attribute.label}`,
            geographic,
            unit: geographic ? 'km' : (first.attribute.unit ?? ''),
          },
  };
}

function numeric(records: FragmentTable, id: string): NumericColumn | null {
  const column = records.columns.get(id);
  return column?.kind === 'numeric' ? column : null;
}

function spanOf(dates: NumericColumn, rows: readonly number[]): AssemblageSpan | null {
  const dated = rows.filter((row) => Number.isFinite(dates.low[row]) && Number.isFinite(dates.high[row]));
  const middle = medianOf(dates, dated);
  if (middle === null) return null;
  return {
    from: least(dated.map((row) => dates.low[row])),
    to: greatest(dated.map((row) => dates.high[row])),
    middle,
  };
}

function medianOf(column: NumericColumn, rows: readonly number[]): number | null {
  const middles = sortedValues(rows.map((row) => midpoint(column, row)));
  return middles.length === 0 ? null : quantileSorted(middles, 0.5);
}

/** Distances in time between the middles of the spans, for the assemblages chosen. */
export function timeDistances(spans: readonly AssemblageSpan[]): Condensed {
  return condensed(spans, (a, b) => Math.abs(a.middle - b.middle));
}

/** Distances in space; geographic ones straight through the sphere, others in the plane. */
export function spaceDistances(places: readonly Coordinates[], geographic: boolean): Condensed {
  return condensed(places, (a, b) => {
    if (geographic) return chordDistance([a.first, a.second], [b.first, b.second]);
    const [x, y] = [a.first - b.first, a.second - b.second];
    return Math.sqrt(x * x + y * y);
  });
}

function condensed<Point>(points: readonly Point[], distance: (a: Point, b: Point) => number): Condensed {
  const values: number[] = [];
  points.forEach((a, i) => {
    for (const b of points.slice(i + 1)) values.push(distance(a, b));
  });
  return { n: points.length, values: Float64Array.from(values) };
}

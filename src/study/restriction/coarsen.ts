import { CELL_STATES } from '../../cells/reading.ts';
import { termAt } from '../../fragments/accessors.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { Column, FragmentTable, NumericColumn } from '../../fragments/table.ts';
import type { LedgerEntry } from '../../sources/source-reading.ts';
import { masked, maskInName, numbersOf, withoutCoordinates } from './coordinates-in-text.ts';

/**
 * Coordinates as cells of a grid, before any number is handed on, so that the place itself comes out at no door: of rows
 * that are marked as unguarded, and of all where the study asks for it. Names stay; those that are withheld are
 * the matter of restrict.ts.
 */

export interface CoarseGrid {
  readonly degrees: number;
  readonly kilometres: number;
}

/** "to 10 km", "0.5 degree"; 10 km where nothing is said. */
export function gridIn(raw: string): CoarseGrid {
  const found = /(\d+(?:[.,]\d+)?) ?(km|°|deg\p{L}*|grad\p{L}*|degr\p{L}*)/iu.exec(raw);
  if (found === null) return { degrees: 0.1, kilometres: 10 };
  const size = Number(found[1].replace(',', '.'));
  return found[2].toLowerCase() === 'km'
    ? gridOfKilometres(size)
    : { degrees: size, kilometres: Math.ceil(size * 111) };
}

/** A degree of latitude is taken as 111 km. */
function gridOfKilometres(kilometres: number): CoarseGrid {
  return { degrees: Math.ceil((10 * kilometres) / 111) / 10, kilometres };
}

const DEGREES =
  /(?:^|[^a-z])(?:latitude|longitude|lat|lon|long|breitengrad|längengrad|latitudine|longitudine|latitud|longitud|breddegrad|længdegrad|lengdegrad)$/i;
const KILOMETRES =
  /(?:east|north|easting|northing|coordinates?|rechtswert|hochwert|ostwert|nordwert|koordinat|coordonn|coordinat|coordenad|abscisse|ordonnée|utm)/i;

/** How wide a cell of this column is on the grid, in its own unit; null where it holds no coordinate. */
export function cellOf(id: string, { attribute }: Column, grid: CoarseGrid): number | null {
  if (DEGREES.test(id) || DEGREES.test(attribute.label)) return grid.degrees;
  if (!KILOMETRES.test(`${id} ${attribute.label}`)) return null;
  return attribute.unit === 'm' ? grid.kilometres * 1000 : grid.kilometres;
}

/**
 * @param everywhere kilometres of the grid that all places are coarsened to; only those marked unguarded where not given.
 */
export function coarsenPlaces<
  Given extends { readonly table: FragmentTable; readonly ledger: readonly LedgerEntry[] },
>(given: Given, everywhere?: number): Given {
  const { table } = given;
  const grids = new Map<number, CoarseGrid>();
  const restriction = table.columns.get('restriction');
  for (let row = 0; row < table.rows; row++) {
    const raw = restriction?.raw[row] ?? '';
    const unguarded =
      restriction?.kind === 'term' &&
      !isMissing(restriction, row) &&
      termAt(restriction, row) === 'unguarded';
    if (unguarded) grids.set(row, widest(gridIn(raw), everywhere));
    else if (everywhere !== undefined) grids.set(row, gridOfKilometres(everywhere));
  }
  if (grids.size === 0) return given;
  const exact = new Set<string>();
  const columns = new Map<string, Column>();
  for (const [id, column] of table.columns) {
    if (column.kind !== 'numeric' || cellOf(id, column, gridOfKilometres(1)) === null) {
      columns.set(id, column.kind === 'numeric' ? column : withoutCoordinates(column, grids));
      continue;
    }
    for (const row of grids.keys()) exact.add(column.raw[row].trim());
    columns.set(
      id,
      coarsened(
        { ...column, raw: column.raw.map((text, row) => (grids.has(row) ? '' : text)) },
        grids,
        (row) => cellOf(id, column, grids.get(row) ?? gridOfKilometres(1)) ?? 0,
      ),
    );
  }
  exact.delete('');
  const open = openLines(table, grids);
  const numbers = numbersOf(table.columns, grids);
  return {
    ...given,
    table: {
      ...table,
      columns,
      assemblage: table.assemblage.map((name, row) => (grids.has(row) ? maskInName(name) : name)),
    },
    ledger: given.ledger.map((entry) => withoutPlace(open(entry) ? entry : masked(entry, numbers), exact)),
  };
}

/** Whether a line of a source may say its place: a row that is not coarsened, or any line of a source without such a row. */
function openLines(table: FragmentTable, rows: ReadonlyMap<number, unknown>) {
  const coarse = new Set([...rows.keys()].map((row) => table.sources[table.origin[row].source]));
  const lines = new Set(
    table.origin.flatMap(({ source, row: line }, row) =>
      rows.has(row) ? [] : [`${table.sources[source]} ${line}`],
    ),
  );
  // A line that was set aside is no row: nobody knows whether it is guarded.
  return ({ source, row }: LedgerEntry) => !coarse.has(source) || lines.has(`${source} ${row}`);
}

function widest(own: CoarseGrid, everywhere: number | undefined): CoarseGrid {
  return everywhere === undefined || everywhere <= own.kilometres ? own : gridOfKilometres(everywhere);
}

/** Texts too short to be told from other numbers are taken for a coordinate only where they are the whole cell. */
const TELLING = 5;

function withoutPlace(entry: LedgerEntry, exact: ReadonlySet<string>): LedgerEntry {
  const said = `${entry.raw} ${entry.readAs} ${entry.why}`;
  const says =
    exact.has(entry.raw.trim()) || [...exact].some((text) => text.length >= TELLING && said.includes(text));
  return says ? { ...entry, raw: '', readAs: '', why: 'A place that is shown only coarsened.' } : entry;
}

const APPROXIMATE = CELL_STATES.indexOf('approximate');

/** Readings of these rows as the cell of the grid that they lie in. */
export function coarsened(
  column: NumericColumn,
  rows: Pick<ReadonlyMap<number, unknown>, 'keys'>,
  size: (row: number) => number,
): NumericColumn {
  const low = column.low.slice();
  const high = column.high.slice();
  const state = column.state.slice();
  const centre = column.centre?.slice();
  for (const row of rows.keys()) {
    if (Number.isNaN(low[row])) continue;
    const step = size(row);
    const from = Math.floor(low[row] / step);
    const to = Math.floor(high[row] / step) + 1;
    low[row] = from * step;
    high[row] = to * step;
    state[row] = APPROXIMATE;
    if (centre !== undefined) centre[row] = Number.NaN;
  }
  return {
    ...column,
    low,
    high,
    state,
    ...(centre === undefined ? {} : { centre }),
    readings: new Map(),
    step: column.step.map((own, row) => (state[row] === APPROXIMATE ? Number.NaN : own)),
  };
}

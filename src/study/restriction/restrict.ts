import { defaultRegister } from '../../attributes/register.ts';
import { CELL_STATES } from '../../cells/reading.ts';
import { termAt } from '../../fragments/accessors.ts';
import { isMissing } from '../../fragments/missing.ts';
import { takeRows } from '../../fragments/subset.ts';
import type { Column, FragmentTable, NumericColumn } from '../../fragments/table.ts';
import type { CombinedSources } from '../../sources/combine/combine.ts';
import type { LedgerEntry } from '../../sources/source-reading.ts';
import { type CoarseGrid, cellOf, coarsened, gridIn } from './coarsen.ts';
import { withUsedLevels } from './used-levels.ts';

/**
 * What the sources withhold (CARE principles; Gupta et al. 2023, Adv. Archaeol. Practice 11:76-89), made good
 * in one place, before any name or number is handed on: what is not in the table can come out at no door.
 *
 * - `withheld`: the row is taken out and counted;
 * - `placeWithheld`: the row stays under a number of its own; site, phase, context, every text, every kind of the study's
 *   own and the way back to the line of the file go; coordinates become a cell of a grid, as coarse as the source says;
 * - `unguarded`: names stay, and coarsen.ts takes the coordinates;
 * - words that are not understood withhold the row: what should not be shown cannot be taken back.
 *
 * Names that only such rows have are taken out of the ledger too. Open places and finds keep theirs.
 */
export interface Restricted
  extends Pick<CombinedSources, 'table' | 'ledger' | 'duplicates' | 'faults' | 'unmatched'> {
  readonly withheld: number;
  readonly placeWithheld: number;
}

export type Restriction = Pick<Restricted, 'withheld' | 'placeWithheld'>;

/** What is withheld, as every count of what was set aside gives it. */
export function withheldAside(
  withheld: number,
): readonly { readonly reason: string; readonly fragments: number }[] {
  return withheld === 0 ? [] : [{ reason: 'withheld by the source', fragments: withheld }];
}

type Said = 'open' | 'placeWithheld' | 'withheld';

export function applyRestrictions(
  combined: Pick<CombinedSources, 'table' | 'duplicates' | 'faults' | 'unmatched'>,
  ledger: readonly LedgerEntry[],
): Restricted {
  const { table } = combined;
  const column = table.columns.get('restriction');
  const of = table.id.map((_, row) => restrictionAt(column, row));
  const withheld = of.filter((one) => one === 'withheld').length;
  const placeWithheld = of.filter((one) => one === 'placeWithheld').length;
  if (withheld + placeWithheld === 0) return { ...combined, ledger, withheld, placeWithheld };
  const kept = of.flatMap((one, row) => (one === 'withheld' ? [] : [row]));
  const masked = new Set(kept.flatMap((row, place) => (of[row] === 'placeWithheld' ? [place] : [])));
  const grids = kept.map((row) => gridIn(column?.raw[row] ?? ''));
  const secrets = secretNames(table, (row) => of[row] !== 'open');
  const hidden = new Set(
    of.flatMap((one, row) => (one === 'open' ? [] : [`${sourceOf(table, row)} ${table.origin[row].row}`])),
  );
  const says = (text: string) => secrets.some((name) => text.includes(name));
  const place = new Map(kept.map((row, at) => [row, at]));
  return {
    table: maskRows(takeRows(table, kept), masked, grids),
    ledger: ledger.map((entry) =>
      hidden.has(`${entry.source} ${entry.row}`) || says(`${entry.raw} ${entry.readAs} ${entry.why}`)
        ? { ...entry, raw: '', readAs: '', why: 'Withheld by the source.' }
        : entry,
    ),
    duplicates: combined.duplicates.flatMap((pair) => {
      const rows = pair.rows.map((row) => place.get(row)) as [number | undefined, number | undefined];
      const [a, b] = rows;
      if (a === undefined || b === undefined || masked.has(a) || masked.has(b)) return [];
      return [{ ...pair, rows: [a, b] as const }];
    }),
    faults: combined.faults.filter(({ what, mend }) => !says(`${what} ${mend}`)),
    unmatched: combined.unmatched.filter(({ key }) => !says(key.join(' '))),
    withheld,
    placeWithheld,
  };
}

const COARSE =
  /coars|vergr(?:ö|o)ber|arrond|arrotond|redond|\bto (?:the )?region|place|location|findspot|fundort|ortsangabe|lieu|localis|luogo|localiz|lugar|findested|funnsted/iu;

function restrictionAt(column: Column | undefined, row: number): Said {
  if (column === undefined || column.kind === 'numeric') return 'open';
  const raw = column.raw[row]?.trim() ?? '';
  if (column.kind === 'term' && !isMissing(column, row)) {
    const term = termAt(column, row);
    if (term === 'unguarded') return 'open';
    if (term === 'open' || term === 'placeWithheld' || term === 'withheld') return term;
  }
  if (/^[-–—.\s]*$/u.test(raw) || (column.kind === 'term' && column.state[row] === ABSENT)) return 'open';
  return COARSE.test(raw) ? 'placeWithheld' : 'withheld';
}

/** What still says the place, or may: taken away from a row whose place is withheld. The region stays. */
const PLACES = new Set(['site', 'phase', 'context', 'recorder', 'repository']);

function maskRows(
  table: FragmentTable,
  masked: ReadonlySet<number>,
  grids: readonly CoarseGrid[],
): FragmentTable {
  const numbers = new Map([...masked].map((row, at) => [row, at + 1]));
  const items = new Map<string, number>();
  for (const row of masked) if (!items.has(table.item[row])) items.set(table.item[row], items.size + 1);
  const columns = new Map<string, Column>();
  for (const [id, column] of table.columns) columns.set(id, maskColumn(id, column, masked, grids));
  return {
    ...table,
    id: table.id.map((name, row) => (masked.has(row) ? `withheld ${numbers.get(row)}` : name)),
    item: table.item.map((name, row) => (masked.has(row) ? `withheld item ${items.get(name)}` : name)),
    assemblage: table.assemblage.map((name, row) => (masked.has(row) ? '' : name)),
    origin: table.origin.map((origin, row) => (masked.has(row) ? { ...origin, row: 0 } : origin)),
    columns,
  };
}

function maskColumn(
  id: string,
  column: Column,
  masked: ReadonlySet<number>,
  grids: readonly CoarseGrid[],
): Column {
  const raw = column.raw.map((text, row) => (masked.has(row) ? '' : text));
  const own = !defaultRegister().attributes.has(id);
  if (column.kind === 'numeric') {
    if (cellOf(id, column, gridIn('')) !== null)
      return coarsened({ ...column, raw }, masked, (row) => cellOf(id, column, grids[row]) ?? 0);
    return own && column.attribute.scale === 'interval'
      ? withoutValues({ ...column, raw }, masked)
      : { ...column, raw };
  }
  const hides =
    column.kind === 'text' ||
    PLACES.has(id) ||
    // A kind of the study's own may be a place under another head; only those of a vocabulary are not.
    (own && column.attribute.vocabulary === undefined && column.attribute.scale === 'nominal') ||
    (id !== 'period' &&
      id !== 'region' &&
      column.attribute.block === 'context' &&
      column.attribute.vocabulary === undefined);
  const state = column.state.map((code, row) => (hides && masked.has(row) ? NOT_OBSERVED : code));
  if (column.kind === 'text') return { ...column, raw, state };
  const codes = column.codes.map((code, row) => (hides && masked.has(row) ? -1 : code));
  return withUsedLevels({ ...column, raw, state, codes });
}

/** A scale of the study's own that has no nought may be a coordinate under any head. */
function withoutValues(column: NumericColumn, rows: ReadonlySet<number>): NumericColumn {
  const none = (value: number, row: number) => (rows.has(row) ? Number.NaN : value);
  const { centre, readings } = column;
  return {
    ...column,
    low: column.low.map(none),
    high: column.high.map(none),
    step: column.step.map(none),
    ...(centre === undefined ? {} : { centre: centre.map(none) }),
    state: column.state.map((code, row) => (rows.has(row) ? NOT_OBSERVED : code)),
    readings: new Map([...readings].filter(([row]) => !rows.has(row))),
  };
}

const ABSENT = CELL_STATES.indexOf('absent');
const NOT_OBSERVED = CELL_STATES.indexOf('not-observed');
/** Names of rows, items, sites and assemblages that no open row has, in any spelling of their cells. */
function secretNames(table: FragmentTable, hidden: (row: number) => boolean): readonly string[] {
  const named = ['site', 'context', 'fragment', 'item', 'catalogueNumber'].map((id) => table.columns.get(id));
  const namesOf = (row: number) => [
    table.id[row],
    table.item[row],
    table.assemblage[row],
    ...named.flatMap((column) =>
      column === undefined || column.kind === 'numeric'
        ? []
        : [column.raw[row].trim(), column.kind === 'term' ? (termAt(column, row) ?? '') : ''],
    ),
  ];
  const open = new Set<string>();
  const secret = new Set<string>();
  for (let row = 0; row < table.rows; row++) {
    for (const name of namesOf(row)) (hidden(row) ? secret : open).add(name);
  }
  return [...secret].filter((name) => name.length > 2 && !open.has(name));
}

function sourceOf(table: FragmentTable, row: number): string {
  return table.sources[table.origin[row].source] ?? '';
}

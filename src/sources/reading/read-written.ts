import type { Register } from '../../attributes/definition.ts';
import { InputError } from '../../errors.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { IDENTITY_FIELDS, PART_PATTERN } from '../formats/normalised-table.ts';
import { restoreText } from '../formats/safe-csv.ts';
import { enter, openLedger } from '../ledger/ledger.ts';
import type { SourceProfile } from '../profile/profile.ts';
import type { ColumnReading, Dialect, SourceReading } from '../source-reading.ts';
import { TEXT_COLUMN_PREFIX } from './assemble.ts';
import { normalisedTable } from './read-normalised.ts';
import { saysNothing } from './says-nothing.ts';

/**
 * A normalised table as a source: rows, readings, states, certainty and texts are those that were written; nothing
 * is matched, parted or read anew. What the register does not define is kept and flagged.
 * @param restore as of `normalisedTable`.
 * @throws InputError where a cell is not as it was written, or the profile says how a column is to be read.
 */
export function readWritten(
  grid: readonly (readonly string[])[],
  dialect: Omit<Dialect, 'decimal'>,
  profile: SourceProfile,
  name: string,
  register: Register,
  lines: number,
  restore?: (text: string) => string,
): SourceReading {
  refuseRules(profile, name);
  const read = normalisedTable(grid, name, register, restore);
  const tells = typeof profile.normalised === 'object' ? profile.normalised.tells : {};
  const told = read.sources.map((source) => tells[source] ?? []);
  const table = told.some((ids) => ids.length > 0) ? { ...read, tells: told } : read;
  const ledger = openLedger(name);
  for (const [id, { kind }] of table.columns) {
    if (kind === 'text' || register.attributes.has(id)) continue;
    enter(ledger, {
      row: 0,
      column: id,
      raw: '',
      readAs: id,
      level: 'flagged',
      rule: 'not-defined',
      why: `"${id}" is no attribute here: it is kept, and can be asked about once a study defines it; the one written beside this table does.`,
    });
  }
  return {
    name,
    role: 'fragments',
    dialect: { ...dialect, decimal: '.' },
    grid,
    transposed: false,
    headerRow: 1,
    columns: (grid[0] ?? []).map((field, index) => columnOf(field, index, grid, table)),
    ledger: ledger.entries,
    faults: [],
    lines,
    rowsRead: table.rows,
    rowsKept: table.rows,
    rowsSetAside: [],
    repeatedIds: [],
    profile: { ...profile, ...dialect, decimal: '.', normalised: { tells } },
    table,
  };
}

function columnOf(
  field: string,
  index: number,
  grid: readonly (readonly string[])[],
  table: FragmentTable,
): ColumnReading {
  const header = restoreText(field);
  const id = PART_PATTERN.exec(header)?.[1] ?? header;
  const filled = grid.reduce((n, row, at) => (at === 0 || saysNothing(row[index] ?? '') ? n : n + 1), 0);
  const unit = table.columns.get(id)?.attribute.unit;
  const common = { index, decimal: '.', filled, via: 'as it was written' } as const;
  if ((IDENTITY_FIELDS as readonly string[]).includes(header))
    return { ...common, header, status: 'matched', attributes: [] };
  if (header.startsWith(TEXT_COLUMN_PREFIX) && id === header)
    return { ...common, header: header.slice(TEXT_COLUMN_PREFIX.length), status: 'unknown', attributes: [] };
  return {
    ...common,
    header,
    status: 'matched',
    attributes: [id],
    ...(unit === undefined ? {} : { unit }),
  };
}

/** Rules for a table whose readings are settled would be passed over in silence; they are refused. */
function refuseRules(profile: SourceProfile, file: string): void {
  const said = [
    ['columns', profile.columns.length > 0],
    ['constants', Object.keys(profile.constants).length > 0],
    ['missing', Object.keys(profile.missing).length > 0],
    ['terms', Object.keys(profile.terms).length > 0],
    ['layout', Object.keys(profile.layout).length > 0],
    ['role', profile.role !== 'fragments'],
  ].find(([, given]) => given);
  if (said === undefined) return;
  throw new InputError(
    `this table was written normalised and is taken as it stands, and the profile says "${said[0]}" of it`,
    { file },
    'leave that out of the profile, or say "normalised": false to read it like any other table',
  );
}

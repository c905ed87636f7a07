import type { Register } from '../attributes/definition.ts';
import { columnEvidence } from './columns/column-evidence.ts';
import { withCountColumns } from './columns/count-rules.ts';
import { planColumns } from './columns/plan-columns.ts';
import { decodeBytes } from './formats/decode.ts';
import { decideDecimal, decimalEvidence, decimalHabit, detectDelimiter } from './formats/dialect.ts';
import { parseCsv } from './formats/parse-csv.ts';
import type { MergedCells } from './formats/workbook.ts';
import { layOut } from './layout/layout.ts';
import { type Ledger, openLedger, sortLedger } from './ledger/ledger.ts';
import { enterCrossChecks, fieldsCounted } from './ledger/ledger-checks.ts';
import { ledgerLayout } from './ledger/ledger-layout.ts';
import { ledgerDropped, oddQuote, remarkOnFile, withoutDropped } from './ledger/ledger-rows.ts';
import type { NameDecision } from './names/name-decision.ts';
import { applyNames } from './names/names.ts';
import { withIds } from './profile/by-label.ts';
import { checkTranslations } from './profile/check-terms.ts';
import { type ProfileInput, type SourceProfile, sourceProfile } from './profile/profile.ts';
import { writtenProfile } from './profile/written-profile.ts';
import { lowerByMethod } from './quality/fibre-certainty.ts';
import { assembleTable, TEXT_COLUMN_PREFIX } from './reading/assemble.ts';
import { applyGather, type Sheet } from './reading/gather-fragments.ts';
import { applyNoteUnit } from './reading/note-units.ts';
import { addOrientation } from './reading/orientation.ts';
import { readColumns } from './reading/read-columns.ts';
import { isNormalised } from './reading/read-normalised.ts';
import { readWritten } from './reading/read-written.ts';
import type { DecimalMark, Dialect, SourceReading } from './source-reading.ts';

export interface ReadOptions {
  /** File name, for messages and the ledger. */
  readonly name: string;
  readonly register: Register;
  readonly profile?: ProfileInput;
  /** Take near matches of headers; without it they are only suggested. */
  readonly acceptSuggestions?: boolean;
  /** What the study says of names that have several spellings. */
  readonly names?: readonly NameDecision[];
  /** Cells of a sheet that are merged downwards. */
  readonly merged?: readonly MergedCells[];
}

/**
 * Reads one table, whatever its layout: decoded, parted, its header found, its columns matched, its cells
 * read. Nothing is lost: every row is kept or set aside with a reason, and every text stands in the table
 * or in the ledger. What the profile leaves open is detected and written into the profile given back.
 * @throws InputError where there is no table to read: empty, binary, an unclosed quotation mark, one
 * endless line; and where the profile names an attribute that does not exist.
 */
export function readSource(bytes: Uint8Array, options: ReadOptions): SourceReading {
  const profile = sourceProfile.parse(options.profile ?? {});
  const decoded = decodeBytes(bytes, options.name, profile.encoding);
  const declared = /^sep=([,;|\t])\r?\n/i.exec(decoded.text);
  const delimiter =
    profile.delimiter ?? (declared?.[1] as Dialect['delimiter'] | undefined) ?? detectDelimiter(decoded.text);
  const parsed = parseCsv(decoded.text, options.name, delimiter, profile.quotes);
  if (profile.normalised !== false && delimiter === ',' && isNormalised(parsed.grid)) {
    const found = { delimiter, encoding: decoded.encoding };
    return readWritten(parsed.grid, found, profile, options.name, options.register, parsed.lines);
  }
  const ledger = openLedger(options.name);
  for (const why of [...decoded.remarks, ...parsed.remarks]) remarkOnFile(ledger, why);
  for (const row of parsed.oddQuotes) oddQuote(ledger, row, parsed.grid[row - 1] ?? []);
  const encoding = decoded.encoding;
  return readGrid(parsed.grid, { delimiter, encoding }, profile, ledger, options, {
    lines: parsed.lines,
    parted: delimiter,
  });
}

/**
 * The same for a grid of texts that is no CSV, such as a sheet of a workbook or a Parquet file.
 * @throws InputError where the profile names an attribute that does not exist.
 */
export function readTexts(grid: readonly (readonly string[])[], options: ReadOptions): SourceReading {
  const profile = sourceProfile.parse(options.profile ?? {});
  const found = { delimiter: ',', encoding: 'utf-8' } as const;
  if (profile.normalised !== false && isNormalised(grid))
    return readWritten(grid, found, profile, options.name, options.register, grid.length, (text) => text);
  return readGrid(grid, found, profile, openLedger(options.name), options);
}

function readGrid(
  grid: readonly (readonly string[])[],
  found: Omit<Dialect, 'decimal'>,
  said: SourceProfile,
  ledger: Ledger,
  options: ReadOptions,
  written: { readonly lines: number; readonly parted: string | null } = { lines: grid.length, parted: null },
): SourceReading {
  const { name, register } = options;
  const given = withIds(said, register);
  checkTranslations(given, register, name);
  const laidOut = layOut(grid, name, given.layout, register, written.parted);
  const profile = withCountColumns(given, laidOut.headers, register);
  ledgerLayout(laidOut, ledger);
  const { plans: named, faults: columnFaults } = planColumns({
    headers: laidOut.headers,
    alternatives: laidOut.alternatives,
    evidence: laidOut.headers.map((_, i) => columnEvidence(laidOut.body, i)),
    profile,
    register,
    file: name,
    acceptSuggestions: options.acceptSuggestions === true,
  });
  const plans = applyNoteUnit(named, laidOut, register, ledger);
  const sheet: Sheet = {
    ...applyGather(laidOut, plans, profile.layout.gather === true, ledger),
    ...(options.merged === undefined || laidOut.transposed ? {} : { merged: mergedRows(options.merged) }),
  };
  const evidence = laidOut.headers.map((_, i) => decimalEvidence(sample(sheet.body, i)));
  const habit = profile.decimal ?? decimalHabit(evidence, found.delimiter);
  const decimals = plans.map(
    (plan): DecimalMark =>
      plan.rule.decimal ?? profile.decimal ?? decideDecimal(evidence[plan.index]!, habit),
  );
  const read = readColumns(sheet, plans, decimals, profile, register, ledger);
  const columnsRead = new Map(read.table);
  addOrientation(columnsRead, plans, register, ledger);
  lowerByMethod(columnsRead, register);
  applyNames(columnsRead, options.names ?? [], sheet.origins, ledger);
  const names = read.table.get(`${TEXT_COLUMN_PREFIX}${sheet.headers[0]}`);
  const assembled = assembleTable(columnsRead, sheet.origins, name, ledger, names, {
    ...(profile.repeatedIds === undefined ? {} : { repeatedIds: profile.repeatedIds }),
    ...(profile.itemNumbers === undefined ? {} : { itemNumbers: profile.itemNumbers }),
    decided: options.names ?? [],
  });
  enterCrossChecks(assembled.table, fieldsCounted(read.columns), register, ledger);
  const dropped = ledgerDropped(assembled.dropped, sheet, ledger);
  const dialect: Dialect = { ...found, decimal: habit };
  return {
    name,
    role: profile.role,
    dialect,
    grid: laidOut.grid,
    transposed: laidOut.transposed,
    headerRow: laidOut.headerRow,
    columns: withoutDropped(read.columns, assembled.dropped, sheet),
    ledger: sortLedger(ledger.entries),
    faults: [...settledFaults(laidOut, profile), ...columnFaults],
    lines: written.lines,
    rowsRead: laidOut.rowsRead,
    rowsKept: laidOut.rowsKept - dropped.length,
    rowsSetAside:
      dropped.length === 0
        ? laidOut.setAside
        : [...laidOut.setAside, ...dropped].sort((a, b) => a.row - b.row),
    repeatedIds: assembled.repeated,
    ...(laidOut.tooLong === undefined ? {} : { tooLong: laidOut.tooLong }),
    profile: writtenProfile(profile, dialect, laidOut.layout, plans, decimals),
    table: { ...assembled.table, ...(profile.tells === undefined ? {} : { tells: [profile.tells] }) },
  };
}

function mergedRows(merged: readonly MergedCells[]): ReadonlyMap<number, ReadonlySet<number>> {
  const rows = new Map<number, Set<number>>();
  for (const { row, column, rows: count } of merged) {
    const below = rows.get(column) ?? new Set<number>();
    for (let at = row + 1; at < row + count; at++) below.add(at + 1);
    rows.set(column, below);
  }
  return rows;
}

/** Two columns with one header are no fault once the profile tells them apart. */
function settledFaults(laidOut: ReturnType<typeof layOut>, profile: SourceProfile): SourceReading['faults'] {
  const named = new Set(
    profile.columns.flatMap(({ header, undecided }) => (undecided === undefined ? header : [])),
  );
  const settled = new Set(
    laidOut.duplicates
      .filter(({ columns }) => columns.slice(1).every((i) => named.has(laidOut.headers[i]!)))
      .map(({ header }) => header),
  );
  return laidOut.faults.filter(
    ({ where, what }) => !(what.includes('both headed') && settled.has(where.column ?? '')),
  );
}

const SAMPLED = 2000;

/** Texts from all over a column, enough to see its habit. */
function* sample(body: readonly (readonly string[])[], column: number): Iterable<string> {
  const step = Math.max(1, Math.floor(body.length / SAMPLED));
  for (let row = 0; row < body.length; row += step) {
    const text = body[row]![column];
    if (text !== undefined && text !== '') yield text;
  }
}

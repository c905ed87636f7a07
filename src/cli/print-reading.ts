import { printCount } from '../analyses/phrasing.ts';
import { looksLikeCounts } from '../sources/columns/looks-like-counts.ts';
import type { ColumnReading, LedgerEntry, SourceReading } from '../sources/source-reading.ts';
import type { Terminal } from './terminal.ts';
import { clipped, tame, textTable, wrap } from './text-table.ts';

const DELIMITER_NAMES: Readonly<Record<string, string>> = {
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'bar',
};

/** Tables that are no text have neither encoding nor delimiter. */
const PACKED = /\.(?:xlsx|parquet)(?:, sheet .*)?$/i;

const MOST_FAULTS = 5;
const MOST_LISTED = 12;
/** Some tables have hundreds of characters, and each line of them may be wanted. */
const MOST_UNKNOWN = 300;

/** How one source was read, as a person reads it. */
export function printReading(terminal: Terminal, reading: SourceReading): void {
  const { colour, width } = terminal;
  const { encoding, delimiter, decimal } = reading.dialect;
  const aside = reading.rowsSetAside.length;
  terminal.out(`${colour.bold(tame(reading.name))}\n`);
  terminal.out(
    `${printCount(reading.rowsRead, 'row')} read${ofLines(reading)}: ${reading.rowsKept} kept, ${aside} set aside. ` +
      `${PACKED.test(reading.name) ? 'Cells as the file keeps them' : `Encoding ${encoding}, cells divided by ${DELIMITER_NAMES[delimiter]}, decimal mark "${decimal}"`}, ` +
      `${reading.headerRow === 0 ? 'no header' : `header in row ${reading.headerRow}`}` +
      `${reading.transposed ? ', one row an attribute' : ''}.\n\n`,
  );
  const shown = columnsShown(reading.columns);
  terminal.out(
    textTable(
      [
        { head: 'column', align: 'left' },
        { head: 'read as', align: 'left' },
        { head: 'unit', align: 'left' },
        { head: 'filled', align: 'right' },
        { head: 'how', align: 'left' },
      ],
      shown.map((column) => [
        clipped(column.header),
        readAs(column),
        column.unit ?? (column.assumedUnit === undefined ? '' : `${column.assumedUnit}, assumed`),
        String(column.filled),
        how(column),
      ]),
      width,
    ),
  );
  const unshown = reading.columns.length - shown.length;
  if (unshown > 0) terminal.out(`and ${unshown} more that were not understood; --json has them all.\n`);
  for (const [reason, rows] of byReason(reading)) {
    terminal.out(`\n${wrap(`Set aside, ${reason}: ${printRows(rows)}.`, width).join('\n')}\n`);
  }
  const joined = reading.ledger.filter(({ rule }) => rule === 'overflow-joined');
  if (joined.length > 0)
    terminal.out(
      `\n${wrap(tame(`Joined to "${joined[0].column}", what stood beyond the last column: ${printRows(joined.map(({ row }) => row))}.`), width).join('\n')}\n`,
    );
  printLedger(terminal, reading.ledger);
  if (reading.faults.length > 0) {
    terminal.out(`\n${colour.underline('To put right or decide in the profile')}\n`);
    for (const { what, where, mend } of reading.faults.slice(0, MOST_FAULTS)) {
      const place = where.row === undefined ? '' : `row ${where.row}: `;
      terminal.out(`${colour.yellow(wrap(tame(`${place}${what}; ${mend}.`), width).join('\n'))}\n`);
    }
    const rest = reading.faults.length - MOST_FAULTS;
    if (rest > 0) terminal.out(`and ${rest} more of the kind.\n`);
  }
  printSuggestions(terminal, reading.columns);
  printCounts(terminal, reading);
}

/** How a table that seems to count kinds is read as one. */
function printCounts({ out, width }: Terminal, reading: SourceReading): void {
  const found = looksLikeCounts(reading);
  if (found === null) return;
  const { columns, shares } = found;
  const shown = columns.slice(0, 3).map((header) => `"${header}"`);
  const base = shares?.base ?? 'HEADER';
  const how =
    shares === null
      ? 'look like counts of kinds, place by place: --counts reads them so.'
      : `look like shares of kinds, place by place: --counts --base "${base}" reads them so${shares.base === null ? ', where a column holds the number of objects' : ''}.`;
  out(`\n${wrap(tame(`${columns.length} columns (${shown.join(', ')} …) ${how}`), width).join('\n')}\n`);
}

/** All that is understood or asked about, and as many of the others as anybody looks through. */
function columnsShown(columns: readonly ColumnReading[]): readonly ColumnReading[] {
  let others = 0;
  return columns.filter(
    ({ status }) => (status !== 'unknown' && status !== 'empty') || ++others <= MOST_UNKNOWN,
  );
}

/** How many columns wait for a confirmation, and which of them "take all" would take. */
function printSuggestions({ out, width }: Terminal, columns: readonly ColumnReading[]): void {
  const suggested = columns.filter((column) => column.status === 'suggested');
  if (suggested.length === 0) return;
  const sure = suggested.filter((column) => column.suggestion?.sure === true);
  const open = suggested.filter((column) => column.suggestion?.sure !== true);
  const listed = open.slice(0, MOST_LISTED).map(({ header }) => `"${header}"`);
  const more = open.length > MOST_LISTED ? ` and ${open.length - MOST_LISTED} more` : '';
  const parts = [
    `${printCount(suggested.length, 'column')} only suggested.`,
    ...(sure.length > 0 ? [`${sure.length} beyond doubt: taken with --accept-suggestions.`] : []),
    ...(open.length > 0
      ? [
          `To decide one by one, in a profile (--save-profile writes one to edit): ${listed.join(', ')}${more}.`,
        ]
      : []),
  ];
  out(`\n${wrap(tame(parts.join(' ')), width).join('\n')}\n`);
}

/** Lines of the file against its records, where they differ by more than the header. */
function ofLines({ lines, grid, transposed }: SourceReading): string {
  const inside = transposed ? 0 : lines - grid.length;
  return inside === 0 ? '' : ` from ${printCount(lines, 'line')}, ${inside} of them line breaks inside cells`;
}

function readAs(column: ColumnReading): string {
  if (column.status === 'matched') return column.attributes.join(' + ');
  if (column.status === 'suggested') return `perhaps ${column.suggestion?.attribute ?? ''}`;
  if (column.status === 'unknown') return 'not understood';
  return column.status;
}

function how(column: ColumnReading): string {
  const parts = [
    ...(column.status === 'suggested' ? spoken(column) : [column.via]),
    column.doubt,
    column.status === 'unknown' ? 'kept as text' : undefined,
  ];
  return parts.filter((part) => part !== undefined).join('; ');
}

/** The reason of a suggestion, and what the cells say for and against it. */
function spoken({ suggestion }: ColumnReading): (string | undefined)[] {
  if (suggestion === undefined) return [];
  const { reason, speaksFor, speaksAgainst } = suggestion;
  const others = speaksFor.filter((text) => text !== reason);
  return [
    reason,
    ...(others.length > 0 ? [`for it: ${others.join(', ')}`] : []),
    ...(speaksAgainst.length > 0 ? [`against it: ${speaksAgainst.join(', ')}`] : []),
  ];
}

function byReason(reading: SourceReading): Map<string, number[]> {
  const reasons = new Map<string, number[]>();
  for (const { row, reason } of reading.rowsSetAside) {
    const rows = reasons.get(reason);
    if (rows === undefined) reasons.set(reason, [row]);
    else rows.push(row);
  }
  return reasons;
}

function printRows(rows: readonly number[]): string {
  const shown = rows.slice(0, 12).join(', ');
  return `${rows.length === 1 ? 'row' : 'rows'} ${shown}${rows.length > 12 ? ` and ${rows.length - 12} more` : ''}`;
}

const LEVELS: readonly LedgerEntry['level'][] = ['not-understood', 'flagged', 'read'];
const LEVEL_NAMES = {
  'not-understood': 'not understood',
  flagged: 'flagged',
  read: 'read by a rule',
} as const;

/** The ledger by level and rule, with one example each, the gravest first. */
function printLedger(terminal: Terminal, ledger: readonly LedgerEntry[]): void {
  if (ledger.length === 0) {
    terminal.out('\nLedger: every cell was read as it stands.\n');
    return;
  }
  const groups = new Map<string, LedgerEntry[]>();
  for (const entry of ledger) {
    const key = `${LEVELS.indexOf(entry.level)} ${entry.rule}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [entry]);
    else group.push(entry);
  }
  const ordered = [...groups].sort(([a, some], [b, others]) =>
    a[0] === b[0] ? others.length - some.length || (a < b ? -1 : 1) : a < b ? -1 : 1,
  );
  terminal.out(
    `\n${terminal.colour.underline(`Ledger: ${printCount(ledger.length, 'entry', 'entries')}`)}\n`,
  );
  terminal.out(
    textTable(
      [
        { head: '', align: 'left' },
        { head: 'rule', align: 'left' },
        { head: 'cells', align: 'right' },
        { head: 'for example', align: 'left' },
      ],
      ordered.map(([, entries]) => [
        LEVEL_NAMES[entries[0].level],
        entries[0].rule,
        String(entries.length),
        example(entries[0]),
      ]),
      terminal.width,
    ),
  );
}

function example({ row, column, raw, readAs: reading, why }: LedgerEntry): string {
  const place = [row > 0 ? `row ${row}` : '', column].filter((part) => part !== '').join(' ');
  const cell = raw === '' ? '' : `"${clipped(raw)}"${reading === '' ? '' : ` -> ${clipped(reading)}`}; `;
  return `${place === '' ? '' : `${place}: `}${cell}${clipped(why)}`;
}

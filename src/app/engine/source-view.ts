import type { Register } from '../../attributes/definition.ts';
import { matchTerm } from '../../attributes/matching.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { looksLikeCounts } from '../../sources/columns/looks-like-counts.ts';
import { proposeAsIs } from '../../sources/columns/propose-attributes.ts';
import { witnessCandidates } from '../../sources/names/witness-candidates.ts';
import { type QualityReport, reportQuality } from '../../sources/quality/quality.ts';
import type { ColumnReading, SourceReading } from '../../sources/source-reading.ts';
import type { OpenTerm, SourceView } from './views/sources.ts';

const MOST_EXAMPLES = 5;
const LONGEST_TERM = 60;

/** A source as the Sources screen shows it; the grid stays behind and is fetched page by page. */
export function viewSource(
  reading: SourceReading,
  register: Register,
  sheets: readonly string[],
): SourceView {
  const { grid, table: _table, ...rest } = reading;
  const aside = new Set(reading.rowsSetAside.map((row) => row.row));
  const kept = grid.filter((_, i) => i + 1 > reading.headerRow && !aside.has(i + 1));
  // Rows and columns of counts and of long form are not those of the file.
  const { counts, longForm } = reading.profile.layout;
  const laidOut = counts !== undefined || typeof longForm === 'object';
  const rows = laidOut ? reading.table.rows : reading.rowsKept;
  return {
    ...rest,
    gridRows: grid.length,
    gridColumns: laidOut ? (grid[reading.headerRow - 1] ?? []).length : reading.columns.length,
    openTerms: openTerms(reading, register),
    asIs: proposeAsIs(reading, register),
    counts: looksLikeCounts(reading),
    sheets,
    quality: inFileRows(reportQuality(reading.table, register, reading.columns), reading.table),
    witness: witnessCandidates(reading, register),
    repeatedLines: reading.repeatedIds.map(({ rows }) => rows.map((row) => grid[row - 1] ?? [])),
    fileHeaders: laidOut ? (grid[reading.headerRow - 1] ?? []) : null,
    examples: reading.columns.map((column) =>
      laidOut ? distinct(cellsOf(reading, column), 0) : distinct(kept, column.index),
    ),
    filledShare: reading.columns.map((column) => (rows === 0 ? 0 : column.filled / rows)),
    lost: reading.columns
      .filter(
        (column) =>
          column.status === 'ignored' && kept.some((row) => (row[column.index] ?? '').trim() !== ''),
      )
      .map((column) => column.header),
  };
}

/** The texts of a column as they stand in the table, one a row. */
function cellsOf(reading: SourceReading, { header, attributes }: ColumnReading): readonly string[][] {
  const column = reading.table.columns.get(attributes[0] ?? `column: ${header}`);
  return (column?.raw ?? []).map((text) => [text]);
}

/** Findings point to rows of the table; the screen shows rows of the file. */
function inFileRows(report: QualityReport, table: FragmentTable): QualityReport {
  const rowOf = (row: number): number => table.origin[row]?.row ?? 0;
  return {
    ...report,
    crossChecks: report.crossChecks.map((one) => ({ ...one, row: rowOf(one.row) })),
    outOfBounds: report.outOfBounds.map((one) => ({ ...one, row: rowOf(one.row) })),
    contradictions: report.contradictions.map((one) => ({ ...one, rows: one.rows.map(rowOf) })),
  };
}

function distinct(rows: readonly (readonly string[])[], column: number): string[] {
  const found = new Set<string>();
  for (const row of rows) {
    const text = (row[column] ?? '').trim();
    if (text !== '') found.add(text.length > 40 ? `${text.slice(0, 39)}…` : text);
    if (found.size === MOST_EXAMPLES) break;
  }
  return [...found];
}

/** Texts that no term and no rule covers, by column, most frequent first. */
function openTerms(reading: SourceReading, register: Register): OpenTerm[] {
  const counts = new Map<string, { header: string; attribute: string; text: string; count: number }>();
  for (const entry of reading.ledger) {
    if (entry.level !== 'not-understood' || entry.row === 0 || entry.raw.length > LONGEST_TERM) continue;
    const column = reading.columns.find((candidate) => candidate.header === entry.column);
    const [attribute, more] = column?.attributes ?? [];
    if (column?.status !== 'matched' || attribute === undefined || more !== undefined) continue;
    const key = `${entry.column}\u0000${entry.raw}`;
    const before = counts.get(key);
    counts.set(key, {
      header: entry.column,
      attribute,
      text: entry.raw,
      count: (before?.count ?? 0) + 1,
    });
  }
  return [...counts.values()]
    .sort((a, b) => b.count - a.count)
    .map((open) => {
      const vocabulary = register.vocabularies.get(register.attributes.get(open.attribute)?.vocabulary ?? '');
      const match = vocabulary === undefined ? null : matchTerm(open.text, vocabulary);
      return match?.kind === 'suggested'
        ? { ...open, suggestion: { term: match.id, reason: match.reason } }
        : open;
    });
}

import { countColumns } from '../layout/counts.ts';
import type { SourceReading } from '../source-reading.ts';

const FEWEST_KINDS = 3;

/**
 * Headers of the columns that seem to count kinds place by place: three or more columns of whole or half counts
 * that no attribute claims, beside a first column in which each name differs. Empty where the table does not look so.
 */
export function looksLikeCounts(reading: SourceReading): readonly string[] {
  if (reading.profile.layout.counts !== undefined || reading.table.rows < 2) return [];
  const open = reading.columns.filter(({ status }) => status === 'unknown' || status === 'suggested');
  const [first] = reading.columns;
  const names = first === undefined ? [] : textsOf(reading, first.header, first.attributes[0]);
  if (new Set(names).size !== reading.table.rows || names.some((name) => /^\d*$/.test(name))) return [];
  const headers = ['', ...open.filter(({ index }) => index > 0).map(({ header }) => header)];
  const columns = headers.map((header) => (header === '' ? names : textsOf(reading, header, undefined)));
  const body = names.map((_, row) => columns.map((texts) => texts[row] ?? ''));
  const counted = countColumns(headers, body, { place: 'site' }).map((i) => headers[i]!);
  const codes = counted.every((_, i) => body.every((row) => /^[01]?$/.test(row[i + 1] ?? '')));
  return counted.length >= FEWEST_KINDS && counted.length >= 0.7 * (headers.length - 1) && !codes
    ? counted
    : [];
}

function textsOf(reading: SourceReading, header: string, attribute: string | undefined): readonly string[] {
  const column = reading.table.columns.get(attribute ?? `column: ${header}`);
  return (column?.raw ?? []).map((text) => text.trim());
}

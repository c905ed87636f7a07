import { foldText } from '../../attributes/folding.ts';
import { areShares, countColumns } from '../layout/count-columns.ts';
import type { SourceReading } from '../source-reading.ts';

const FEWEST_KINDS = 3;

/** What a table of counts by place seems to hold. */
export interface SeemingCounts {
  /** Headers of the columns that count kinds. */
  readonly columns: readonly string[];
  /** The cells are per cent of what this column counts; null where the table has no such column. */
  readonly shares: { readonly base: string | null } | null;
}

const BASES: ReadonlySet<string> = new Set(
  'n total base sum count anzahl gesamt summe insgesamt totale somme suma antal antall'.split(' '),
);

/**
 * Whether a table seems to count kinds place by place: three or more columns of whole or half counts (or of per
 * cent) that no attribute claims, beside a first column in which each name differs. Null where it does not look so.
 */
export function looksLikeCounts(reading: SourceReading): SeemingCounts | null {
  if (reading.profile.layout.counts !== undefined || reading.table.rows < 2) return null;
  const [first] = reading.columns;
  const names = first === undefined ? [] : textsOf(reading, first.header, first.attributes[0]);
  if (new Set(names).size !== reading.table.rows || names.some((name) => /^\d*$/.test(name))) return null;
  const open = reading.columns.filter(
    ({ status, index }) => index > 0 && (status === 'unknown' || status === 'suggested'),
  );
  const headers = ['', ...open.map(({ header }) => header)];
  const columns = headers.map((header) => (header === '' ? names : textsOf(reading, header, undefined)));
  const body = names.map((_, row) => columns.map((texts) => texts[row] ?? ''));
  const base = headers.find((header) => BASES.has(foldText(header))) ?? quantityOf(reading);
  const { counted } = countColumns(headers, body, {
    place: 'site',
    ...(base === null ? {} : { base }),
  });
  if (counted.length < FEWEST_KINDS || counted.length < 0.7 * (headers.length - (base === null ? 1 : 2)))
    return null;
  const codes = body.every((row) => counted.every((i) => /^[01]?$/.test(row[i] ?? '')));
  if (codes) return null;
  const shares = areShares(headers, counted, body) ? { base } : null;
  const all = shares === null ? countColumns(headers, body, { place: 'site' }).counted : counted;
  return { columns: all.map((i) => headers[i]!), shares };
}

/** A column of numbers of objects that was recognised as such. */
function quantityOf({ columns }: SourceReading): string | null {
  return (
    columns.find(({ attributes, status }) => status === 'matched' && attributes[0] === 'quantity')?.header ??
    null
  );
}

function textsOf(reading: SourceReading, header: string, attribute: string | undefined): readonly string[] {
  const column = reading.table.columns.get(attribute ?? `column: ${header}`);
  return (column?.raw ?? []).map((text) => text.trim());
}

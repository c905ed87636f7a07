import type { ClaimsFound } from '../../analyses/claims/found.ts';
import { type Claimed, claims, judgeClaims } from '../../analyses/claims/index.ts';
import { type ClaimsOptions, claimsOptions } from '../../analyses/claims/options.ts';
import { briefPrint } from '../../analyses/claims/place-words.ts';
import { readClaimLines } from '../../analyses/claims/reading/claims-file.ts';
import { type PrintedTable, readTable } from '../../analyses/claims/reading/printed-table.ts';
import { InputError } from '../../errors.ts';
import { createRandom } from '../../numerics/foundation/random.ts';
import { claimsCsv, claimsJson } from '../../report/claims-data.ts';
import { claimsLetter } from '../../report/claims-letter.ts';
import { renderClaimsPage } from '../../report/claims-page.ts';
import { firstFault, type Prepared } from '../../study/prepare.ts';
import type { StudyAnalysis } from '../state/workspace.ts';
import type { ClaimsForm } from './protocol.ts';
import type { ClaimsView } from './views/claims.ts';

interface Checked {
  readonly found: ClaimsFound;
  readonly lines: ClaimsView['lines'];
  readonly printed: ClaimsView['printed'];
  readonly fault: string | null;
}

/**
 * A list of printed figures while it is being written: what can be read is checked, by the code of the
 * command line, and what cannot be read yet says what it lacks.
 */
export function claimsView(
  { id, kind: _kind, title: _title, note: _note, ...options }: StudyAnalysis,
  files: ReadonlyMap<string, Uint8Array>,
  seed: number,
  prepared: Prepared | null,
): ClaimsView {
  const { found, lines, printed, fault } = check(id, claimsOptions.parse(options), files, seed, prepared);
  return {
    fault,
    lines,
    printed,
    judged: found.judged.map(({ figure, verdict, says, why, explained, resolve, checks }) => ({
      id: figure.id,
      place: figure.place,
      quantity: figure.quantity,
      printed: briefPrint(figure),
      verdict,
      says,
      why,
      explained,
      resolve,
      checks,
    })),
    counts: found.counts,
    withData: found.withData,
    words: found.judged.length === 0 ? null : claims.words(found),
    tables: claims.tables(found),
    figures: found.judged.length === 0 ? {} : claims.figures(found),
  };
}

/** The same answer in the form of a file; byte for byte what the command line writes. */
export function claimsFile(
  { id, kind: _kind, title, note: _note, ...options }: StudyAnalysis,
  files: ReadonlyMap<string, Uint8Array>,
  seed: number,
  prepared: Prepared | null,
  form: ClaimsForm,
): string {
  const asked = claimsOptions.parse(options);
  const { found } = check(id, asked, files, seed, prepared);
  switch (form) {
    case 'csv':
      return claimsCsv(found);
    case 'json':
      return `${JSON.stringify(claimsJson(found), null, 2)}\n`;
    case 'markdown':
      return claimsLetter(found);
    case 'html':
      return renderClaimsPage(found, String(title ?? asked.file ?? 'Printed figures'));
  }
}

function check(
  id: string,
  options: ClaimsOptions,
  files: ReadonlyMap<string, Uint8Array>,
  seed: number,
  prepared: Prepared | null,
): Checked {
  const listed = readList(options.file, files);
  const { paper = '' } = options;
  const read = options.tables.map((says) => readPrinted(says, files));
  const tables = read.flatMap(({ table }) => table ?? []);
  const doubt = prepared === null ? null : firstFault(prepared);
  const withData = options.data && prepared !== null && prepared.fragments.sources.length > 0;
  const claimed: Claimed = {
    figures: listed.lines.flatMap(({ figures }) => figures),
    ignored: listed.ignored,
    tables,
    unread: [
      ...listed.lines.flatMap(({ fault }) => (fault === null ? [] : [fault.message])),
      ...read.flatMap(({ fault }) => fault ?? []),
    ],
    paper,
    doubts: withData && doubt !== null ? [doubt.message] : [],
  };
  const material = withData
    ? {
        fragments: prepared.fragments,
        records: prepared.records,
        register: prepared.register,
        unit: prepared.unit,
      }
    : null;
  const found = judgeClaims(claimed, createRandom(seed).stream(id), material);
  return {
    found,
    fault: listed.fault,
    lines: listed.lines.map(({ row, id: line, figures, fault }) => ({
      row,
      id: line,
      figures: figures.map((figure) => figure.id),
      fault: fault === null ? null : { column: fault.where.column ?? '', text: saying(fault) },
    })),
    printed: read.map(({ file, table, fault }) => ({
      file,
      kind: table?.kind ?? '',
      columns: (table?.columns ?? []).map(({ head, role }) => ({ head, role })),
      unread: table?.unread ?? [],
      ofData: found.tables.find(({ name }) => name === table?.name)?.ofData ?? [],
      figures: (table?.figures ?? []).map((figure) => figure.id),
      fault,
    })),
  };
}

type Lines = ReturnType<typeof readClaimLines>;

function readList(
  file: string | undefined,
  files: ReadonlyMap<string, Uint8Array>,
): Lines & { readonly fault: string | null } {
  const none = { lines: [], ignored: [] };
  const bytes = file === undefined ? undefined : files.get(file);
  if (file === undefined) return { ...none, fault: null };
  if (bytes === undefined) return { ...none, fault: `${file}: the file is missing; open it again.` };
  try {
    return { ...readClaimLines(bytes, file), fault: null };
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return { ...none, fault: fault.message };
  }
}

function readPrinted(
  { file, ...says }: ClaimsOptions['tables'][number],
  files: ReadonlyMap<string, Uint8Array>,
): { readonly file: string; readonly table: PrintedTable | null; readonly fault: string | null } {
  const bytes = files.get(file);
  if (bytes === undefined)
    return { file, table: null, fault: `${file}: the file is missing; open it again.` };
  try {
    return { file, table: readTable(bytes, file, says), fault: null };
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return { file, table: null, fault: fault.message };
  }
}

/** The fault without its place, which stands beside it on the screen. */
function saying({ what, mend }: InputError): string {
  return `${what.charAt(0).toUpperCase()}${what.slice(1)}; ${mend}.`;
}

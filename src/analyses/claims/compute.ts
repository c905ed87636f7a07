import { InputError } from '../../errors.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { AnalysisInput } from '../contract.ts';
import { type Meant, ofTheData } from './data/table-meaning.ts';
import { type ClaimsFound, type ClaimVerdict, VERDICTS } from './found.ts';
import { type ClaimsMaterial, judgeReadings } from './judging/both-readings.ts';
import { uncheckedByNeed, unheldByNeed } from './judging/judge.ts';
import type { ClaimsOptions } from './options.ts';
import { lastDigits } from './print/samples/readings.ts';
import { allFaults } from './reading/all-faults.ts';
import type { PrintedFigure } from './reading/claim.ts';
import { type ClaimsFile, readClaims } from './reading/claims-file.ts';
import { type PrintedTable, readTable } from './reading/printed-table.ts';

/**
 * Which printed figures agree with the data and with each other, which cannot be, and which cannot be checked?
 * A study without a table of records, or one that says so, has them held against each other only.
 *
 * @throws InputError for a claims file or a printed table that cannot be read.
 */
export function computeClaims(input: AnalysisInput, options: ClaimsOptions): ClaimsFound {
  const files = input.files ?? new Map<string, Uint8Array>();
  const without = !options.data || input.fragments.sources.length === 0;
  return checkClaims(files, options, input.random, without ? null : input);
}

type Asked = Pick<ClaimsOptions, 'file' | 'tables' | 'paper'>;

/** The same without a study, for a claims file alone. */
export function checkClaims(
  files: ReadonlyMap<string, Uint8Array>,
  { file, tables, paper = '' }: Asked,
  random: Random,
  material: ClaimsMaterial | null = null,
): ClaimsFound {
  const faults: InputError[] = [];
  const attempt = <T>(read: () => T, otherwise: T): T => {
    try {
      return read();
    } catch (fault) {
      if (!(fault instanceof InputError)) throw fault;
      faults.push(fault);
      return otherwise;
    }
  };
  const none: ClaimsFile = { claims: [], figures: [], ignored: [] };
  const claimed = file === undefined ? none : attempt(() => readClaims(bytesOf(files, file), file), none);
  const printed = tables.flatMap(({ file: name, ...says }) =>
    attempt(() => [readTable(bytesOf(files, name), name, says)], []),
  );
  const fault = allFaults(faults, file ?? tables[0]?.file ?? '');
  if (fault !== null) throw fault;
  if (claimed.figures.length === 0 && printed.length === 0)
    throw new InputError(
      'the file holds no claim',
      file === undefined ? {} : { file },
      'add one row a printed figure, or name a printed table',
    );
  return judgeClaims({ ...claimed, tables: printed, unread: [], paper }, random, material);
}

/** Printed figures that are read already. */
export interface Claimed {
  readonly figures: readonly PrintedFigure[];
  readonly tables: readonly PrintedTable[];
  readonly ignored: readonly string[];
  /** What could not be read and is left out, each in a sentence. */
  readonly unread: readonly string[];
  /** Open questions of the data's own tables. */
  readonly doubts?: readonly string[];
  /** Title and source of the paper. */
  readonly paper?: string;
}

export function judgeClaims(
  { figures: claimed, tables, ignored, unread, doubts = [], paper = '' }: Claimed,
  random: Random,
  material: ClaimsMaterial | null,
): ClaimsFound {
  const placed = tables.map(
    (table): Meant => (material === null ? { table, attributes: [] } : ofTheData(table, material)),
  );
  const meant = placed.map(({ table }) => table);
  const read = [...claimed, ...meant.flatMap((table) => table.figures)];
  const { judged, evidence } = judgeReadings(read, meant, random, material);
  const counts = Object.fromEntries(
    VERDICTS.map((verdict) => [verdict, judged.filter((one) => one.verdict === verdict).length]),
  ) as Record<ClaimVerdict, number>;
  const digits = lastDigits(evidence);
  return {
    n: {
      fragments: material?.fragments.rows ?? 0,
      items: material === null ? 0 : new Set(material.fragments.item).size,
      setAside: [],
    },
    paper,
    judged,
    counts,
    unchecked: uncheckedByNeed(judged),
    unheld: unheldByNeed(judged),
    digits,
    withData: material !== null,
    ignored,
    unread: [...unread, ...unusedOf(claimed), ...meant.flatMap((table) => table.unread)],
    doubts: [...doubts, ...placed.flatMap(({ doubt }) => doubt ?? [])],
    tables: placed.map(({ table: { name, caption, kind, columns, rows }, attributes }) => ({
      name,
      caption,
      kind,
      columns: columns.map(({ head, role, line }) => ({ head, role, line })),
      rows: rows.map(({ label, line }) => ({ label, line })),
      ofData: attributes,
    })),
  };
}

/** Words and numbers of claims that nothing was made of. */
function unusedOf(figures: readonly PrintedFigure[]): string[] {
  return figures
    .filter(({ unused }) => unused.length > 0)
    .map(
      ({ id, place, unused, printed }) =>
        `${place === '' ? id : place}: ${unused.map((word) => `“${word}”`).join(', ')} of “${printed}”`,
    );
}

function bytesOf(files: ReadonlyMap<string, Uint8Array>, name: string): Uint8Array {
  const bytes = files.get(name);
  if (bytes !== undefined) return bytes;
  throw new InputError('the file is missing', { file: name }, 'put it beside the study, or correct its name');
}

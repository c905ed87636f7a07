import { InputError } from '../../errors.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { AnalysisInput } from '../contract.ts';
import { checkData, type Material } from './data/check-data.ts';
import { ofTheData } from './data/table-meaning.ts';
import { type ClaimsFound, VERDICTS, type Verdict } from './found.ts';
import { judge, uncheckedByNeed } from './judging/judge.ts';
import type { ClaimsOptions } from './options.ts';
import { checkPrint } from './print/check-print.ts';
import { gatherEvidence } from './print/evidence.ts';
import { lastDigits } from './print/samples/readings.ts';
import type { PrintedFigure } from './reading/claim.ts';
import { allFaults, type ClaimsFile, readClaims } from './reading/claims-file.ts';
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
type ClaimsMaterial = Material & Pick<AnalysisInput, 'onProgress'>;

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
  const meant = material === null ? tables : tables.map((table) => ofTheData(table, material));
  const read = [...claimed, ...meant.flatMap((table) => table.figures)];
  const { judged, evidence } = judgeReadings(read, meant, random, material);
  const counts = Object.fromEntries(
    VERDICTS.map((verdict) => [verdict, judged.filter((one) => one.verdict === verdict).length]),
  ) as Record<Verdict, number>;
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
    digits,
    withData: material !== null,
    ignored,
    unread: [...unread, ...unusedOf(claimed), ...meant.flatMap((table) => table.unread)],
    doubts,
    tables: meant.map(({ name, caption, kind, columns, rows }) => ({
      name,
      caption,
      kind,
      columns: columns.map(({ head, role, line }) => ({ head, role, line })),
      rows: rows.map(({ label, line }) => ({ label, line })),
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

function judgeOnce(
  figures: readonly PrintedFigure[],
  tables: readonly PrintedTable[],
  random: Random,
  material: ClaimsMaterial | null,
) {
  const evidence = gatherEvidence(figures, tables);
  const checks = [
    ...checkPrint(evidence, random),
    ...(material === null ? [] : checkData(figures, material, material.onProgress)),
  ];
  return { judged: judge(figures, checks, material !== null), evidence };
}

/**
 * A print that may be two numbers ("1,234") is tried as both: what agrees under the second reading alone is read
 * so, and where neither agrees it is asked which was meant.
 */
function judgeReadings(
  figures: readonly PrintedFigure[],
  tables: readonly PrintedTable[],
  random: Random,
  material: ClaimsMaterial | null,
) {
  const first = judgeOnce(figures, tables, random, material);
  const doubtful = new Map(
    first.judged
      .filter(
        ({ figure, verdict }) =>
          !verdict.startsWith('agrees') && figure.values.some(({ otherwise }) => otherwise !== undefined),
      )
      .map((one) => [one.figure.id, one]),
  );
  if (doubtful.size === 0) return first;
  const turned = figures.map((figure) => (doubtful.has(figure.id) ? otherReading(figure) : figure));
  const second = judgeOnce(turned, tables, random, material);
  const better = new Set(
    second.judged
      .filter(({ figure, verdict }) => doubtful.has(figure.id) && verdict.startsWith('agrees'))
      .map(({ figure }) => figure.id),
  );
  const settled =
    better.size === 0
      ? first
      : judgeOnce(
          figures.map((figure) => (better.has(figure.id) ? otherReading(figure) : figure)),
          tables,
          random,
          material,
        );
  return {
    ...settled,
    judged: settled.judged.map((one) =>
      doubtful.has(one.figure.id) && one.verdict === 'cannot be'
        ? {
            ...one,
            verdict: 'differs' as const,
            says: 'differs',
            resolve: `Say what is meant by “${one.figure.printed}”: it may be read as two numbers, and neither fits.`,
          }
        : one,
    ),
  };
}

function otherReading(figure: PrintedFigure): PrintedFigure {
  return {
    ...figure,
    values: figure.values.map(({ otherwise, ...value }) =>
      otherwise === undefined ? value : { ...value, number: otherwise },
    ),
  };
}

function bytesOf(files: ReadonlyMap<string, Uint8Array>, name: string): Uint8Array {
  const bytes = files.get(name);
  if (bytes !== undefined) return bytes;
  throw new InputError('the file is missing', { file: name }, 'put it beside the study, or correct its name');
}

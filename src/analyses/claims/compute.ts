import { InputError } from '../../errors.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { AnalysisInput } from '../contract.ts';
import { checkData, type Material } from './data/check-data.ts';
import { type ClaimsFound, VERDICTS, type Verdict } from './found.ts';
import { judge, uncheckedByNeed } from './judging/judge.ts';
import type { ClaimsOptions } from './options.ts';
import { checkPrint } from './print/check-print.ts';
import { gatherEvidence } from './print/evidence.ts';
import { lastDigits } from './print/readings.ts';
import type { PrintedFigure } from './reading/claim.ts';
import { readClaims } from './reading/claims-file.ts';
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

type Asked = Pick<ClaimsOptions, 'file' | 'tables'>;
type ClaimsMaterial = Material & Pick<AnalysisInput, 'onProgress'>;

/** The same without a study, for a claims file alone. */
export function checkClaims(
  files: ReadonlyMap<string, Uint8Array>,
  { file, tables }: Asked,
  random: Random,
  material: ClaimsMaterial | null = null,
): ClaimsFound {
  const claimed = file === undefined ? { figures: [], ignored: [] } : readClaims(bytesOf(files, file), file);
  const printed = tables.map(({ file: name, ...says }) => readTable(bytesOf(files, name), name, says));
  if (claimed.figures.length === 0 && printed.length === 0)
    throw new InputError(
      'the file holds no claim',
      file === undefined ? {} : { file },
      'add one row a printed figure, or name a printed table',
    );
  return judgeClaims({ ...claimed, tables: printed, unread: [] }, random, material);
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
}

export function judgeClaims(
  { figures: claimed, tables, ignored, unread, doubts = [] }: Claimed,
  random: Random,
  material: ClaimsMaterial | null,
): ClaimsFound {
  const figures = [...claimed, ...tables.flatMap((table) => table.figures)];
  const evidence = gatherEvidence(figures, tables);
  const checks = [
    ...checkPrint(evidence, random),
    ...(material === null ? [] : checkData(figures, material, material.onProgress)),
  ];
  const judged = judge(figures, checks, material !== null);
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
    judged,
    counts,
    unchecked: uncheckedByNeed(judged),
    digits,
    withData: material !== null,
    ignored,
    unread,
    doubts,
  };
}

function bytesOf(files: ReadonlyMap<string, Uint8Array>, name: string): Uint8Array {
  const bytes = files.get(name);
  if (bytes !== undefined) return bytes;
  throw new InputError('the file is missing', { file: name }, 'put it beside the study, or correct its name');
}

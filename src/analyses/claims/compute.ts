import { InputError } from '../../errors.ts';
import type { Random } from '../../numerics/random.ts';
import type { AnalysisInput, Findings } from '../contract.ts';
import { VERDICTS, type Verdict } from './check.ts';
import { checkPrint } from './check-print.ts';
import { readClaims } from './claims-file.ts';
import { checkData, type Material } from './data/check-data.ts';
import { gatherEvidence } from './evidence.ts';
import type { ClaimsOptions } from './options.ts';
import { readTable } from './printed-table.ts';
import { claimsTables } from './result-tables.ts';
import { type LastDigits, lastDigits } from './self/readings.ts';
import { type Judged, judge } from './verdicts.ts';

export interface ClaimsFound extends Findings {
  readonly judged: readonly Judged[];
  readonly counts: Readonly<Record<Verdict, number>>;
  readonly digits: readonly LastDigits[];
  /** Whether data stood behind the answer. */
  readonly withData: boolean;
  /** Columns of the claims file that were not read. */
  readonly ignored: readonly string[];
}

/**
 * Which printed figures agree with the data and with each other, which cannot be, and which cannot be checked?
 *
 * @throws InputError for a claims file or a printed table that cannot be read.
 */
export function computeClaims(input: AnalysisInput, options: ClaimsOptions): ClaimsFound {
  const files = input.files ?? new Map<string, Uint8Array>();
  return checkClaims(files, options, input.random, input);
}

/** The same without a study, for a claims file alone. */
export function checkClaims(
  files: ReadonlyMap<string, Uint8Array>,
  options: ClaimsOptions,
  random: Random,
  material: (Material & Pick<AnalysisInput, 'onProgress'>) | null = null,
): ClaimsFound {
  const { figures: claimed, ignored } = readClaims(bytesOf(files, options.file), options.file);
  const tables = options.tables.map(({ file, ...says }) => readTable(bytesOf(files, file), file, says));
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
    tables: claimsTables(judged, counts, digits),
    judged,
    counts,
    digits,
    withData: material !== null,
    ignored,
  };
}

function bytesOf(files: ReadonlyMap<string, Uint8Array>, name: string): Uint8Array {
  const bytes = files.get(name);
  if (bytes !== undefined) return bytes;
  throw new InputError('the file is missing', { file: name }, 'put it beside the study, or correct its name');
}

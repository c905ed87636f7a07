import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { Command, Option } from 'commander';
import type { Register } from '../../attributes/definition.ts';
import { defaultRegister } from '../../attributes/register.ts';
import { InputError } from '../../errors.ts';
import { ledgerRows } from '../../report/ledger-rows.ts';
import { writeWholeFiles } from '../../report/writing/whole-files.ts';
import { readDataPackage } from '../../sources/datapackage.ts';
import { writeCsv } from '../../sources/export.ts';
import { checkProfile, PIECES, type SourceProfile, sourceProfile } from '../../sources/profile.ts';
import { reportQuality } from '../../sources/quality.ts';
import { type ReadOptions as ReadSourceOptions, readSource, readTexts } from '../../sources/read-source.ts';
import type { SourceReading } from '../../sources/source-reading.ts';
import { unknownTerms } from '../../sources/terms.ts';
import { readWorkbook } from '../../sources/workbook.ts';
import { loadStudy, parseJson, studyRegister } from '../../study/load.ts';
import { startStudy } from '../../study/start-study.ts';
import { isWorkbook } from '../../study/workbooks.ts';
import { STATUS } from '../failure.ts';
import { exists, readBytes, readText } from '../files.ts';
import { printQuality } from '../print-quality.ts';
import { printReading } from '../print-reading.ts';
import { untilStopped } from '../until-stopped.ts';
import { printJson, type Verb } from './verb.ts';

interface ReadOptions {
  readonly profile?: string;
  readonly study?: string;
  readonly sheet?: string;
  readonly pieces?: SourceProfile['pieces'];
  readonly acceptSuggestions?: true;
  readonly saveProfile?: string | true;
  readonly saveStudy?: string | true;
  readonly ledger?: string;
  readonly json?: true;
}

/** `thrum read FILE`: how a table is understood, before any study uses it. */
export const readVerb: Verb = (terminal, setStatus) =>
  new Command('read')
    .description('read one table and show how it was understood')
    .argument('<file>', 'CSV, TSV or XLSX file')
    .option('--profile <file>', 'source profile, or datapackage.json, that says how to read it')
    .option('--study <file>', 'study whose own attributes and terms are to be recognised too')
    .option('--sheet <name>', 'sheet of an XLSX file; the first one if left out')
    .addOption(
      new Option(
        '--pieces <which>',
        'of cells with the sizes of several pieces, the one to read (kept in the profile)',
      ).choices(PIECES),
    )
    .option('--accept-suggestions', 'use near matches of headers as if they had been confirmed')
    .option('--save-profile [file]', 'write the profile; beside the table unless a file is named')
    .option(
      '--save-study [file]',
      'write a study to begin with, and the profile; beside the table unless a file is named',
    )
    .option('--ledger <file>', 'write every change, flag and riddle as CSV')
    .option('--json', 'print the reading as JSON')
    .action(async (path: string, options: ReadOptions) => {
      const name = basename(path);
      const named = await profileFor(path, options.profile);
      const profile = withPieces(named.profile, options.pieces);
      const register = await registerFor(options.study);
      const reading = await readTable(path, options.sheet, {
        name,
        register,
        ...(profile === undefined ? {} : { profile }),
        ...(options.acceptSuggestions ? { acceptSuggestions: true } : {}),
      });
      const stands = !named.packaged && options.pieces === undefined && !options.acceptSuggestions;
      const written = await writeAsked(path, options, reading, stands ? options.profile : undefined);
      const quality = reportQuality(reading.table, register, reading.columns);
      const terms = unknownTerms(reading, register);
      if (options.json) {
        const { table: _table, grid: _grid, ...rest } = reading;
        printJson(terminal, { ...rest, quality, unknownTerms: terms });
      } else {
        printReading(terminal, reading);
        printQuality(terminal, quality, terms, reading, reading.table, register);
      }
      const say = options.json ? terminal.err : terminal.out;
      for (const line of written) say(`${line}\n`);
      if (reading.faults.length > 0) {
        const { what, where, mend } = reading.faults[0];
        terminal.err(`${new InputError(what, where, mend).message}\n`);
        setStatus(STATUS.badInput);
      }
    });

/** The profile that is named, or what a data package says of this table. */
async function profileFor(
  table: string,
  path: string | undefined,
): Promise<{ readonly profile?: SourceProfile; readonly packaged: boolean }> {
  if (path === undefined) return { packaged: false };
  const text = await readText(path);
  const value = parseJson(text, path);
  if (typeof value !== 'object' || value === null || !('resources' in value))
    return { profile: checkProfile(value, path), packaged: false };
  const tables = readDataPackage(text, path);
  const own = tables.find((one) => resolve(dirname(path), one.path) === resolve(table));
  if (own !== undefined) return { profile: checkProfile(own.profile, path), packaged: true };
  throw new InputError(
    `the data package does not describe ${basename(table)}`,
    { file: path },
    `name one of its tables: ${tables.map((one) => one.path).join(', ')}`,
  );
}

/** An answer given on the command line goes before the profile's. */
function withPieces(
  profile: SourceProfile | undefined,
  pieces: SourceProfile['pieces'],
): SourceProfile | undefined {
  return pieces === undefined ? profile : { ...(profile ?? sourceProfile.parse({})), pieces };
}

async function registerFor(studyPath: string | undefined): Promise<Register> {
  if (studyPath === undefined) return defaultRegister();
  return studyRegister(loadStudy(await readText(studyPath), studyPath));
}

/** A spreadsheet goes through the same reading as a CSV. */
async function readTable(
  path: string,
  sheet: string | undefined,
  options: ReadSourceOptions,
): Promise<SourceReading> {
  const bytes = await readBytes(path, options.name);
  if (/\.json$/i.test(path))
    throw new InputError(
      'this is a JSON file, and a table is meant',
      { file: options.name },
      'name a CSV, TSV or XLSX file, or compute a study with "thrum run"',
    );
  if (!isWorkbook(path)) {
    if (sheet === undefined) return readSource(bytes, options);
    throw new InputError('only a workbook has sheets', { file: options.name }, 'leave --sheet out');
  }
  const { grid, merged } = await readWorkbook(bytes, options.name, sheet);
  return readTexts(grid, { ...options, merged });
}

/**
 * Writes what was asked for. A study, and the profile that goes with it, never over one that is there.
 *
 * @param named the profile that reads the table so already, where there is one.
 * @returns lines that say what was written.
 */
async function writeAsked(
  path: string,
  options: ReadOptions,
  reading: SourceReading,
  named: string | undefined,
): Promise<string[]> {
  const begun = beside(options.saveStudy, path, '.study.json');
  const own = beside(true, path, '.profile.json');
  const saved = beside(options.saveProfile, path, '.profile.json');
  const profile = saved ?? named ?? own;
  if (begun !== undefined) {
    await refuseExisting(begun, 'name another file with --save-study');
    if (saved === undefined && named === undefined)
      await refuseExisting(own, 'read by it with --profile, or write it anew with --save-profile');
  }
  const files: [file: string, text: string][] = [];
  const notes: string[] = [];
  if (options.ledger !== undefined) files.push([options.ledger, writeCsv(ledgerRows(reading.ledger))]);
  if (saved !== undefined || (begun !== undefined && named === undefined))
    files.push([profile, `${JSON.stringify(reading.profile, null, 2)}\n`]);
  if (begun !== undefined) {
    const from = (file: string) =>
      relative(dirname(resolve(begun)), resolve(file))
        .split(sep)
        .join('/');
    const sheet = options.sheet === undefined ? {} : { sheet: options.sheet };
    const source = { file: from(path), profile: from(profile), ...sheet };
    const study = startStudy(stem(path), source, reading.table);
    files.push([begun, `${JSON.stringify(study, null, 2)}\n`]);
    if (study.analyses?.length === 0)
      notes.push(
        'No column is recognised that a question could be asked of; name attributes in the profile.',
      );
  }
  // The profile that the table is read by may be written anew; the table and the study never.
  const inputs = [path, ...(options.study === undefined ? [] : [options.study])];
  await untilStopped((stop) => writeWholeFiles(files, { inputs, stop }));
  return [...files.map(([file]) => `Written: ${file}`), ...notes];
}

async function refuseExisting(file: string, mend: string): Promise<void> {
  if (await exists(file)) throw new InputError('this file is there already', { file }, mend);
}

/** Where to write: the file that is named, or one beside the table with another ending. */
function beside(wanted: true, table: string, ending: string): string;
function beside(wanted: string | true | undefined, table: string, ending: string): string | undefined;
function beside(wanted: string | true | undefined, table: string, ending: string): string | undefined {
  return wanted === true ? join(dirname(table), `${stem(table)}${ending}`) : wanted;
}

function stem(path: string): string {
  return basename(path).replace(/\.[^.]+$/, '');
}

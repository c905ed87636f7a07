import { basename, dirname, join } from 'node:path';
import { Command } from 'commander';
import type { Register } from '../../attributes/definition.ts';
import { defaultRegister } from '../../attributes/register.ts';
import { InputError } from '../../errors.ts';
import { ledgerRows } from '../../report/ledger-rows.ts';
import { writeCsv } from '../../sources/export.ts';
import { checkProfile, type SourceProfile } from '../../sources/profile.ts';
import { reportQuality } from '../../sources/quality.ts';
import { type ReadOptions as ReadSourceOptions, readSource, readTexts } from '../../sources/read-source.ts';
import type { SourceReading } from '../../sources/source-reading.ts';
import { unknownTerms } from '../../sources/terms.ts';
import { readWorkbook } from '../../sources/workbook.ts';
import { loadStudy, parseJson, studyRegister } from '../../study/load.ts';
import { STATUS } from '../failure.ts';
import { readBytes, readText, writeOut } from '../files.ts';
import { printQuality } from '../print-quality.ts';
import { printReading } from '../print-reading.ts';
import { printJson, type Verb } from './verb.ts';

interface ReadOptions {
  readonly profile?: string;
  readonly study?: string;
  readonly sheet?: string;
  readonly acceptSuggestions?: true;
  readonly saveProfile?: string | true;
  readonly ledger?: string;
  readonly json?: true;
}

/** `thrum read FILE`: how a table is understood, before any study uses it. */
export const readVerb: Verb = (terminal, setStatus) =>
  new Command('read')
    .description('read one table and show how it was understood')
    .argument('<file>', 'CSV, TSV or XLSX file')
    .option('--profile <file>', 'source profile that says how to read it')
    .option('--study <file>', 'study whose own attributes and terms are to be recognised too')
    .option('--sheet <name>', 'sheet of an XLSX file; the first one if left out')
    .option('--accept-suggestions', 'use near matches of headers as if they had been confirmed')
    .option('--save-profile [file]', 'write the profile; beside the table unless a file is named')
    .option('--ledger <file>', 'write every change, flag and riddle as CSV')
    .option('--json', 'print the reading as JSON')
    .action(async (path: string, options: ReadOptions) => {
      const name = basename(path);
      const profile = options.profile === undefined ? undefined : await readProfile(options.profile);
      const register = await registerFor(options.study);
      const reading = await readTable(path, options.sheet, {
        name,
        register,
        ...(profile === undefined ? {} : { profile }),
        ...(options.acceptSuggestions ? { acceptSuggestions: true } : {}),
      });
      if (options.ledger !== undefined) await writeOut(options.ledger, writeCsv(ledgerRows(reading.ledger)));
      const saved = profilePath(options.saveProfile, path);
      if (saved !== undefined) await writeOut(saved, `${JSON.stringify(reading.profile, null, 2)}\n`);
      const quality = reportQuality(reading.table, register);
      const terms = unknownTerms(reading, register);
      if (options.json) {
        const { table: _table, grid: _grid, ...rest } = reading;
        printJson(terminal, { ...rest, quality, unknownTerms: terms });
      } else {
        printReading(terminal, reading);
        printQuality(terminal, quality, terms, reading, reading.table, register);
      }
      const say = options.json ? terminal.err : terminal.out;
      for (const file of [options.ledger, saved]) if (file !== undefined) say(`Written: ${file}\n`);
      if (reading.faults.length > 0) {
        const { what, where, mend } = reading.faults[0];
        terminal.err(`${new InputError(what, where, mend).message}\n`);
        setStatus(STATUS.badInput);
      }
    });

async function readProfile(path: string): Promise<SourceProfile> {
  return checkProfile(parseJson(await readText(path), path), path);
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
  if (!/\.xlsx$/i.test(path)) return readSource(bytes, options);
  const { grid, merged } = await readWorkbook(bytes, options.name, sheet);
  return readTexts(grid, { ...options, merged });
}

function profilePath(wanted: string | true | undefined, table: string): string | undefined {
  if (wanted !== true) return wanted;
  return join(dirname(table), basename(table).replace(/\.[^.]+$/, '.profile.json'));
}

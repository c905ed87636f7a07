import { basename } from 'node:path';
import { Command, Option } from 'commander';
import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { defaultRegister } from '../../attributes/register.ts';
import { InputError } from '../../errors.ts';
import { append } from '../../numerics/foundation/lists.ts';
import type { Proposal } from '../../sources/columns/propose-attributes.ts';
import { withRoles } from '../../sources/combine/align.ts';
import { combineSources } from '../../sources/combine/combine.ts';
import { COUNTED_KIND } from '../../sources/layout/counts.ts';
import { unknownTerms } from '../../sources/names/terms.ts';
import { type WitnessCandidate, witnessCandidates } from '../../sources/names/witness-candidates.ts';
import { PIECES } from '../../sources/profile/profile.ts';
import { reportQuality } from '../../sources/quality/quality.ts';
import type { SourceReading } from '../../sources/source-reading.ts';
import { asShown } from '../as-shown.ts';
import { STATUS } from '../failure.ts';
import { readText } from '../files.ts';
import { printAsIs } from '../print-as-is.ts';
import { printTogether, together } from '../print-many.ts';
import { printQuality } from '../print-quality.ts';
import { printReading } from '../print-reading.ts';
import { printWitness, witnessNotes } from '../print-witness.ts';
import { type ReadOptions, refuseForSeveral, withCounts, withKinds, withPieces } from '../read-options.ts';
import { FROM_PIPE, profileFor, readAsIs, readTable } from '../read-table.ts';
import { type ReadTable, writeAsked } from '../save-reading.ts';
import type { Terminal } from '../terminal.ts';
import { printJson, type Verb } from './verb.ts';

/** `thrum read FILE …`: how tables are understood, before any study uses them. */
export const readVerb: Verb = (terminal, setStatus) =>
  new Command('read')
    .description('read tables and show how they were understood')
    .argument('<files...>', 'CSV, TSV, XLSX or Parquet files; "-" reads one from the pipe')
    .option('--profile <file>', 'source profile, or datapackage.json, that says how to read it')
    .option('--study <file>', 'study whose own attributes, terms and subject are to be used too')
    .option('--sheet <name>', 'sheet of an XLSX file; needed where more than one holds anything')
    .addOption(
      new Option(
        '--pieces <which>',
        'of cells with the sizes of several pieces, the one to read (kept in the profile)',
      ).choices(PIECES),
    )
    .option('--accept-suggestions', 'take every suggestion that is beyond doubt; the others are listed')
    .option(
      '--as-is',
      'take the columns that are not recognised as they are: numbers, kinds, yes/no or text, as their cells show',
    )
    .option(
      '--counts [attribute]',
      'a table of counts, one row a place and one column a kind; of what attribute the kinds are, if one is recorded',
    )
    .option('--base <header>', 'with --counts: the column of totals of which the others give per cent')
    .option('--save-profile [file]', 'write the profile; beside the table unless a file is named')
    .option(
      '--save-study [file]',
      'write a study to begin with, and the profiles; beside the table unless a file is named',
    )
    .option('--ledger <file>', 'write every change, flag and riddle as CSV')
    .option('--json', 'print the reading as JSON')
    .action(async (paths: readonly string[], options: ReadOptions) => {
      refuseForSeveral(paths, options);
      const read = await readAll(paths, options, terminal);
      const { register, attributes } = read;
      const readings = withRoles(read.tables.map(({ reading }) => reading));
      const tables = read.tables.map((one, place) => ({ ...one, reading: readings[place] }));
      const [reading] = readings as [SourceReading, ...SourceReading[]];
      const table = readings.length === 1 ? reading.table : combineSources(readings, register).table;
      const witness = readings.map((one) => witnessCandidates(one, register));
      const written = await writeAsked(tables, options, table, attributes);
      if (readings.length > 1) {
        const found = together(readings, table);
        if (options.json) {
          const told = readings.map((one, place) => ({
            ...withoutTable(asShown(one)),
            witness: witness[place],
          }));
          printJson(terminal, { tables: told, ...found, attributes });
        } else printTogether(terminal, readings, found);
      } else printOne(terminal, reading, witness[0] ?? [], read, options);
      if (!options.json)
        for (const [place, { name }] of readings.entries()) printWitness(terminal, name, witness[place]);
      if (!options.json) printAsIs(terminal, read.proposals);
      const say = options.json ? terminal.err : terminal.out;
      const notes = options.saveStudy === undefined ? [] : witnessNotes(readings, witness);
      for (const line of [...written, ...notes]) say(`${line}\n`);
      const [fault] = readings.flatMap(({ faults }) => faults);
      if (fault !== undefined) {
        terminal.err(`${new InputError(fault.what, fault.where, fault.mend).message}\n`);
        setStatus(STATUS.badInput);
      }
    });

interface AllRead {
  readonly tables: readonly ReadTable[];
  readonly register: Register;
  readonly proposals: readonly Proposal[];
  /** Attributes of the reader's own that the columns were taken as. */
  readonly attributes: readonly AttributeDefinition[];
}

/** Reads the tables one after another; an attribute that one of them has made serves the next ones too. */
async function readAll(paths: readonly string[], options: ReadOptions, terminal: Terminal): Promise<AllRead> {
  let register = await registerFor(options.study);
  const tables: ReadTable[] = [];
  const proposals: Proposal[] = [];
  for (const [place, path] of paths.entries()) {
    if (paths.length > 1) terminal.progress(place / paths.length, `reading ${path}`);
    const named = await profileFor(path, options.profile);
    if (options.counts === true) register = withKinds(register);
    const profile = withCounts(withPieces(named.profile, options.pieces), options);
    const settings = {
      name: path === FROM_PIPE ? 'stdin' : basename(path),
      register,
      ...(profile === undefined ? {} : { profile }),
      ...(options.acceptSuggestions ? { acceptSuggestions: true } : {}),
    };
    let reading = await readTable(path, options.sheet, settings);
    if (options.asIs) {
      const own = await readAsIs(reading, path, options.sheet, settings);
      ({ reading, register } = own);
      append(proposals, own.proposals);
    }
    const stands =
      !named.packaged &&
      options.pieces === undefined &&
      options.counts === undefined &&
      !options.acceptSuggestions &&
      !options.asIs;
    tables.push({
      path,
      reading,
      ...(stands && options.profile !== undefined ? { named: options.profile } : {}),
    });
  }
  terminal.endProgress();
  const attributes = [
    ...(options.counts === true ? [COUNTED_KIND] : []),
    ...proposals.flatMap(({ attribute }) => (attribute === undefined ? [] : [attribute])),
  ];
  return { tables, register, proposals, attributes };
}

function printOne(
  terminal: Terminal,
  read: SourceReading,
  witness: readonly WitnessCandidate[],
  { register, proposals }: AllRead,
  options: ReadOptions,
): void {
  const reading = asShown(read);
  const quality = reportQuality(reading.table, register, reading.columns);
  const terms = unknownTerms(reading, register).filter(({ text }) => text !== '');
  if (options.json) {
    const asIs = options.asIs ? { asIs: proposals } : {};
    printJson(terminal, { ...withoutTable(reading), quality, unknownTerms: terms, witness, ...asIs });
    return;
  }
  printReading(terminal, reading);
  printQuality(terminal, quality, terms, reading, reading.table, register);
}

function withoutTable({ table: _table, grid: _grid, ...rest }: SourceReading) {
  return rest;
}

async function registerFor(studyPath: string | undefined): Promise<Register> {
  if (studyPath === undefined) return defaultRegister();
  // A study knows every analysis; a table alone needs none of them.
  const { loadStudy, studyRegister } = await import('../../study/load.ts');
  return studyRegister(loadStudy(await readText(studyPath), studyPath));
}

import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import type { AttributeDefinition } from '../attributes/definition.ts';
import { InputError } from '../errors.ts';
import type { FragmentTable } from '../fragments/table.ts';
import { writeWholeFiles } from '../report/writing/whole-files.ts';
import { csvPieces } from '../sources/formats/safe-csv.ts';
import type { SourceReading } from '../sources/source-reading.ts';
import { exists } from './files.ts';
import { FROM_PIPE } from './read-table.ts';
import { untilStopped } from './until-stopped.ts';

/** What `thrum read` was asked to write. */
export interface WriteOptions {
  readonly sheet?: string;
  readonly saveProfile?: string | true;
  readonly saveStudy?: string | true;
  readonly ledger?: string;
  /** The study whose words are used; it is read, never written. */
  readonly study?: string;
}

/** One table that was read, and the profile that reads it so already, where there is one. */
export interface ReadTable {
  readonly path: string;
  readonly reading: SourceReading;
  readonly named?: string;
}

/**
 * Writes what was asked for. A study, and the profiles that go with it, never over one that is there.
 *
 * @param tables in the order in which they were named; `--save-profile FILE` is for one of them alone.
 * @param table all of them combined.
 * @param attributes of the reader's own.
 * @returns lines that say what was written.
 */
export async function writeAsked(
  tables: readonly ReadTable[],
  options: WriteOptions,
  table: FragmentTable,
  attributes: readonly AttributeDefinition[],
): Promise<string[]> {
  const [first] = tables as readonly [ReadTable, ...ReadTable[]];
  refusePipe(first.path, options);
  const begun = studyFile(tables, options.saveStudy);
  if (begun !== undefined) await refuseExisting(begun, 'name another file with --save-study');
  const files: [file: string, text: string | Iterable<string>][] = [];
  if (options.ledger !== undefined) {
    const { applyRestrictions } = await import('../study/restriction/restrict.ts');
    const { ledgerRows } = await import('../report/ledger-rows.ts');
    // Names and places of what a source withholds are in no file that may be handed on.
    const entries = applyRestrictions(
      { table, duplicates: [], faults: [], unmatched: [] },
      tables.flatMap(({ reading }) => reading.ledger),
    ).ledger;
    files.push([options.ledger, csvPieces(ledgerRows(entries))]);
  }
  const profiles: string[] = [];
  for (const { path, reading, named } of tables) {
    const own = beside(true, path, '.profile.json');
    const saved =
      tables.length === 1 ? beside(options.saveProfile, path, '.profile.json') : options.saveProfile && own;
    const profile = saved ?? named ?? own;
    if (begun !== undefined && saved === undefined && named === undefined)
      await refuseExisting(own, 'read by it with --profile, or write it anew with --save-profile');
    if (saved !== undefined || (begun !== undefined && named === undefined))
      files.push([profile, `${JSON.stringify(reading.profile, null, 2)}\n`]);
    profiles.push(profile);
  }
  const notes: string[] = [];
  if (begun !== undefined) {
    const from = (file: string) =>
      relative(dirname(resolve(begun)), resolve(file))
        .split(sep)
        .join('/');
    const sheet = options.sheet === undefined ? {} : { sheet: options.sheet };
    const sources = tables.map(({ path }, place) => ({
      file: from(path),
      profile: from(profiles[place]),
      ...sheet,
    }));
    const title = tables.length === 1 ? stem(first.path) : `${tables.length} tables`;
    const { startStudy } = await import('../study/start-study.ts');
    const study = startStudy({ title, sources, attributes }, table);
    files.push([begun, `${JSON.stringify(study, null, 2)}\n`]);
    if (study.analyses?.length === 0)
      notes.push(
        'No column is recognised that a question could be asked of; take the columns as they are with --as-is, or name attributes in the profile.',
      );
  }
  // The profile that a table is read by may be written anew; tables and the study never.
  const inputs = [...tables.map(({ path }) => path), ...(options.study === undefined ? [] : [options.study])];
  await untilStopped((stop) => writeWholeFiles(files, { inputs, stop }));
  return [...files.map(([file]) => `Written: ${file}`), ...notes];
}

/** One table's study stands beside it; that of several stands beside the first, and is called study.json. */
function studyFile(tables: readonly ReadTable[], asked: string | true | undefined): string | undefined {
  const [first] = tables as readonly [ReadTable, ...ReadTable[]];
  if (tables.length === 1) return beside(asked, first.path, '.study.json');
  return asked === true ? join(dirname(first.path), 'study.json') : asked;
}

/** What comes through a pipe has no place beside which anything could be written. */
function refusePipe(path: string, { saveProfile, saveStudy }: WriteOptions): void {
  if (path !== FROM_PIPE) return;
  if (saveStudy !== undefined)
    throw new InputError(
      'a study must name its table, and this one came through a pipe',
      { file: 'stdin' },
      'save the table as a file and read that',
    );
  if (saveProfile === true)
    throw new InputError(
      'a table from a pipe has no folder beside which to write its profile',
      { file: 'stdin' },
      'name a file: --save-profile FILE',
    );
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

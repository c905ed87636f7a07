import { basename, dirname, resolve } from 'node:path';
import type { Register } from '../attributes/definition.ts';
import { extendRegister } from '../attributes/register.ts';
import { InputError } from '../errors.ts';
import { type Proposal, proposeAsIs, withOwnColumns } from '../sources/columns/propose-attributes.ts';
import { readDataPackage } from '../sources/formats/datapackage.ts';
import { readParquet } from '../sources/formats/parquet.ts';
import { parseJson } from '../sources/formats/parse-json.ts';
import { readWorkbook } from '../sources/formats/workbook.ts';
import { checkProfile, type SourceProfile } from '../sources/profile/profile.ts';
import { type ReadOptions as ReadSourceOptions, readSource, readTexts } from '../sources/read-source.ts';
import type { SourceReading } from '../sources/source-reading.ts';
import { isParquet, isWorkbook } from '../study/workbooks.ts';
import { readBytes, readText } from './files.ts';

/** The name under which a table that comes through a pipe is known. */
export const FROM_PIPE = '-';

export interface NamedProfile {
  readonly profile?: SourceProfile;
  /** It is what a data package says of the table. */
  readonly packaged: boolean;
}

/** The profile that is named, or what a data package says of this table. */
export async function profileFor(table: string, path: string | undefined): Promise<NamedProfile> {
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

/** Reads a table from disk or, for "-", from the pipe; a spreadsheet goes through the same reading as a CSV. */
export async function readTable(
  path: string,
  sheet: string | undefined,
  options: ReadSourceOptions,
): Promise<SourceReading> {
  const bytes = path === FROM_PIPE ? await readPipe() : await readBytes(path, options.name);
  return readTableBytes(bytes, path, sheet, options);
}

export async function readTableBytes(
  bytes: Uint8Array,
  path: string,
  sheet: string | undefined,
  options: ReadSourceOptions,
): Promise<SourceReading> {
  if (/\.json$/i.test(path))
    throw new InputError(
      'this is a JSON file, and a table is meant',
      { file: options.name },
      'name a CSV, TSV, XLSX or Parquet file, or compute a study with "thrum run"',
    );
  if (!isWorkbook(path)) {
    if (sheet === undefined)
      return isParquet(path)
        ? readTexts(await readParquet(bytes, options.name), options)
        : readSource(bytes, options);
    throw new InputError('only a workbook has sheets', { file: options.name }, 'leave --sheet out');
  }
  const { grid, merged } = await readWorkbook(bytes, options.name, sheet);
  return readTexts(grid, { ...options, merged });
}

async function readPipe(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Uint8Array);
  return new Uint8Array(Buffer.concat(chunks));
}

/** A reading in which every column that nothing claims was taken as it is. */
export interface AsIsReading {
  readonly reading: SourceReading;
  readonly register: Register;
  readonly proposals: readonly Proposal[];
}

/** Takes the columns that a first reading left open as attributes of the reader's own, and reads again. */
export async function readAsIs(
  first: SourceReading,
  path: string,
  sheet: string | undefined,
  options: ReadSourceOptions,
): Promise<AsIsReading> {
  const proposals = proposeAsIs(first, options.register);
  const attributes = proposals.flatMap(({ attribute }) => (attribute === undefined ? [] : [attribute]));
  const register = extendRegister(options.register, { attributes });
  const profile = withOwnColumns(first.profile, proposals);
  const again = { ...options, register, profile };
  if (path === FROM_PIPE) return { reading: readTexts(first.grid, again), register, proposals };
  return { reading: await readTable(path, sheet, again), register, proposals };
}

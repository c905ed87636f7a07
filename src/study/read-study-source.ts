import type { Register } from '../attributes/definition.ts';
import { InputError } from '../errors.ts';
import { parseJson } from '../sources/formats/parse-json.ts';
import { checkProfile } from '../sources/profile/profile.ts';
import { readSource, readTexts } from '../sources/read-source.ts';
import type { LedgerEntry, SourceReading } from '../sources/source-reading.ts';
import type { SourceHead } from './results/results.ts';
import type { Study } from './schema.ts';
import { sha256 } from './sha256.ts';
import { sourceName } from './source-name.ts';
import { isPacked, type Sheets } from './workbooks.ts';

/** One table of a study, read under the profile that the study names. */

type StudySource = Study['sources'][number];

/** @throws InputError for a file that is missing or cannot be read. */
export function readStudySource(
  source: StudySource,
  files: ReadonlyMap<string, Uint8Array>,
  register: Register,
  sheets: Sheets,
  names: Study['names'],
): SourceReading {
  const profile =
    source.profile === undefined
      ? undefined
      : checkProfile(parseJson(textOf(files, source.profile), source.profile), source.profile);
  const chosen =
    source.role === undefined ? profile : { ...checkProfile({}, source.file), ...profile, role: source.role };
  const options = {
    name: sourceName(source),
    register,
    names,
    ...(chosen === undefined ? {} : { profile: chosen }),
  };
  const bytes = bytesOf(files, source.file);
  if (!isPacked(source.file)) return readSource(bytes, options);
  const opened = sheets.get(options.name)?.reading;
  if (opened === undefined) throw new Error(`${source.file} was not opened beforehand`);
  if (opened instanceof InputError) throw opened;
  return readTexts(opened.grid, { ...options, merged: opened.merged });
}

/** Stands for a source that cannot be read: nothing but the reason. */
export function unreadable(source: StudySource, fault: InputError, register: Register): SourceReading {
  const reading = readTexts([], { name: sourceName(source), register });
  const { what, where, mend } = fault;
  return { ...reading, role: source.role ?? reading.role, faults: [{ what, where, mend }] };
}

export function sourceHead(reading: SourceReading, bytes: Uint8Array): SourceHead {
  const count = (level: LedgerEntry['level']) =>
    reading.ledger.filter((entry) => entry.level === level).length;
  return {
    file: reading.name,
    role: reading.role,
    sha256: sha256(bytes),
    rowsRead: reading.rowsRead,
    rowsKept: reading.rowsKept,
    rowsSetAside: reading.rowsSetAside.length,
    ledger: { read: count('read'), flagged: count('flagged'), notUnderstood: count('not-understood') },
  };
}

function bytesOf(files: ReadonlyMap<string, Uint8Array>, name: string): Uint8Array {
  const bytes = files.get(name);
  if (bytes !== undefined) return bytes;
  throw new InputError(
    'the file is missing',
    { file: name },
    'put it beside the study file, or correct its name in the study',
  );
}

function textOf(files: ReadonlyMap<string, Uint8Array>, name: string): string {
  return new TextDecoder('utf-8').decode(bytesOf(files, name));
}

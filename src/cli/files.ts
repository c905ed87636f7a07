import { readFile, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { InputError } from '../errors.ts';
import { loadStudy, studyFiles } from '../study/load.ts';
import type { Study } from '../study/schema.ts';
import { openWorkbooks, type Sheets } from '../study/workbooks.ts';

/** A study with everything that it names, as it lies on disk. */
export interface StudyOnDisk {
  readonly path: string;
  readonly study: Study;
  /** Bytes by the paths that the study writes. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly sheets: Sheets;
}

/** Reads a study file and the files it names. @throws InputError naming the file that is at fault. */
export async function readStudy(path: string): Promise<StudyOnDisk> {
  if (TABLE.test(path))
    throw new InputError(
      'this is a table, and a study file (JSON) is meant',
      { file: path },
      '"thrum read TABLE --save-study" writes one to begin with',
    );
  const study = loadStudy(await readText(path, path), path);
  const folder = dirname(resolve(path));
  const files = new Map<string, Uint8Array>();
  for (const name of studyFiles(study)) {
    files.set(name, await readBytes(join(folder, name), name));
  }
  return { path, study, files, sheets: await openWorkbooks(study, files) };
}

const TABLE = /\.(?:csv|tsv|xlsx)$/i;

/** @param shown how the file is called in messages. */
export async function readBytes(path: string, shown = path): Promise<Uint8Array> {
  try {
    return new Uint8Array(await readFile(path));
  } catch (fault) {
    throw readFault(fault as NodeJS.ErrnoException, shown);
  }
}

export async function readText(path: string, shown = path): Promise<string> {
  const bytes = await readBytes(path, shown);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new InputError('the file is not UTF-8 text', { file: shown }, 'save it as UTF-8 text');
  }
}

export async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}

function readFault(fault: NodeJS.ErrnoException, file: string): InputError {
  if (fault.code === 'ENOENT' || fault.code === 'ENOTDIR') {
    return new InputError('there is no such file', { file }, 'check the name and the folder');
  }
  if (fault.code === 'EISDIR')
    return new InputError('this is a folder, not a file', { file }, 'name a file in it');
  if (fault.code === 'EACCES' || fault.code === 'EPERM') {
    return new InputError('the file may not be read', { file }, 'change its permissions');
  }
  return new InputError(
    `the file cannot be read (${fault.code ?? fault.message})`,
    { file },
    'check the disk',
  );
}

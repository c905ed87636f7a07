import { dirname, resolve } from 'node:path';
import { InputError } from '../errors.ts';
import { loadStudy, studyFiles } from '../study/load.ts';
import type { Study } from '../study/schema.ts';
import { isPacked, openWorkbooks, type Sheets } from '../study/workbooks.ts';
import { readBytes, readText } from './files.ts';
import { foreseeMemory } from './memory-foreseen.ts';
import { pathOfNamed, refuseForeignFiles } from './study-paths.ts';

/** A study with everything that it names, as it lies on disk. */
export interface StudyOnDisk {
  readonly path: string;
  readonly study: Study;
  /** Bytes by the paths that the study writes. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly sheets: Sheets;
  /** Paths of the study and of all that was read for it. */
  readonly inputs: readonly string[];
  /** What reading it will take, where that is much. */
  readonly large: string | null;
}

export interface ReadStudyOptions {
  /** Whether the study may name files outside its own folder. */
  readonly allowOutside?: boolean | undefined;
}

/** Reads a study file and the files it names. @throws InputError naming the file that is at fault. */
export async function readStudy(
  path: string,
  { allowOutside = false }: ReadStudyOptions = {},
): Promise<StudyOnDisk> {
  if (TABLE.test(path))
    throw new InputError(
      'this is a table, and a study file (JSON) is meant',
      { file: path },
      '"thrum read TABLE --save-study" writes one to begin with',
    );
  const study = loadStudy(await readText(path, path), path);
  const folder = dirname(resolve(path));
  const names = studyFiles(study);
  await refuseForeignFiles(path, folder, names, allowOutside);
  const files = new Map<string, Uint8Array>();
  for (const name of names) files.set(name, await readBytes(pathOfNamed(folder, name), name));
  const tables = study.sources.filter(({ file }) => !isPacked(file)).map(({ file }) => file);
  const large = foreseeMemory([...new Set(tables)].map((file) => files.get(file) ?? new Uint8Array()));
  const inputs = [path, ...names.map((name) => pathOfNamed(folder, name))];
  return { path, study, files, sheets: await openWorkbooks(study, files), inputs, large };
}

const TABLE = /\.(?:csv|tsv|xlsx|parquet)$/i;

import { mkdir, readdir, rmdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { InputError } from '../../errors.ts';
import { type FileContent, type Finished, piecesOf } from '../file-content.ts';
import { commit, type FileChange, finishLeft } from './commit.ts';
import { clearDesk, type DeskOptions, isDesk, leaveDesk, leftDesks, takeDesk } from './desk.ts';
import { stopIfAsked, writeFault } from './fault.ts';
import { writeFlushed } from './flush.ts';
import { isInside, MANIFEST, manifestText, readManifest } from './manifest.ts';
import { fileHash, refuseInputs, refuseOdd, standing } from './standing.ts';

export interface FileSet {
  /** Name in the folder, with forward slashes, -> what it holds; made and written one after the other. */
  readonly files: ReadonlyMap<string, FileContent>;
  readonly writtenBy: string;
  /** Title of the study, for whoever finds the folder. */
  readonly study: string;
}

export interface WriteSetOptions extends DeskOptions {
  /** Paths that the run read from and must not write over. */
  readonly inputs?: readonly string[];
}

export interface SetWritten {
  readonly written: readonly string[];
  /** Files of the run before that this one does not make. */
  readonly takenAway: readonly string[];
  /** What else lies in the folder: files of others, and files of the run before that were changed since. */
  readonly stays: readonly string[];
  /** Whether a run that was killed while it put its files in place was finished first. */
  readonly finished: boolean;
}

/**
 * Writes a run's files into a folder: all of them or none. They are laid out in a hidden folder inside,
 * flushed, and put in place by renaming, in a fraction of a second; files of the run before, known by their
 * hashes, go. A file that is not known is never touched: where one stands in the way, nothing is written.
 *
 * @throws InputError naming what stands in the way, or why the disk refuses.
 */
export async function writeSet(
  folder: string,
  { files, writtenBy, study }: FileSet,
  { inputs = [], ...waiting }: WriteSetOptions = {},
): Promise<SetWritten> {
  const odd = [...files.keys()].find((name) => !isInside(name) || isDesk(name.split('/')[0] ?? ''));
  if (odd !== undefined) throw new InputError('no file can have that name', { file: odd }, 'give another id');
  return await atDesk(folder, waiting, async (desk, mended) => {
    const known = await readManifest(folder);
    const finished = new Map<string, Finished>();
    const lay = async (name: string, content: FileContent) => {
      stopIfAsked(waiting.stop);
      finished.set(name, await writeFlushed(join(desk, 'new', name), piecesOf(content, finished), waiting));
    };
    for (const [name, content] of files) await lay(name, content);
    const hashes = Object.fromEntries([...finished].map(([name, { hash }]) => [name, hash]));
    await lay(MANIFEST, manifestText({ writtenBy, study, files: hashes }));
    const changes = await changesTo(folder, hashes, known.files, inputs);
    await refuseOdd(join(folder, MANIFEST));
    const takenAway = changes.filter(({ after }) => after === null).map(({ name }) => name);
    const manifest = {
      name: MANIFEST,
      before: await fileHash(join(folder, MANIFEST)),
      after: finished.get(MANIFEST)?.hash ?? null,
    };
    stopIfAsked(waiting.stop);
    await commit(folder, desk, [...changes, manifest]);
    return { written: [...files.keys()], takenAway, stays: await othersIn(folder, hashes), finished: mended };
  });
}

/**
 * Whether a folder can be written to, tried before the long computing: it is made where there is none and
 * taken away again. @throws InputError where it cannot be, or where a file in it stands in the way.
 *
 * @param names files that will be written for certain.
 */
export async function tryFolder(
  folder: string,
  names: readonly string[],
  options: DeskOptions = {},
): Promise<void> {
  await atDesk(folder, options, async () => {
    const known = await readManifest(folder);
    for (const name of names) await refuseStranger(folder, name, known.files[name]);
  });
}

/** Works at the desk of a folder; a folder that was made for it and stays empty goes again. */
async function atDesk<T>(
  folder: string,
  options: DeskOptions,
  work: (desk: string, finished: boolean) => Promise<T>,
): Promise<T> {
  let made: string | undefined;
  try {
    await refuseOddFolder(folder);
    made = await mkdir(folder, { recursive: true });
    const desk = await takeDesk(folder, options);
    try {
      let finished = false;
      for (const left of await leftDesks(folder)) {
        finished = (await finishLeft(folder, left)) || finished;
        await clearDesk(left);
      }
      return await work(desk, finished);
    } finally {
      await leaveDesk(folder, desk);
    }
  } catch (fault) {
    throw writeFault(fault, folder);
  } finally {
    if (made !== undefined) await removeEmpty(folder, made);
  }
}

async function refuseOddFolder(folder: string): Promise<void> {
  if (folder.trim() === '') throw new InputError('no folder is named', {}, 'name one with --out');
  const found = await standing(folder);
  if (found === 'nothing' || found === 'folder') return;
  throw new InputError(
    found === 'link'
      ? 'a symbolic link stands there, and nothing is written through links'
      : 'a file stands where a folder is meant',
    { file: folder },
    'name another folder',
  );
}

/** From the folder up to the first one that was made. */
async function removeEmpty(folder: string, made: string): Promise<void> {
  for (let at = resolve(folder); ; at = dirname(at)) {
    const gone = await rmdir(at).then(
      () => true,
      () => false,
    );
    if (!gone || at === resolve(made) || dirname(at) === at) return;
  }
}

async function changesTo(
  folder: string,
  hashes: Readonly<Record<string, string>>,
  known: Readonly<Record<string, string>>,
  inputs: readonly string[],
): Promise<FileChange[]> {
  const changes: FileChange[] = [];
  for (const [name, after] of Object.entries(hashes)) {
    await refuseInputs(join(folder, name), inputs);
    const before = await refuseStranger(folder, name, known[name], after);
    changes.push({ name, before, after });
  }
  for (const [name, hash] of Object.entries(known)) {
    if (name in hashes || (await standing(join(folder, name))) !== 'file') continue;
    await refuseInputs(join(folder, name), inputs);
    if ((await fileHash(join(folder, name))) === hash) changes.push({ name, before: hash, after: null });
  }
  return changes;
}

/** @returns the hash of our own file there, null for none. @throws InputError for what is not ours. */
async function refuseStranger(
  folder: string,
  name: string,
  known: string | undefined,
  wanted?: string,
): Promise<string | null> {
  const parts = name.split('/');
  for (let depth = 1; depth < parts.length; depth++)
    await refuseOddFolder(join(folder, ...parts.slice(0, depth)));
  const path = join(folder, name);
  if ((await refuseOdd(path)) === 'nothing') return null;
  const hash = await fileHash(path);
  if (hash === known || hash === wanted) return hash;
  throw new InputError(
    known === undefined
      ? 'this file is of somebody else, and a result would be written over it'
      : 'this file was changed since a run wrote it, and a result would be written over it',
    { file: path },
    'move it away, or name another folder with --out',
  );
}

/** What lies in the folder, and in the folders of results, that this run did not write. */
async function othersIn(folder: string, hashes: Readonly<Record<string, string>>): Promise<string[]> {
  const own = new Set([MANIFEST, ...Object.keys(hashes)]);
  const folders = new Set(Object.keys(hashes).map((name) => (name.includes('/') ? name.split('/')[0] : '')));
  const found: string[] = [];
  for (const inner of new Set(['', ...folders])) {
    const names = await readdir(join(folder, inner ?? '')).catch(() => []);
    for (const name of names.sort()) {
      const path = inner === '' ? name : `${inner}/${name}`;
      if (!own.has(path) && !isDesk(name) && !folders.has(path)) found.push(path);
    }
  }
  return found;
}

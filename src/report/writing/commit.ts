import { mkdir, readFile, rename, rm, rmdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { InputError } from '../../errors.ts';
import { keepForLater } from './desk.ts';
import { isCode } from './fault.ts';
import { flushFolder, keepCopy, writeFlushed } from './flush.ts';
import { fileHash } from './standing.ts';

/** One place in the folder: what stood there and what is to stand there, as hashes; null for nothing. */
export interface FileChange {
  readonly name: string;
  readonly before: string | null;
  readonly after: string | null;
}

const JOURNAL = 'commit.json';

/**
 * Puts what lies on the desk in place. The list of changes is on the disk before the first of them, so that
 * a run that is killed half-way is finished by the next one; a fault on the way takes every change back.
 *
 * @param desk holds the new files under `new/`.
 */
export async function commit(folder: string, desk: string, changes: readonly FileChange[]): Promise<void> {
  await writeFlushed(join(desk, JOURNAL), [JSON.stringify(changes)]);
  await flushFolder(desk);
  const done: FileChange[] = [];
  try {
    for (const change of changes) {
      if (change.before !== null) await keepCopy(join(folder, change.name), join(desk, 'was', change.name));
      done.push(change);
      await apply(folder, desk, change);
    }
  } catch (fault) {
    let back = true;
    for (const change of done.reverse()) back = (await takeBack(folder, desk, change)) && back;
    // Where the disk refuses even that, the desk stays with all that stood there, for the next run to finish.
    if (back) await rm(join(desk, JOURNAL), { force: true });
    else await keepForLater(folder, desk);
    await settle(folder, changes);
    throw fault;
  }
  await settle(folder, changes);
  await rm(join(desk, JOURNAL), { force: true });
}

/**
 * Finishes what a killed run had begun to put in place; one that had only laid out its files is forgotten.
 *
 * @returns whether anything was finished.
 * @throws InputError where a file in the way was changed since, so that neither is lost.
 */
export async function finishLeft(folder: string, desk: string): Promise<boolean> {
  const changes = await journalOf(desk);
  if (changes === null) return false;
  for (const { name, before, after } of changes) {
    const now = await fileHash(join(folder, name));
    if (now !== before && now !== after)
      throw new InputError(
        'an earlier run was stopped while it put its files in place, and this one was changed since',
        { file: join(folder, name) },
        'move it away and run again',
      );
  }
  for (const change of changes)
    if ((await fileHash(join(folder, change.name))) !== change.after) await apply(folder, desk, change);
  await settle(folder, changes);
  return true;
}

async function apply(folder: string, desk: string, { name, after }: FileChange): Promise<void> {
  const place = join(folder, name);
  if (after === null) await rm(place, { force: true });
  else {
    await mkdir(dirname(place), { recursive: true });
    await rename(join(desk, 'new', name), place);
  }
}

async function takeBack(folder: string, desk: string, { name, before, after }: FileChange): Promise<boolean> {
  const place = join(folder, name);
  try {
    if (after !== null && (await fileHash(place)) === after && before !== after) {
      await mkdir(dirname(join(desk, 'new', name)), { recursive: true });
      await rename(place, join(desk, 'new', name));
    }
    if (before !== null && (await fileHash(place)) === null) await rename(join(desk, 'was', name), place);
    return true;
  } catch {
    return false;
  }
}

/** Folders that the changes emptied go; the rest is flushed. */
async function settle(folder: string, changes: readonly FileChange[]): Promise<void> {
  const folders = new Set(changes.map(({ name }) => dirname(name)));
  for (const name of folders) {
    const removed =
      name !== '.' &&
      (await rmdir(join(folder, name)).then(
        () => true,
        () => false,
      ));
    if (!removed) await flushFolder(join(folder, name));
  }
  await flushFolder(folder);
}

async function journalOf(desk: string): Promise<readonly FileChange[] | null> {
  try {
    return JSON.parse(await readFile(join(desk, JOURNAL), 'utf8')) as readonly FileChange[];
  } catch (fault) {
    if (fault instanceof SyntaxError || isCode(fault, 'ENOENT', 'ENOTDIR')) return null;
    throw fault;
  }
}

import { randomBytes } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { InputError } from '../../errors.ts';
import { isCode, stopIfAsked } from './fault.ts';

/**
 * The hidden folder in which a run lays out its files before it puts them in place. There is one at a time
 * in a folder of results, so it keeps two runs apart as well.
 */
export const DESK = '.thrum-writing';
const LEFT = `${DESK}.left-`;
/** A desk that is signed before it takes its place, so that none ever stands unsigned. */
const FRESH = `${DESK}.fresh-`;

interface Owner {
  readonly process: number;
  readonly host: string;
}

export interface DeskOptions {
  /** Milliseconds to wait for another run to be done. */
  readonly patience?: number | undefined;
  readonly stop?: AbortSignal | undefined;
  /** Told once, when another run is being waited for. */
  readonly onWait?: (() => void) | undefined;
}

const PAUSE = 50;

/**
 * Takes the desk of a folder, waiting for a run that is at it. What a run that was killed left on it is put
 * aside, see `leftDesks`.
 *
 * @returns its path.
 * @throws InputError where another run does not end.
 */
export async function takeDesk(
  folder: string,
  { patience = 30_000, stop, onWait }: DeskOptions = {},
): Promise<string> {
  const desk = join(folder, DESK);
  const fresh = join(folder, `${FRESH}${randomName()}`);
  try {
    for (let waited = 0; ; waited += PAUSE) {
      stopIfAsked(stop);
      if (await takePlace(folder, fresh, desk)) return desk;
      if (await isDeserted(desk)) {
        await putAside(folder, desk);
        continue;
      }
      if (waited === TOLD_AFTER) onWait?.();
      if (waited >= patience)
        throw new InputError(
          'another run is writing into this folder',
          { file: folder },
          `wait for it, or take "${DESK}" in it away where none is running`,
        );
      await wait(PAUSE);
    }
  } finally {
    await rm(fresh, { recursive: true, force: true });
  }
}

/** Signs a desk and puts it in place; false where another stands there. */
async function takePlace(folder: string, fresh: string, desk: string): Promise<boolean> {
  const owner = JSON.stringify({ process: process.pid, host: hostname() } satisfies Owner);
  // The folder may be another run's, which had only tried whether it could be made, and goes again.
  await mkdir(folder, { recursive: true });
  try {
    // Not recursively: that hides why a disk refuses it.
    await mkdir(fresh).catch((fault: unknown) => {
      if (!isCode(fault, 'EEXIST')) throw fault;
    });
    await writeFile(join(fresh, 'owner.json'), owner);
  } catch (fault) {
    if (isCode(fault, 'ENOENT')) return false;
    throw fault;
  }
  try {
    await rename(fresh, desk);
    return true;
  } catch (fault) {
    if (isCode(fault, ...TAKEN)) return false;
    throw fault;
  }
}

/** What systems answer to a rename onto a folder that holds something, and where the folder has gone meanwhile. */
const TAKEN = ['ENOTEMPTY', 'EEXIST', 'EPERM', 'ENOENT'] as const;

const TOLD_AFTER = 500;

async function isDeserted(desk: string): Promise<boolean> {
  const owner = await ownerOf(desk);
  if (owner === 'gone') return false;
  if (owner === null) return true;
  if (owner.host !== hostname()) return false;
  try {
    process.kill(owner.process, 0);
    return false;
  } catch (fault) {
    return !isCode(fault, 'EPERM');
  }
}

async function ownerOf(desk: string): Promise<Owner | null | 'gone'> {
  try {
    const { process: id, host } = JSON.parse(await readFile(join(desk, 'owner.json'), 'utf8')) as Owner;
    return Number.isInteger(id) && typeof host === 'string' ? { process: id, host } : null;
  } catch {
    return (await readdir(desk).catch(() => null)) === null ? 'gone' : null;
  }
}

/** Of several runs that find a deserted desk, one gets to rename it; a fresh desk taken by mistake goes back. */
async function putAside(folder: string, desk: string): Promise<void> {
  const aside = leftName(folder);
  try {
    await rename(desk, aside);
  } catch (fault) {
    if (isCode(fault, 'ENOENT')) return;
    throw fault;
  }
  if (await isDeserted(aside)) return;
  try {
    await rename(aside, desk);
  } catch (fault) {
    if (!isCode(fault, ...TAKEN)) throw fault;
  }
}

function leftName(folder: string): string {
  return join(folder, `${LEFT}${randomName()}`);
}

function randomName(): string {
  return randomBytes(6).toString('hex');
}

/** Leaves a desk with its list of changes for the next run. */
export async function keepForLater(folder: string, desk: string): Promise<void> {
  await rename(desk, leftName(folder));
}

/** Desks of runs that were killed, put aside, and those that never came to their place. */
export async function leftDesks(folder: string): Promise<string[]> {
  const names = await readdir(folder);
  const left = names.filter((name) => name.startsWith(LEFT)).map((name) => join(folder, name));
  for (const name of names.filter((one) => one.startsWith(FRESH))) {
    const fresh = join(folder, name);
    if (await isDeserted(fresh)) left.push(fresh);
  }
  return left;
}

export async function clearDesk(desk: string): Promise<void> {
  await rm(desk, { recursive: true, force: true });
}

/**
 * Leaves the desk to the next run. It is moved away before it is emptied: once it is empty another run may put its own
 * in its place, which must not be emptied too.
 */
export async function leaveDesk(folder: string, desk: string): Promise<void> {
  const aside = leftName(folder);
  try {
    await rename(desk, aside);
  } catch (fault) {
    // It was kept for later, under another name.
    if (isCode(fault, 'ENOENT')) return;
    throw fault;
  }
  await clearDesk(aside);
}

/** Whether a name in a folder of results is one of the hidden folders used while writing. */
export function isDesk(name: string): boolean {
  return name === DESK || name.startsWith(LEFT) || name.startsWith(FRESH);
}

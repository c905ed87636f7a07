import { mkdir, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

export const ROOT = new URL('..', import.meta.url).pathname;

/** What the product is made of: whatever is made of it is made again when anything of this is younger. */
const MADE_OF = ['src', 'datasets/demo'];

/** For what is made for tests alone: nothing of it goes into a package or a commit. */
export const KEPT = join(ROOT, 'node_modules/.cache/thrum-tests');

/**
 * Makes what several test files lean on once for all workers, and again when it is older than what it is made of.
 *
 * @param mark the file that is written last
 */
export async function madeOnce(mark: string, make: () => Promise<void>): Promise<void> {
  // Not beside the mark: a bundler empties its folder.
  const lock = join(KEPT, `${relative(ROOT, mark).replaceAll('/', '-')}.being-made`);
  await mkdir(KEPT, { recursive: true });
  for (;;) {
    try {
      await writeFile(lock, String(process.pid), { flag: 'wx' });
      break;
    } catch {
      // Another worker is at it, unless it was stopped and left its lock behind.
      if (!(await isAlive(lock))) await rm(lock, { force: true });
      await wait(200);
    }
  }
  try {
    if (!(await isFresh(mark))) await make();
  } finally {
    await rm(lock, { force: true });
  }
}

async function isFresh(mark: string): Promise<boolean> {
  const made = await modified(mark);
  if (made === null) return false;
  const newest = await Promise.all(MADE_OF.map((folder) => newestIn(join(ROOT, folder))));
  return Math.max(...newest) < made;
}

async function isAlive(lock: string): Promise<boolean> {
  try {
    process.kill(Number(await readFile(lock, 'utf8')), 0);
    return true;
  } catch {
    return false;
  }
}

async function modified(path: string): Promise<number | null> {
  try {
    return (await stat(path)).mtimeMs;
  } catch {
    return null;
  }
}

async function newestIn(folder: string): Promise<number> {
  const files = await readdir(folder, { recursive: true, withFileTypes: true });
  const times = await Promise.all(
    files.filter((file) => file.isFile()).map((file) => modified(join(file.parentPath, file.name))),
  );
  return Math.max(0, ...times.map((time) => time ?? 0));
}

import { createHash } from 'node:crypto';
import { copyFile, link, mkdir, open } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Finished } from '../file-content.ts';
import { stopIfAsked } from './fault.ts';

export interface Flushing {
  readonly mode?: number | undefined;
  readonly stop?: AbortSignal | undefined;
}

/**
 * Writes a new file, each piece as it is made, and waits until the disk has it. Fails where one of this name stands.
 *
 * @returns its size and hash.
 */
export async function writeFlushed(
  path: string,
  pieces: Iterable<string | Uint8Array>,
  { mode, stop }: Flushing = {},
): Promise<Finished> {
  await mkdir(dirname(path), { recursive: true });
  const hash = createHash('sha256');
  let bytes = 0;
  const file = await open(path, 'wx', mode);
  try {
    for (const piece of pieces) {
      stopIfAsked(stop);
      const part = typeof piece === 'string' ? Buffer.from(piece) : piece;
      hash.update(part);
      bytes += part.length;
      await file.writeFile(part);
    }
    await file.sync();
  } finally {
    await file.close();
  }
  return { bytes, hash: hash.digest('hex') };
}

/** Waits until the disk has the names in a folder. Windows and some network disks cannot be asked to. */
export async function flushFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch {
    // The names are then written when the system sees fit, as with any other program.
  }
}

/** A second name for a file, so that the first one can be replaced and put back; a copy where disks have no second names. */
export async function keepCopy(path: string, copy: string): Promise<void> {
  await mkdir(dirname(copy), { recursive: true });
  await link(path, copy).catch(() => copyFile(path, copy));
}

import { copyFile, link, mkdir, open } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Writes a new file and waits until the disk has it. Fails where one of this name stands. */
export async function writeFlushed(path: string, content: string | Uint8Array, mode?: number): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const file = await open(path, 'wx', mode);
  try {
    await file.writeFile(content);
    await file.sync();
  } finally {
    await file.close();
  }
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

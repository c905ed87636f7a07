import { createHash } from 'node:crypto';
import { lstat, readFile, stat } from 'node:fs/promises';
import { InputError } from '../../errors.ts';
import { isCode } from './fault.ts';

/** What stands at a place that is to be written to. */
export type Standing = 'nothing' | 'file' | 'folder' | 'link' | 'other';

/** A link is told from what it leads to, so that nothing is written through it. */
export async function standing(path: string): Promise<Standing> {
  try {
    const found = await lstat(path);
    if (found.isSymbolicLink()) return 'link';
    if (found.isDirectory()) return 'folder';
    return found.isFile() ? 'file' : 'other';
  } catch (fault) {
    if (isCode(fault, 'ENOENT', 'ENOTDIR')) return 'nothing';
    throw fault;
  }
}

/** @throws InputError where the place is a link, a folder, a device: anything but a file or nothing. */
export async function refuseOdd(path: string): Promise<'nothing' | 'file'> {
  const found = await standing(path);
  if (found === 'nothing' || found === 'file') return found;
  throw new InputError(ODD[found], { file: path }, 'name another file, or take it away');
}

const ODD = {
  link: 'a symbolic link stands there, and nothing is written through links',
  folder: 'a folder stands where a file is meant',
  other: 'a device or a pipe stands where a file is meant',
} as const;

export function hashOf(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}

/** The hash of a file, null where there is none. */
export async function fileHash(path: string): Promise<string | null> {
  try {
    return hashOf(await readFile(path));
  } catch (fault) {
    if (isCode(fault, 'ENOENT', 'ENOTDIR')) return null;
    throw fault;
  }
}

/**
 * Refuses to write over what is being read.
 *
 * @param inputs paths that the command reads from.
 * @throws InputError naming the file, also where it goes by another name there.
 */
export async function refuseInputs(path: string, inputs: readonly string[]): Promise<void> {
  const target = await identity(path);
  if (target === null) return;
  for (const input of inputs)
    if ((await identity(input)) === target)
      throw new InputError(
        'this file is read from, and would be written over',
        { file: path },
        'name another place to write to',
      );
}

async function identity(path: string): Promise<string | null> {
  try {
    const { dev, ino } = await stat(path, { bigint: true });
    return `${dev}:${ino}`;
  } catch {
    return null;
  }
}

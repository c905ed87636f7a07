import { lstat, realpath } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { InputError } from '../errors.ts';

/** Why a file that a study names is not read without being asked, in the words of a list. */
type Objection = 'outside the folder' | 'an absolute path' | 'a symbolic link' | 'a device or a pipe';

/**
 * A study may come from anybody, and what it names is read and published. So it may name plain files of its
 * own folder, and others only where its reader allows them.
 *
 * @param names paths as the study writes them.
 * @param allowOutside lets files elsewhere and links pass; devices and pipes never.
 * @throws InputError that lists the files.
 */
export async function refuseForeignFiles(
  study: string,
  folder: string,
  names: readonly string[],
  allowOutside: boolean,
): Promise<void> {
  const objections: [name: string, why: Objection][] = [];
  for (const name of names) {
    const why = await objectionTo(folder, name);
    if (why !== null) objections.push([name, why]);
  }
  const listed = (of: typeof objections) => of.map(([name, why]) => `"${name}" (${why})`).join(', ');
  const odd = objections.filter(([, why]) => why === 'a device or a pipe');
  if (odd.length > 0)
    throw new InputError(`the study names what is no file: ${listed(odd)}`, { file: study }, 'name a file');
  if (objections.length === 0 || allowOutside) return;
  throw new InputError(
    `the study names files that are not its own: ${listed(objections)}`,
    { file: study },
    'put them beside the study, or read it with --allow-outside where you trust whoever wrote it',
  );
}

async function objectionTo(folder: string, name: string): Promise<Objection | null> {
  const path = pathOfNamed(folder, name);
  try {
    const found = await lstat(path);
    if (found.isSymbolicLink()) return (await isPlain(path)) ? 'a symbolic link' : 'a device or a pipe';
    if (!found.isFile() && !found.isDirectory()) return 'a device or a pipe';
    const foreign = foreignName(name);
    if (foreign !== null) return foreign;
    const home = await realpath(folder);
    const inside = (await realpath(path)).startsWith(home.endsWith(sep) ? home : home + sep);
    return inside ? null : 'a symbolic link';
  } catch {
    // It is not there, or may not be looked at: reading it will say so.
    return foreignName(name);
  }
}

async function isPlain(path: string): Promise<boolean> {
  try {
    const target = await lstat(await realpath(path));
    return target.isFile() || target.isDirectory();
  } catch {
    return true;
  }
}

/** Whether a name leads out of its folder, by the rules of every system at once: a study travels. */
export function foreignName(name: string): 'outside the folder' | 'an absolute path' | null {
  if (/^(?:[/\\]|[a-zA-Z]:)/.test(name)) return 'an absolute path';
  let depth = 0;
  for (const part of name.split(/[/\\]/)) {
    if (part === '..') depth--;
    else if (part !== '' && part !== '.') depth++;
    if (depth < 0) return 'outside the folder';
  }
  return null;
}

/** Where a file that a study names lies. */
export function pathOfNamed(folder: string, name: string): string {
  return /^(?:[/\\]|[a-zA-Z]:[/\\])/.test(name) ? name : join(folder, name);
}

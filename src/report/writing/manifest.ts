import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { isCode } from './fault.ts';

/** The file in a folder of results that says which of its files a run of Thrum wrote. */
export const MANIFEST = 'thrum-files.json';

const manifest = z.object({
  writtenBy: z.string(),
  study: z.string(),
  files: z.record(z.string(), z.string().regex(/^[0-9a-f]{64}$/)),
});

/** `files`: name, with forward slashes, -> SHA-256 of what was written. */
export type Manifest = z.infer<typeof manifest>;

const NONE: Manifest = { writtenBy: '', study: '', files: {} };

/** What an earlier run wrote into a folder. A list that was damaged vouches for nothing. */
export async function readManifest(folder: string): Promise<Manifest> {
  try {
    const parsed = manifest.safeParse(JSON.parse(await readFile(join(folder, MANIFEST), 'utf8')));
    if (!parsed.success) return NONE;
    const named = Object.entries(parsed.data.files).filter(([name]) => isInside(name));
    return { ...parsed.data, files: Object.fromEntries(named) };
  } catch (fault) {
    if (fault instanceof SyntaxError || isCode(fault, 'ENOENT', 'ENOTDIR', 'EISDIR')) return NONE;
    throw fault;
  }
}

export function manifestText(of: Manifest): string {
  return `${JSON.stringify(of, null, 2)}\n`;
}

/** Whether a name stays in its folder, on every system. */
export function isInside(name: string): boolean {
  const parts = name.split('/');
  return !/[\\:\0]/.test(name) && parts.every((part) => part !== '' && part !== '.' && part !== '..');
}

import { open, stat } from 'node:fs/promises';
import { InputError } from '../errors.ts';

/** The longest text that a JavaScript engine holds is a little longer than this. */
const MOST_BYTES = 512 * 1024 * 1024;

/**
 * Reads a whole file, or a pipe to its end.
 *
 * @param shown how the file is called in messages.
 * @throws InputError for a file that is not there, may not be read or is too large, and for a device.
 */
export async function readBytes(path: string, shown = path): Promise<Uint8Array> {
  try {
    const file = await open(path, 'r');
    try {
      const found = await file.stat();
      if (found.isDirectory()) throw Object.assign(new Error('folder'), { code: 'EISDIR' });
      if (!found.isFile() && !found.isFIFO())
        throw new InputError('this is a device, not a file', { file: shown }, 'name a file');
      if (found.size > MOST_BYTES) throw tooLarge(shown);
      const parts: Buffer[] = [];
      let size = 0;
      for await (const part of file.createReadStream({ highWaterMark: 1 << 20, autoClose: false })) {
        size += (part as Buffer).length;
        if (size > MOST_BYTES) throw tooLarge(shown);
        parts.push(part as Buffer);
      }
      return new Uint8Array(Buffer.concat(parts, size));
    } finally {
      await file.close();
    }
  } catch (fault) {
    if (fault instanceof InputError) throw fault;
    throw readFault(fault as NodeJS.ErrnoException, shown);
  }
}

function tooLarge(file: string): InputError {
  const most = `${MOST_BYTES / 1024 / 1024} MB`;
  return new InputError(
    `the file holds more than ${most}, the most that is read at once`,
    { file },
    'part it into several sources, or leave out columns that nothing is asked of',
  );
}

export async function readText(path: string, shown = path): Promise<string> {
  const bytes = await readBytes(path, shown);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new InputError('the file is not UTF-8 text', { file: shown }, 'save it as UTF-8 text');
  }
}

export async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}

function readFault(fault: NodeJS.ErrnoException, file: string): InputError {
  if (fault.code === 'ENOENT' || fault.code === 'ENOTDIR') {
    return new InputError('there is no such file', { file }, 'check the name and the folder');
  }
  if (fault.code === 'EISDIR')
    return new InputError('this is a folder, not a file', { file }, 'name a file in it');
  if (fault.code === 'EACCES' || fault.code === 'EPERM') {
    return new InputError('the file may not be read', { file }, 'change its permissions');
  }
  if (fault.code === 'ENAMETOOLONG' || fault.code === 'ERR_INVALID_ARG_VALUE')
    return new InputError('no file can have that name', { file: tamed(file) }, 'check the name');
  return new InputError(
    `the file cannot be read (${fault.code ?? fault.message})`,
    { file },
    'check the disk',
  );
}

/** A name that is no name is shown shortened, without what a terminal would act on. */
function tamed(name: string): string {
  const plain = name.replace(/\p{C}+/gu, ' ');
  return plain.length > 80 ? `${plain.slice(0, 80)}…` : plain;
}

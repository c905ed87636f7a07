import { InputError } from '../../errors.ts';

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EPERM: 'no permission, or another program has it open',
  EBUSY: 'another program has it open',
  EROFS: 'nothing may be written there',
  EEXIST: 'a file stands where a folder is meant',
  ENOTDIR: 'a file stands where a folder is meant',
  EISDIR: 'a folder stands there',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full for this user',
  EFBIG: 'the file is larger than the disk takes',
  ENAMETOOLONG: 'the name is too long',
  EMFILE: 'too many files are open',
  ENOENT: 'the folder has gone',
  ELOOP: 'links lead in a circle',
  EIO: 'the disk reports a fault',
  ERR_INVALID_ARG_VALUE: 'no file can have that name',
};

/** Why a file could not be written, in the words of whoever asked for it. */
export function reasonOf(fault: unknown): string {
  const code = (fault as NodeJS.ErrnoException).code ?? 'unknown reason';
  return REASONS[code] ?? code;
}

export function isCode(fault: unknown, ...codes: readonly string[]): boolean {
  return codes.includes((fault as NodeJS.ErrnoException).code ?? '');
}

/** A fault of writing as one sentence; what is one already stays, and so does what is no fault of the disk. */
export function writeFault(fault: unknown, file: string): unknown {
  if (fault instanceof InputError || fault instanceof Interrupted) return fault;
  if (typeof (fault as NodeJS.ErrnoException).code !== 'string') return fault;
  const mend = isCode(fault, 'ENOSPC', 'EDQUOT')
    ? 'make room, or write to another disk'
    : 'choose a place that you may write to';
  return new InputError(`nothing was written (${reasonOf(fault)})`, { file }, mend);
}

/** Somebody stopped the writing before anything was put in place. */
export class Interrupted extends Error {
  override readonly name = 'Interrupted';
  /** @param signal name of the signal that stopped it. */
  constructor(readonly signal: string) {
    super(`stopped by ${signal}`);
  }
}

export function stopIfAsked(stop: AbortSignal | undefined): void {
  if (stop?.aborted) throw new Interrupted(String(stop.reason));
}

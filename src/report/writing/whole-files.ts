import { randomBytes } from 'node:crypto';
import { mkdir, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { InputError } from '../../errors.ts';
import { type FileContent, type Finished, piecesOf } from '../file-content.ts';
import { stopIfAsked, writeFault } from './fault.ts';
import { flushFolder, keepCopy, writeFlushed } from './flush.ts';
import { refuseInputs, refuseOdd } from './standing.ts';

export interface WholeFilesOptions {
  /** Paths that the command reads from and must not write over. */
  readonly inputs?: readonly string[];
  readonly stop?: AbortSignal;
}

const NONE_BEFORE: ReadonlyMap<string, Finished> = new Map();

interface Move {
  readonly path: string;
  /** Where the new text waits; beside its place, so that a rename is enough. */
  readonly waiting: string;
  /** Where the file that stood there is kept until all are in place; null where none stood. */
  readonly before: string | null;
}

/**
 * Writes single files, each wholly or not at all: all are written beside their places and flushed, then put
 * in place by renaming. A fault on the way leaves every place as it was.
 *
 * @param files paths with text or bytes; folders are made where there are none.
 * @throws InputError naming the file: two of one name, a link or device in the way, one that is being read
 * from, a disk that is full.
 */
export async function writeWholeFiles(
  files: readonly (readonly [path: string, content: FileContent])[],
  { inputs = [], stop }: WholeFilesOptions = {},
): Promise<void> {
  refuseDoubles(files.map(([path]) => path));
  const moves: Move[] = [];
  try {
    for (const [path, content] of files) {
      await within(path, async () => {
        const stood = await refuseOdd(path);
        await refuseInputs(path, inputs);
        const token = `thrum-${process.pid}-${randomBytes(4).toString('hex')}`;
        const hidden = join(dirname(path), `.${basename(path).slice(0, 200)}.${token}`);
        const move = { path, waiting: `${hidden}.new`, before: stood === 'file' ? `${hidden}.before` : null };
        moves.push(move);
        await mkdir(dirname(path), { recursive: true });
        const mode = stood === 'file' ? (await stat(path)).mode : undefined;
        await writeFlushed(move.waiting, piecesOf(content, NONE_BEFORE), { mode, stop });
      });
      stopIfAsked(stop);
    }
    await putInPlace(moves);
  } finally {
    for (const { waiting, before } of moves)
      for (const left of [waiting, before]) if (left !== null) await rm(left, { force: true });
  }
}

async function putInPlace(moves: readonly Move[]): Promise<void> {
  const done: Move[] = [];
  try {
    for (const move of moves)
      await within(move.path, async () => {
        await refuseOdd(move.path);
        if (move.before !== null && moves.length > 1) await keepCopy(move.path, move.before);
        await rename(move.waiting, move.path);
        done.push(move);
      });
  } catch (fault) {
    for (const { path, before } of done.reverse()) {
      if (before !== null) await rename(before, path).catch(() => undefined);
      else await rm(path, { force: true });
    }
    throw fault;
  }
  for (const { path } of done) await flushFolder(dirname(path));
}

function refuseDoubles(paths: readonly string[]): void {
  const places = paths.map((path) => resolve(path));
  const twice = places.findIndex((place, at) => places.indexOf(place) < at);
  if (twice >= 0)
    throw new InputError(
      'two things are to be written into this file',
      { file: paths[twice] },
      'name two files',
    );
}

async function within(path: string, work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (fault) {
    throw writeFault(fault, path);
  }
}

import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Taken } from './measured.ts';

/** What has been measured of this state of the code on this machine, so that a measuring broken off goes on where it was. */
export interface Notebook {
  readonly path: string;
  /** What is noted under the name; measured, said and noted first where nothing is. */
  once(name: string, measure: () => Promise<Taken>): Promise<Taken>;
}

const root = fileURLToPath(new URL('../../', import.meta.url));

/** @param fresh whether to begin anew. */
export function openNotebook(part: string, fresh: boolean): Notebook {
  const git = (...words: readonly string[]) => execFileSync('git', words, { cwd: root });
  const state = createHash('sha256')
    .update(git('rev-parse', 'HEAD'))
    .update(git('diff', 'HEAD', '--', 'src', 'tests/trust', 'datasets'))
    .digest('hex')
    .slice(0, 12);
  const path = join(tmpdir(), `thrum-${part}-${process.version}-${state}.json`);
  const noted: Record<string, Taken> =
    !fresh && existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : {};
  return {
    path,
    once: async (name, measure) => {
      const before = noted[name];
      const taken = before ?? (await measure());
      const { processor, wall, memory, status, err } = taken;
      console.log(
        `${name}: ${processor.toFixed(1)} s of processor, ${wall.toFixed(1)} s, ${memory.toFixed(0)} MB${before === undefined ? '' : ' (noted before)'}`,
      );
      if (status !== 0) throw new Error(`${name}: status ${status}: ${err}`);
      noted[name] = { ...taken, out: '', err: '' };
      writeFileSync(path, JSON.stringify(noted));
      return taken;
    },
  };
}

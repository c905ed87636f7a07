import { execFile } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pc from 'picocolors';
import { runProgram } from '../../src/cli/program.ts';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface Outcome {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

/** One command line, run in this process; what it prints is kept. */
export async function thrum(...args: readonly string[]): Promise<Outcome> {
  const printed = { out: '', err: '' };
  const status = await runProgram(args, {
    out: (text) => {
      printed.out += text;
    },
    err: (text) => {
      printed.err += text;
    },
    width: 100,
    colour: pc.createColors(false),
    progress: () => undefined,
    endProgress: () => undefined,
  });
  return { status, ...printed };
}

/** The same in a process of its own, as a user starts it. */
export function spawnThrum(...args: readonly string[]): Promise<Outcome> {
  const command = ['--import', 'tsx', join(ROOT, 'src/cli/main.ts'), ...args];
  const env = { ...process.env, NO_COLOR: '', FORCE_COLOR: '', COLUMNS: '100' };
  return new Promise((done) => {
    execFile(process.execPath, command, { cwd: ROOT, env, maxBuffer: 64 * 2 ** 20 }, (fault, out, err) => {
      done({ status: fault === null ? 0 : Number(fault.code), out, err });
    });
  });
}

/** A folder of its own under the system's temporary folder. */
export function freshFolder(): string {
  return mkdtempSync(join(tmpdir(), 'thrum-cli-'));
}

import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** A folder in memory where there is one: a killed process loses no less there, and hundreds are quick. */
export function quickFolder(): string {
  const memory = '/dev/shm';
  return mkdtempSync(join(existsSync(memory) ? memory : tmpdir(), 'thrum-killed-'));
}

/** The child of crash-child.ts as one plain script, which starts in a fraction of the time. */
export async function bundledChild(): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), 'thrum-crash-'));
  await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      ssr: fileURLToPath(new URL('crash-child.ts', import.meta.url)),
      outDir,
      rollupOptions: { output: { entryFileNames: 'child.mjs' } },
    },
    ssr: { noExternal: true },
  });
  return join(outDir, 'child.mjs');
}

export interface Ended {
  readonly out: string;
  readonly signal: string | null;
}

/** @param killAfter milliseconds after it began to write; undefined lets it end by itself. */
export function runChild(child: string, args: readonly string[], killAfter?: number): Promise<Ended> {
  return new Promise((done) => {
    const running = spawn(process.execPath, [child, ...args]);
    let out = '';
    running.stdout.on('data', (part: Buffer) => {
      if (out === '' && killAfter !== undefined) setTimeout(() => running.kill('SIGKILL'), killAfter);
      out += part.toString();
    });
    running.once('close', (_status, signal) => done({ out, signal }));
  });
}

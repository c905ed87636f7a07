import { execFile } from 'node:child_process';
import { mkdir, readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { promisify } from 'node:util';

const root = new URL('../..', import.meta.url).pathname;
const out = join(root, 'dist/app');
const lock = join(root, 'dist/.app-is-being-built');

/** The built workbench; built once when anything it is made of is younger. */
export async function builtApp(): Promise<string> {
  await mkdir(join(root, 'dist'), { recursive: true });
  for (;;) {
    if (await isFresh()) return out;
    try {
      await mkdir(lock);
    } catch {
      // Another test file is building; a lock older than two minutes was left behind.
      const age = Date.now() - ((await modified(lock)) ?? Date.now());
      if (age > 120_000) await rm(lock, { recursive: true, force: true });
      await wait(300);
      continue;
    }
    try {
      await promisify(execFile)('npx', ['vite', 'build', '--config', 'src/app/vite.config.ts'], {
        cwd: root,
        // The runner's own NODE_ENV would bundle the development build of React, which is not what users get.
        env: { ...process.env, NODE_ENV: 'production' },
      });
    } finally {
      await rm(lock, { recursive: true, force: true });
    }
    return out;
  }
}

async function isFresh(): Promise<boolean> {
  const built = await modified(join(out, 'index.html'));
  if (built === null || (await modified(lock)) !== null) return false;
  const newest = await Promise.all([newestIn(join(root, 'src')), newestIn(join(root, 'datasets/demo'))]);
  return Math.max(...newest) < built;
}

async function modified(path: string): Promise<number | null> {
  try {
    return (await stat(path)).mtimeMs;
  } catch {
    return null;
  }
}

async function newestIn(folder: string): Promise<number> {
  const files = await readdir(folder, { recursive: true, withFileTypes: true });
  const times = await Promise.all(
    files.filter((file) => file.isFile()).map((file) => modified(join(file.parentPath, file.name))),
  );
  return Math.max(0, ...times.map((time) => time ?? 0));
}

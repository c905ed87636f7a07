import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { madeOnce, ROOT } from '../made-once.ts';

/** The built workbench; built once when anything it is made of is younger. */
export async function builtApp(): Promise<string> {
  const out = join(ROOT, 'dist/app');
  await madeOnce(join(out, 'index.html'), async () => {
    await promisify(execFile)('npx', ['vite', 'build', '--config', 'src/app/vite.config.ts'], {
      cwd: ROOT,
      // The runner's own NODE_ENV would bundle the development build of React, which is not what users get.
      env: { ...process.env, NODE_ENV: 'production' },
    });
  });
  return out;
}

/**
 * Writes one set of files and, where asked, dies or meets a fault at its n-th dealing with the disk.
 *
 * Arguments: folder, version, then "kill" or "fault" with a number, or nothing.
 */
import fs from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';

const [folder = '', version = '', how, at] = process.argv.slice(2);

let dealings = 0;
const spoilt = (name: 'open' | 'mkdir' | 'rename' | 'rm' | 'rmdir' | 'link' | 'readdir' | 'readFile') => {
  const real = fs[name] as (...given: unknown[]) => Promise<unknown>;
  Object.assign(fs, {
    [name]: async (...given: unknown[]) => {
      dealings++;
      if (how === 'kill' && dealings === Number(at)) process.kill(process.pid, 'SIGKILL');
      if (how === 'fault' && dealings === Number(at))
        throw Object.assign(new Error('spoilt'), { code: 'ENOSPC' });
      return await real(...given);
    },
  });
};
for (const name of ['open', 'mkdir', 'rename', 'rm', 'rmdir', 'link', 'readdir', 'readFile'] as const)
  spoilt(name);
syncBuiltinESMExports();

const { setOf } = await import('./sets.ts');
const { writeSet } = await import('../../../src/report/writing/write-set.ts');
process.stdout.write('ready\n');
const started = performance.now();
try {
  await writeSet(folder, setOf(Number(version)), { patience: 5000 });
  process.stdout.write(`done ${dealings} ${Math.ceil(performance.now() - started)}\n`);
} catch (fault) {
  process.stdout.write(`fault ${dealings} ${(fault as Error).message}\n`);
  process.exitCode = 2;
}

/**
 * Writes one set of files and, where asked, dies at its n-th dealing with the disk; or writes it into several
 * folders one after the other and meets a fault at its first dealing in the first, at its second in the second …
 *
 * Arguments: folder, version, then nothing, "kill" with a number, or "fault" with further folders.
 */
import fs from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';

const [folder = '', version = '', how, ...more] = process.argv.slice(2);

let dealings = 0;
let spoiltAt = how === 'kill' ? Number(more[0]) : 0;
const spoilt = (name: 'open' | 'mkdir' | 'rename' | 'rm' | 'rmdir' | 'link' | 'readdir' | 'readFile') => {
  const real = fs[name] as (...given: unknown[]) => Promise<unknown>;
  Object.assign(fs, {
    [name]: async (...given: unknown[]) => {
      dealings++;
      if (how === 'kill' && dealings === spoiltAt) process.kill(process.pid, 'SIGKILL');
      if (how === 'fault' && dealings === spoiltAt)
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
for (const into of how === 'fault' ? [folder, ...more] : [folder]) {
  dealings = 0;
  if (how === 'fault') spoiltAt++;
  const started = performance.now();
  try {
    await writeSet(into, setOf(Number(version)), { patience: 5000 });
    process.stdout.write(`done ${dealings} ${Math.ceil(performance.now() - started)}\n`);
  } catch (fault) {
    process.stdout.write(`fault ${dealings} ${(fault as Error).message}\n`);
  }
}

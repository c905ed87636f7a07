import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * `npm run bench`: every benchmark of this folder, one after the other, each in a process of its own so
 * that none warms up another. Each prints ratios to a yardstick that it names.
 */
const folder = fileURLToPath(new URL('.', import.meta.url));
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && name !== 'run.ts')
  .sort();
for (const name of names) {
  console.log(`\n== ${name.replace('.ts', '')}`);
  spawnSync('npx', ['tsx', `${folder}${name}`], { stdio: 'inherit' });
}

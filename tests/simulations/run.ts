import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * `npm run simulate`: every simulation of this folder, seeded, one after the other. They take minutes
 * each; what they print goes, with the date, into docs/methods/.
 */
const folder = fileURLToPath(new URL('.', import.meta.url));
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && name !== 'run.ts')
  .sort();
for (const name of names) {
  console.log(`\n== ${name.replace('.ts', '')}`);
  spawnSync('npx', ['tsx', `${folder}${name}`], { stdio: 'inherit' });
}

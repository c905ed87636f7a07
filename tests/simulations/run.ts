import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * `npm run simulate -- NAME [runs]`: one simulation of this folder, seeded; `all` runs them one after the other. Each
 * takes minutes and prints its table with the number of runs; that goes, with the date, into docs/methods/.
 * Without a name, or with a wrong one: the names.
 */
const folder = fileURLToPath(new URL('.', import.meta.url));
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && name !== 'run.ts')
  .map((name) => name.replace('.ts', ''))
  .sort();

/** The first sentence of what a simulation says of itself. */
function about(name: string): string {
  const head = readFileSync(`${folder}${name}.ts`, 'utf8').match(/\/\*\*\n([\s\S]*?)\*\//)?.[1] ?? '';
  const text = head
    .split('\n')
    .map((line) => line.replace(/^ \* ?/, ''))
    .join(' ');
  return text.match(/^.*?[.?:](?=\s)/)?.[0].trim() ?? '';
}

const [name, ...more] = process.argv.slice(2);
const wanted = name === 'all' ? names : names.filter((known) => known === name);
if (wanted.length === 0) {
  const width = Math.max(...names.map(({ length }) => length)) + 2;
  if (name !== undefined) console.error(`No simulation is named "${name}".`);
  console.log('npm run simulate -- NAME [runs], with one of these names, or all:\n');
  for (const known of names) console.log(`  ${known.padEnd(width)}${about(known)}`);
  process.exitCode = name === undefined ? 0 : 2;
}
for (const known of wanted) {
  console.log(`\n== ${known}`);
  const { status } = spawnSync('npx', ['tsx', `${folder}${known}.ts`, ...more], { stdio: 'inherit' });
  if (status !== 0) process.exitCode = status ?? 1;
}

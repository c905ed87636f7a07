import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/**
 * `npm run bench`: every benchmark, one after the other, each in a process of its own so that none warms up
 * another or adds to its memory. Each prints ratios to a yardstick that it names.
 */
const RUNS: readonly (readonly string[])[] = [
  ['dissimilarity.ts'],
  ...['linkage', 'memory', 'medoids', 'density', 'kmeans', 'large'].map((part) => ['grouping.ts', part]),
  ...['axes', 'variance', 'eigen'].map((part) => ['ordination.ts', part]),
  ['placement.ts'],
  ['key-stroke.ts'],
  ['drag.ts'],
  ['draw-figures.ts'],
  ['read-source.ts'],
  ['odd-shapes.ts'],
];
const folder = fileURLToPath(new URL('.', import.meta.url));
for (const [file, ...parts] of RUNS) {
  console.log(`\n== ${[file.replace('.ts', ''), ...parts].join(' ')}`);
  spawnSync('npx', ['tsx', `${folder}${file}`, ...parts], { stdio: 'inherit' });
}

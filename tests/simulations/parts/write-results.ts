import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Simulated } from '../../../src/analyses/shared/simulated/cells.ts';

const folder = fileURLToPath(new URL('../../../src/analyses/shared/simulated/', import.meta.url));

/** Writes what a simulation found to where documents and answers read it: one line a cell. */
export function writeResults<Cell>(
  simulation: string,
  { name, type }: { readonly name: string; readonly type: string },
  cells: readonly Cell[],
): void {
  const found: Simulated<Cell> = { simulation, date: new Date().toISOString().slice(0, 10), cells };
  const lines = found.cells.map((cell) => `    ${JSON.stringify(cell)},`).join('\n');
  writeFileSync(
    `${folder}${simulation}.ts`,
    `import type { ${[type, 'Simulated'].sort().join(', ')} } from './cells.ts';

/** Written by \`npm run simulate -- ${simulation}\`: not to be changed by hand. */
// biome-ignore format: one line a cell
export const ${name}: Simulated<${type}> = {
  simulation: '${found.simulation}',
  date: '${found.date}',
  cells: [
${lines}
  ],
};
`,
  );
}

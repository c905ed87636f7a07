import { readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { growth } from './growth.ts';
import { versions } from './versions.ts';

/**
 * `npm run trust -- [growth] [versions] [--record]`: what docs/trust.md says of sizes and machines, measured on this
 * machine with what was last built. With `--record` the numbers go onto that page.
 */

const PARTS: Readonly<Record<string, () => Promise<readonly string[]>>> = { growth, versions };

const named = process.argv.slice(2).filter((word) => word !== '--record');
const unknown = named.find((name) => !Object.hasOwn(PARTS, name));
if (unknown !== undefined) {
  console.error(`there is no part "${unknown}"; name ${Object.keys(PARTS).join(' or ')}`);
  process.exit(2);
}
for (const [name, measure] of Object.entries(PARTS)) {
  if (named.length > 0 && !named.includes(name)) continue;
  const lines = await measure();
  console.log(lines.join('\n'));
  if (process.argv.includes('--record')) record(name, lines);
}

function record(name: string, lines: readonly string[]): void {
  const page = new URL('../../docs/trust.md', import.meta.url);
  const [before, , after] = readFileSync(page, 'utf8').split(new RegExp(`<!-- /?${name} -->`));
  const day = new Date().toISOString().slice(0, 10);
  const head = `${day}, Node ${process.version}, ${cpus().length} cores (${cpus()[0]?.model}).`;
  writeFileSync(page, `${before}<!-- ${name} -->\n${head}\n\n${lines.join('\n')}\n<!-- /${name} -->${after}`);
}

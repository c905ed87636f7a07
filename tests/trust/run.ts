import { readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { growth } from './growth.ts';
import { large } from './large.ts';
import { type Notebook, openNotebook } from './notebook.ts';
import { versions } from './versions.ts';

/**
 * `npm run trust -- [growth] [large] [versions] [--record] [--fresh]`: what docs/trust.md says of sizes and machines,
 * measured on this machine with what was last built. With `--record` the numbers go onto that page. Each measurement is
 * noted as it is made: what is broken off goes on where it was, unless `--fresh` is given or the code has changed.
 */

const PARTS: Readonly<Record<string, (notebook: Notebook) => Promise<readonly string[]>>> = {
  growth,
  large,
  versions,
};

const named = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const unknown = named.find((name) => !Object.hasOwn(PARTS, name));
if (unknown !== undefined) {
  console.error(`there is no part "${unknown}"; name ${Object.keys(PARTS).join(' or ')}`);
  process.exit(2);
}
for (const [name, measure] of Object.entries(PARTS)) {
  if (named.length > 0 && !named.includes(name)) continue;
  const lines = await measure(openNotebook(name, process.argv.includes('--fresh')));
  console.log(`\n${lines.join('\n')}\n`);
  if (process.argv.includes('--record')) record(name, lines);
}

function record(name: string, lines: readonly string[]): void {
  const page = new URL('../../docs/trust.md', import.meta.url);
  const [before, , after] = readFileSync(page, 'utf8').split(new RegExp(`<!-- /?${name} -->`));
  const day = new Date().toISOString().slice(0, 10);
  const head = `${day}, Node ${process.version}, ${cpus().length} cores (${cpus()[0]?.model}).`;
  writeFileSync(page, `${before}<!-- ${name} -->\n${head}\n\n${lines.join('\n')}\n<!-- /${name} -->${after}`);
  console.log(`Written into docs/trust.md, between the marks "${name}".`);
}

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { MODES, tryOnce } from './modes.ts';

/**
 * `npm run fuzz -- [--seconds 60] [--seed 1] [--mode csv] [--from 0] [--record]`: valid files, studies and command lines, changed by
 * chance and given to Thrum, mode by mode, until the time is over. Each try has its own number, by which `--mode`,
 * `--seed` and `--from` repeat it. Exits with 1 where anything but an answer or a sentence came back; what was given lies in
 * a folder that is named. With `--record` the numbers of tries go into docs/trust.md.
 */

const setting = (name: string, otherwise: string): string => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? otherwise : (process.argv[at + 1] ?? otherwise);
};
const seconds = Number(setting('seconds', '60'));
const seed = Number(setting('seed', '1'));
const from = Number(setting('from', '0'));
const wanted = setting('mode', '');
const modes = Object.entries(MODES).filter(([name]) => wanted === '' || name === wanted);
if (modes.length === 0) {
  console.error(`there is no mode "${wanted}"; name one of ${Object.keys(MODES).join(', ')}`);
  process.exit(2);
}
const MOST_FINDINGS = 5;
let folder: string | undefined;
let findings = 0;
const lines: string[] = [];
for (const [name, mode] of modes) {
  const end = performance.now() + (1000 * seconds) / modes.length;
  const kinds = new Set<string>();
  let tries = 0;
  for (let number = from; performance.now() < end; number++) {
    tries++;
    const found = await tryOnce(mode, createRandom(seed).stream(`${name} ${number}`));
    if (found === null) continue;
    const kind = `${found.fault.name} ${found.fault.message.replace(/\d+/g, '0').slice(0, 60)}`;
    if (kinds.has(kind)) continue;
    kinds.add(kind);
    findings++;
    folder ??= mkdtempSync(join(tmpdir(), 'thrum-fuzz-'));
    const file = join(folder, `${name.replace(' ', '-')}-${number}`);
    writeFileSync(file, found.input);
    console.error(
      `${name}: --seed ${seed} --from ${number}: ${found.fault.stack?.split('\n').slice(0, 4).join('\n  ')}\n  given: ${file}`,
    );
    if (kinds.size >= MOST_FINDINGS) break;
  }
  console.log(`${name}: ${tries} tries, ${kinds.size} findings`);
  lines.push(`| ${name} | ${tries} | ${kinds.size} |`);
}
if (process.argv.includes('--record')) record();
process.exit(findings > 0 ? 1 : 0);

function record(): void {
  const page = new URL('../../docs/trust.md', import.meta.url);
  const [before, , after] = readFileSync(page, 'utf8').split(/<!-- \/?tries -->/);
  const day = new Date().toISOString().slice(0, 10);
  const head = `Seed ${seed}, ${seconds} seconds in all, ${day}, Node ${process.version}, ${cpus().length} cores (${cpus()[0]?.model}).`;
  const table = ['| what is changed | tries | findings |', '|---|---|---|', ...lines].join('\n');
  writeFileSync(page, `${before}<!-- tries -->\n${head}\n\n${table}\n<!-- /tries -->${after}`);
}

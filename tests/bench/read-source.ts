import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { defaultRegister } from '../../src/attributes/register.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { readSource } from '../../src/sources/read-source.ts';

/**
 * How long 100,000 rows of 25 columns take to read and normalise, beside pandas' read_csv followed by the
 * same cleaning (ranges, circa, censored readings, decimal commas, missing codes, units, kinds).
 * Run: npx tsx tests/bench/read-source.ts [rows]
 */

const rows = Number(process.argv[2] ?? 100_000);
const HEADER =
  'Fund-Nr.;Objekt-Nr.;Fundort;Phase;Bindung;Dichte System 1 (/cm);Dichte System 2 (/cm);Reihenabstand (mm);' +
  'Drehung System 1;Drehung System 2;Zwirn System 1;Dm System 1 (mm);Dm System 2 (mm);Faser;Erhaltung;Länge (cm);' +
  'Breite (cm);Dicke (mm);Gewicht (g);Farbe;Kontext;Bearbeiter;Literatur;Schlingenabstand;Bemerkungen';

function makeTable(): string {
  const random = createRandom(7);
  const pick = (list: readonly string[]): string => list[Math.floor(random.next() * list.length)];
  const comma = (value: number, digits: number): string => value.toFixed(digits).replace('.', ',');
  const number = (least: number, most: number, digits: number): string => {
    const value = least + (most - least) * random.next();
    const kind = random.next();
    if (kind < 0.06) return pick(['', '-', '?', 'n. b.']);
    if (kind < 0.14) return `${comma(value, digits)}-${comma(value * 1.2, digits)}`;
    if (kind < 0.2) return `ca. ${comma(value, digits)}`;
    if (kind < 0.22) return `<${comma(value, digits)}`;
    return comma(value, digits);
  };
  const lines = [HEADER];
  for (let row = 0; row < rows; row++) {
    lines.push(
      [
        `F${row}`,
        `O${Math.floor(row / 2)}`,
        pick(['Ansern', 'Bolquen', 'Cestwig', 'Drunau']),
        pick(['früh', 'mittel', 'spät']),
        pick(['Leinwandbindung', 'Köper', 'Zwirnbindung', 'Rips', 'Netz']),
        number(3, 30, 1),
        number(3, 30, 1),
        number(1, 40, 1),
        pick(['S', 'Z', 'ungedreht', '']),
        pick(['S', 'Z', '?']),
        pick(['S2z', 'Z2s', '']),
        number(0.2, 3, 2),
        number(0.2, 3, 2),
        pick(['Flachs', 'Lindenbast', 'Wolle', 'wohl Flachs']),
        pick(['verkohlt', 'feucht erhalten', 'mineralisiert']),
        number(1, 30, 1),
        number(1, 30, 1),
        number(0.3, 4, 1),
        number(1, 90, 1),
        pick(['braun', 'schwarz', 'grau']),
        `Sch. ${row % 40}`,
        pick(['A. B.', 'C. D.']),
        '',
        number(1, 9, 1),
        random.next() < 0.1 ? '"Rand; beschädigt"' : '',
      ].join(';'),
    );
  }
  return `${lines.join('\n')}\n`;
}

const PANDAS = `
import sys, time, re
import numpy as np, pandas as pd
path = sys.argv[1]
start = time.perf_counter()
d = pd.read_csv(path, sep=';', dtype=str, keep_default_na=False, encoding='utf-8')
number = r'(\\d+(?:,\\d+)?)'
out = {}
for c in [5, 6, 7, 11, 12, 15, 16, 17, 18, 23]:
    s = d.iloc[:, c].str.strip()
    missing = s.isin(['', '-', '?', 'n. b.'])
    about = s.str.startswith('ca.')
    below = s.str.startswith('<')
    parts = s.str.extract(r'^(?:ca\\. |<)?' + number + r'(?:-' + number + r')?$')
    low = pd.to_numeric(parts[0].str.replace(',', '.'), errors='coerce')
    high = pd.to_numeric(parts[1].str.replace(',', '.'), errors='coerce').fillna(low)
    low = low.where(~below, 0.0)
    low = low.where(~about, low * 0.9); high = high.where(~about, high * 1.1)
    if c in (15, 16): low *= 10; high *= 10
    state = np.where(missing, 2, np.where(about, 1, 0))
    out[c] = (low.to_numpy(), high.to_numpy(), state)
for c in [2, 3, 4, 8, 9, 10, 13, 14, 19, 21]:
    s = d.iloc[:, c].str.strip()
    certain = ~s.str.startswith('wohl ')
    out[c] = (s.str.replace(r'^wohl ', '', regex=True).str.lower().astype('category'), certain.to_numpy())
duplicated = d.iloc[:, 0].duplicated().any()
print(time.perf_counter() - start)
`;

const text = makeTable();
const content = new TextEncoder().encode(text);
const register = defaultRegister();
// Both sides are measured warm: once to load, then the best of three.
const times: number[] = [];
let kept = 0;
let entries = 0;
for (let round = 0; round < 4; round++) {
  const start = performance.now();
  const reading = readSource(content, { name: 'bench.csv', register });
  times.push((performance.now() - start) / 1000);
  kept = reading.rowsKept;
  entries = reading.ledger.length;
}
const ours = Math.min(...times.slice(1));
const memory = process.memoryUsage().rss / 1e6;
console.log(`${kept} rows, ${(content.length / 1e6).toFixed(1)} MB, ${entries} ledger entries`);
console.log(`readSource: ${ours.toFixed(2)} s, resident memory ${memory.toFixed(0)} MB`);
if (existsSync('/usr/bin/python3')) {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  writeFileSync(join(folder, 'bench.csv'), content);
  writeFileSync(join(folder, 'bench.py'), PANDAS);
  const theirs: number[] = [];
  for (let round = 0; round < 3; round++) {
    const run = spawnSync('/usr/bin/python3', [join(folder, 'bench.py'), join(folder, 'bench.csv')], {
      encoding: 'utf8',
    });
    if (run.status === 0) theirs.push(Number(run.stdout));
    else console.log(run.stderr);
  }
  rmSync(folder, { recursive: true });
  if (theirs.length > 0) {
    const best = Math.min(...theirs);
    console.log(`pandas: ${best.toFixed(2)} s; ratio ${(ours / best).toFixed(2)}`);
  }
}

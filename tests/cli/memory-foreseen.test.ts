import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { countCells, foreseeMemory } from '../../src/cli/memory-foreseen.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

it('cells are counted by the commonest delimiter and the lines', () => {
  expect(countCells(bytes('id;site;length\na;Holm;2,5\nb;Ness;3,5\n'))).toBe(9);
  expect(countCells(bytes('id\tsite\na\tHolm, north\n'))).toBe(4);
  expect(countCells(bytes(''))).toBe(0);
});

it('memory is foreseen in one sentence: nothing of small tables, a word of large ones, a way out where it is too much', () => {
  const table = bytes('a,b,c,d\n'.repeat(500_000));
  const plenty = 4e9;
  expect(foreseeMemory([bytes('a,b\n1,2\n')], plenty)).toBeNull();
  expect(foreseeMemory([table], plenty)).toBeNull();
  expect(foreseeMemory([table, table], plenty)).toBe(
    'Large: the tables hold 4.0 million cells, which take about 0.8 GB of memory.',
  );
  expect(() => foreseeMemory([table, table], 0.7e9)).toThrow(
    /hold 4\.0 million cells, which take about 0\.8 GB of memory, and this command may take 0\.7 GB.*--max-old-space-size=1300/,
  );
});

it('a study too large for the memory given is refused before it is read', () => {
  const folder = mkdtempSync(join(tmpdir(), 'thrum-memory-'));
  writeFileSync(join(folder, 'finds.csv'), `id,site,length\n${'a,Holm,2\n'.repeat(300_000)}`);
  writeFileSync(
    join(folder, 'study.json'),
    JSON.stringify({ title: 'Large', sources: [{ file: 'finds.csv' }], analyses: [] }),
  );
  const { status, stderr } = spawnSync(
    process.execPath,
    [
      ...['--max-old-space-size=120', '--import', 'tsx', 'src/cli/main.ts'],
      ...['run', join(folder, 'study.json'), '--out', join(folder, 'out')],
    ],
    { encoding: 'utf8' },
  );
  expect(stderr).toMatch(/^the tables hold 0\.9 million cells.*--max-old-space-size=300/s);
  expect(stderr.trim().split('\n')).toHaveLength(1);
  expect(status).toBe(2);
}, 60_000);

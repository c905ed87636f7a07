import { spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder, ROOT, spawnThrum } from './thrum.ts';

describe('thrum as a process', () => {
  it('leaves with status 2 and one sentence, without colour when nobody looks on', async () => {
    const { status, out, err } = await spawnThrum('read', '/nowhere/finds.csv');
    expect([status, out]).toEqual([2, '']);
    expect(err).toBe('finds.csv: there is no such file; check the name and the folder.\n');
  });

  it('takes a closed pipe for the wish of the reader', async () => {
    const table = join(freshFolder(), 'long.csv');
    const columns = Array.from({ length: 3000 }, (_, place) => `column ${place}`);
    writeFileSync(table, `id,${columns.join(',')}\na,${columns.map(() => 'x').join(',')}\n`);
    const child = spawn(process.execPath, ['--import', 'tsx', join(ROOT, 'src/cli/main.ts'), 'read', table]);
    let err = '';
    child.stderr.on('data', (part: Buffer) => {
      err += part.toString();
    });
    child.stdout.once('data', () => child.stdout.destroy());
    const status = await new Promise((done) => child.once('close', done));
    expect([status, err]).toEqual([0, '']);
  });
});

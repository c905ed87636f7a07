import { execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { foreignName } from '../../src/cli/study-paths.ts';
import { freshFolder, ROOT, spawnThrum, thrum } from './thrum.ts';

const TABLE = 'id,site,length (mm)\na,Ness,3\nb,Ness,4\nc,Holm,7\nd,Holm,9\n';

function studyOf(source: string, folder = freshFolder()): string {
  writeFileSync(join(folder, 'own.csv'), TABLE);
  const analyses = [{ id: 'lengths', kind: 'summary', of: ['length'] }];
  const path = join(folder, 'study.json');
  writeFileSync(path, JSON.stringify({ title: 'Small', sources: [{ file: source }], analyses }));
  return path;
}

describe('the files that a study names', () => {
  it('are those of its own folder, unless its reader says otherwise', async () => {
    const home = freshFolder();
    writeFileSync(join(home, 'secret.csv'), TABLE);
    mkdirSync(join(home, 'study'));
    const path = studyOf('../secret.csv', join(home, 'study'));
    const out = join(home, 'out');
    const refused = await thrum('run', path, '--out', out, '--no-report');
    expect([refused.status, refused.err]).toEqual([
      2,
      `${path}: the study names files that are not its own: "../secret.csv" (outside the folder); put them beside the study, or read it with --allow-outside where you trust whoever wrote it.\n`,
    ]);
    expect(existsSync(out)).toBe(false);
    expect((await thrum('place', path, '--find', 'length=3')).status).toBe(2);
    const allowed = await thrum('run', path, '--out', out, '--no-report', '--allow-outside');
    expect([allowed.status, allowed.err]).toEqual([0, '']);
  });

  it('are plain files: links and absolute paths need trust, devices and pipes are never read', async () => {
    const home = freshFolder();
    symlinkSync('/etc/hostname', join(home, 'link.csv'));
    expect((await thrum('run', studyOf('link.csv', home))).err).toContain('"link.csv" (a symbolic link)');
    expect((await thrum('run', studyOf('/etc/hostname'))).err).toContain('an absolute path');
    const pipes = freshFolder();
    execFileSync('mkfifo', [join(pipes, 'pipe.csv')]);
    const piped = await thrum('run', studyOf('pipe.csv', pipes), '--allow-outside');
    expect(piped.err).toContain('"pipe.csv" (a device or a pipe)');
    expect((await thrum('run', studyOf('/dev/zero'), '--allow-outside')).err).toContain('a device or a pipe');
    const devices = freshFolder();
    symlinkSync('/dev/zero', join(devices, 'zero.csv'));
    expect((await thrum('run', studyOf('zero.csv', devices), '--allow-outside')).err).toContain(
      'a device or a pipe',
    );
  });

  it('are told by the rules of every system', () => {
    for (const name of ['C:\\a.csv', 'c:a.csv', '\\\\host\\share\\a.csv', '/a.csv', '\\a.csv'])
      expect(foreignName(name), name).toBe('an absolute path');
    for (const name of ['..\\a.csv', '../a.csv', 'b/../../a.csv', 'b\\..\\..\\a.csv', './../a.csv'])
      expect(foreignName(name), name).toBe('outside the folder');
    for (const name of ['a.csv', 'b/a.csv', 'b\\a.csv', 'b/../a.csv', '..a.csv', 'a..csv', './a.csv'])
      expect(foreignName(name), name).toBeNull();
  });
});

describe('what a verb writes', () => {
  it('is never written over what it reads, through a link, into a device, or twice', async () => {
    const folder = freshFolder();
    const table = join(folder, 'table.csv');
    writeFileSync(table, TABLE);
    symlinkSync(table, join(folder, 'link.csv'));
    const refusal = async (...args: string[]) => {
      const { status, err } = await thrum('read', table, ...args);
      expect(status).toBe(2);
      return err;
    };
    expect(await refusal('--ledger', table)).toContain('this file is read from');
    expect(await refusal('--ledger', join(folder, 'link.csv'))).toContain('symbolic link');
    expect(await refusal('--ledger', '/dev/full')).toContain('a device or a pipe');
    const same = join(folder, 'same.csv');
    expect(await refusal('--ledger', same, '--save-profile', same)).toContain('two things');
    expect(readFileSync(table, 'utf8')).toBe(TABLE);
    expect(readdirSync(folder).sort()).toEqual(['link.csv', 'table.csv']);
  });

  it('takes away what the run before made, and says so', async () => {
    const path = studyOf('own.csv');
    const out = join(freshFolder(), 'out');
    expect((await thrum('run', path, '--out', out)).status).toBe(0);
    const lying = () =>
      readdirSync(out, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map(({ parentPath, name }) => relative(out, join(parentPath, name)));
    const before = lying();
    const fewer = await thrum('run', path, '--out', out, '--no-report');
    const gone = before.filter((name) => !lying().includes(name)).sort();
    expect(gone).toEqual([
      'brief.html',
      'datapackage.json',
      'fragments.csv',
      'fragments.study.json',
      'ledger.csv',
      'report.html',
      'tables/lengths-limits.csv',
      'tables/lengths-numbers.csv',
    ]);
    const [, named, more] = /^Taken away, of the run before: (.*) and (\d+) more$/m.exec(fewer.out) ?? [];
    const said = named!.split(', ');
    expect(gone).toEqual(expect.arrayContaining(said));
    expect([said.length, Number(more)]).toEqual([5, gone.length - 5]);
    expect(readdirSync(out).sort()).toEqual(['results.json', 'thrum-files.json']);
  });

  it('writes every figure for print where that is asked, and takes them away when it is not', async () => {
    const path = studyOf('own.csv');
    const out = join(freshFolder(), 'out');
    const run = await thrum('run', path, '--out', out, '--no-report', '--figures');
    expect(run.out).toMatch(/\d+ files of figures in .*figures/);
    const files = readdirSync(join(out, 'figures'));
    expect(files.filter((name) => name.endsWith('-174mm.svg')).length).toBeGreaterThan(0);
    expect(files.map((name) => name.replace('.pdf', '.svg')).sort()).toEqual(
      [
        ...files.filter((name) => name.endsWith('.svg')),
        ...files.filter((name) => name.endsWith('.svg')),
      ].sort(),
    );
    await thrum('run', path, '--out', out, '--no-report');
    expect(readdirSync(out).sort()).toEqual(['results.json', 'thrum-files.json']);
  });

  it('is not begun when Ctrl+C is pressed: status 130, the folder as it was', async () => {
    const path = studyOf('own.csv');
    const out = freshFolder();
    const desk = join(out, '.thrum-writing');
    mkdirSync(desk);
    writeFileSync(join(desk, 'owner.json'), JSON.stringify({ process: process.pid, host: hostname() }));
    const running = spawn(process.execPath, [
      '--import',
      'tsx',
      join(ROOT, 'src/cli/main.ts'),
      'run',
      path,
      '--out',
      out,
    ]);
    let err = '';
    running.stderr.on('data', (part: Buffer) => {
      err += part.toString();
      if (err === `Waiting for another run that writes into ${out}.\n`) running.kill('SIGINT');
    });
    const status = await new Promise<number | null>((done) => running.once('close', (code) => done(code)));
    expect([status, err]).toEqual([
      130,
      `Waiting for another run that writes into ${out}.\nStopped; nothing was written.\n`,
    ]);
    expect(readdirSync(out)).toEqual(['.thrum-writing']);
  });
});

describe('an output that takes nothing', () => {
  it('is one sentence and status 2', async () => {
    const command = `${process.execPath} --import tsx ${join(ROOT, 'src/cli/main.ts')} --help > /dev/full`;
    const outcome = await new Promise<{ status: number | null; err: string }>((done) => {
      const running = spawn('sh', ['-c', command], { cwd: ROOT });
      let err = '';
      running.stderr.on('data', (part: Buffer) => {
        err += part.toString();
      });
      running.once('close', (status) => done({ status, err }));
    });
    expect(outcome).toEqual({
      status: 2,
      err: 'the answer could not be printed (the disk is full); send it to another file or disk.\n',
    });
    expect((await spawnThrum('run', studyOf('own.csv'), '--out', '')).err).toBe(
      'no folder is named; name one with --out.\n',
    );
  });
});

import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { FileContent } from '../../../src/report/file-content.ts';
import { leaveDesk, takeDesk } from '../../../src/report/writing/desk.ts';
import { Interrupted } from '../../../src/report/writing/fault.ts';
import { writeFlushed } from '../../../src/report/writing/flush.ts';
import { MANIFEST } from '../../../src/report/writing/manifest.ts';
import { tryFolder, writeSet } from '../../../src/report/writing/write-set.ts';
import { freshFolder } from '../../cli/thrum.ts';
import { setOf, versionIn } from './sets.ts';

const fresh = () => join(freshFolder(), 'out');
const messageOf = (work: Promise<unknown>) =>
  work.then(
    () => 'no fault',
    (fault: Error) => fault.message,
  );

describe('the files of a run', () => {
  it('are written with a list of their hashes, and nothing else is left', async () => {
    const folder = fresh();
    const { written, takenAway, stays } = await writeSet(folder, setOf(1));
    expect(versionIn(folder)).toBe(1);
    expect([written.length, takenAway, stays]).toEqual([19, [], []]);
    expect(readdirSync(folder).sort()).toEqual([
      'list.json',
      'report.html',
      'results.json',
      'tables',
      MANIFEST,
    ]);
  });

  it('are made one after the other, and each may tell of those before it', async () => {
    const folder = fresh();
    const made: string[] = [];
    function* pieces() {
      for (const piece of ['Grebe ', 'Höhle']) {
        made.push(
          `${piece}, after ${existsSync(join(folder, '.thrum-writing/new/first.txt')) ? 'it' : 'none'}`,
        );
        yield piece;
      }
    }
    const files = new Map<string, FileContent>([
      ['first.txt', 'x'],
      ['pieces.txt', pieces()],
      ['told.json', (before) => JSON.stringify(Object.fromEntries(before))],
    ]);
    await writeSet(folder, { ...setOf(1), files });
    expect(made).toEqual(['Grebe , after it', 'Höhle, after it']);
    expect(readFileSync(join(folder, 'pieces.txt'), 'utf8')).toBe('Grebe Höhle');
    expect(JSON.parse(readFileSync(join(folder, 'told.json'), 'utf8'))).toEqual({
      // printf x | sha256sum; printf 'Grebe Höhle' | sha256sum
      'first.txt': { bytes: 1, hash: '2d711642b726b04401627ca9fbac32f5c8530fb1903cc4db02258717921a4881' },
      'pieces.txt': { bytes: 12, hash: '2d44f72cc36882099a8cbd43f16dde6b4a38cc826334213a8ae64e5af16cb907' },
    });
  });

  it('of which one cannot be made leave what stood there, and the fault as it is', async () => {
    const folder = fresh();
    await writeSet(folder, setOf(1));
    function* failing() {
      yield 'a beginning';
      throw new RangeError('a fault of ours');
    }
    const files = new Map<string, FileContent>([...setOf(2).files, ['late.csv', failing()]]);
    await expect(writeSet(folder, { ...setOf(2), files })).rejects.toThrow(new RangeError('a fault of ours'));
    expect(versionIn(folder)).toBe(1);
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  it('can be stopped between two pieces', async () => {
    const folder = fresh();
    await writeSet(folder, setOf(1));
    const wish = new AbortController();
    let made = 0;
    function* long() {
      for (; made < 1000; made++) {
        if (made === 3) wish.abort('SIGINT');
        yield 'piece';
      }
    }
    const files = new Map<string, FileContent>([['long.csv', long()]]);
    await expect(writeSet(folder, { ...setOf(2), files }, { stop: wish.signal })).rejects.toBeInstanceOf(
      Interrupted,
    );
    expect([made, versionIn(folder)]).toEqual([3, 1]);
  });

  it('replace those of the run before, and take away what this run does not make', async () => {
    const folder = fresh();
    await writeSet(folder, setOf(1));
    const { takenAway } = await writeSet(folder, setOf(2));
    expect(takenAway).toEqual([0, 1, 2, 3].map((table) => `tables/only-1-${table}.csv`));
    expect(versionIn(folder)).toBe(2);
    const alone = { ...setOf(3), files: new Map([['results.json', '{}']]) };
    await writeSet(folder, alone);
    expect(readdirSync(folder).sort()).toEqual(['results.json', MANIFEST]);
  });

  it('leave the files of others alone, and say what stays', async () => {
    const folder = fresh();
    await writeSet(folder, setOf(1));
    writeFileSync(join(folder, 'notes.txt'), 'mine');
    writeFileSync(join(folder, 'tables', 'own.csv'), 'mine too');
    const edited = join(folder, 'tables', 'only-1-0.csv');
    writeFileSync(edited, 'corrected by hand');
    const { takenAway, stays } = await writeSet(folder, setOf(2));
    expect(takenAway).not.toContain('tables/only-1-0.csv');
    expect(stays).toEqual(['notes.txt', 'tables/only-1-0.csv', 'tables/own.csv']);
    expect(readFileSync(edited, 'utf8')).toBe('corrected by hand');
    expect(versionIn(folder, stays)).toBe(2);
  });

  it('are not written over a file of somebody else, or one that was changed', async () => {
    const folder = fresh();
    mkdirSync(folder);
    writeFileSync(join(folder, 'report.html'), 'a page of mine');
    expect(await messageOf(writeSet(folder, setOf(1)))).toContain('this file is of somebody else');
    expect(await messageOf(tryFolder(folder, ['report.html']))).toContain('this file is of somebody else');
    expect(readdirSync(folder)).toEqual(['report.html']);
    rmSync(join(folder, 'report.html'));
    await writeSet(folder, setOf(1));
    writeFileSync(join(folder, 'tables', 'always-3.csv'), 'corrected by hand');
    expect(await messageOf(writeSet(folder, setOf(2)))).toContain('was changed since a run wrote it');
    expect(readFileSync(join(folder, 'results.json'), 'utf8')).toBe('{"version":1}');
    expect(existsSync(join(folder, 'tables', 'only-2-0.csv'))).toBe(false);
  });

  it('a file that was removed meanwhile is written again', async () => {
    const folder = fresh();
    await writeSet(folder, setOf(1));
    rmSync(join(folder, 'results.json'));
    rmSync(join(folder, 'tables'), { recursive: true });
    await writeSet(folder, setOf(2));
    expect(versionIn(folder)).toBe(2);
  });

  it('never go through a link, nor over a file that is being read', async () => {
    const folder = fresh();
    const elsewhere = freshFolder();
    mkdirSync(folder);
    symlinkSync(join(elsewhere, 'target.json'), join(folder, 'results.json'));
    expect(await messageOf(writeSet(folder, setOf(1)))).toContain('symbolic link');
    rmSync(join(folder, 'results.json'));
    symlinkSync(elsewhere, join(folder, 'tables'));
    expect(await messageOf(writeSet(folder, setOf(1)))).toContain('symbolic link');
    const through = join(freshFolder(), 'link');
    symlinkSync(elsewhere, through);
    expect(await messageOf(writeSet(through, setOf(1)))).toContain('symbolic link');
    expect(readdirSync(elsewhere)).toEqual([]);
    const read = fresh();
    await writeSet(read, setOf(1));
    const inputs = [join(read, 'results.json')];
    expect(await messageOf(writeSet(read, setOf(2), { inputs }))).toContain('is read from');
    expect(versionIn(read)).toBe(1);
  });

  it('stay in their folder', async () => {
    for (const name of [
      '../up.csv',
      '/abs.csv',
      'a/../../b.csv',
      'a\\b.csv',
      'C:x.csv',
      '',
      '.thrum-writing/x',
    ])
      expect(await messageOf(writeSet(fresh(), { ...setOf(1), files: new Map([[name, 'x']]) }))).toContain(
        'no file can have that name',
      );
    const folder = fresh();
    await writeSet(folder, setOf(1));
    const outside = join(folder, '..', 'outside.txt');
    writeFileSync(outside, 'x');
    const { files } = JSON.parse(readFileSync(join(folder, MANIFEST), 'utf8'));
    const hash = '2d711642b726b04401627ca9fbac32f5c8530fb1903cc4db02258717921a4881'; // printf x | sha256sum
    const list = { writtenBy: '', study: '', files: { ...files, '../outside.txt': hash } };
    writeFileSync(join(folder, MANIFEST), JSON.stringify(list));
    await writeSet(folder, setOf(2));
    expect(existsSync(outside)).toBe(true);
  });

  it('two runs into one folder wait for each other; the last one stands whole', async () => {
    const folder = fresh();
    const outcomes = await Promise.all(
      [1, 2, 3, 4].map((version) => messageOf(writeSet(folder, setOf(version)))),
    );
    expect(outcomes).toEqual(['no fault', 'no fault', 'no fault', 'no fault']);
    expect([1, 2, 3, 4]).toContain(versionIn(folder));
    mkdirSync(join(folder, '.thrum-writing'));
    const owner = JSON.stringify({ process: 1, host: 'another-machine' });
    writeFileSync(join(folder, '.thrum-writing', 'owner.json'), owner);
    expect(await messageOf(writeSet(folder, setOf(5), { patience: 200 }))).toContain(
      'another run is writing into this folder',
    );
  });

  it('a desk that is taken while another is being emptied stays whole', async () => {
    const folder = freshFolder();
    const turns = async () => {
      for (let turn = 0; turn < 15; turn++) {
        const desk = await takeDesk(folder);
        const own = join(desk, 'new', 'results.json');
        await writeFlushed(own, ['{}']);
        await new Promise(setImmediate);
        expect(readFileSync(own, 'utf8')).toBe('{}');
        await leaveDesk(folder, desk);
      }
    };
    await Promise.all([turns(), turns(), turns(), turns()]);
    expect(readdirSync(folder)).toEqual([]);
  });

  it('a wish to stop leaves the folder as it was, and none where there was none', async () => {
    const folder = fresh();
    const stop = AbortSignal.abort('SIGINT');
    await expect(writeSet(folder, setOf(1), { stop })).rejects.toBeInstanceOf(Interrupted);
    expect(existsSync(folder)).toBe(false);
    await writeSet(folder, setOf(1));
    await expect(writeSet(folder, setOf(2), { stop })).rejects.toBeInstanceOf(Interrupted);
    expect(versionIn(folder)).toBe(1);
  });

  it('a folder that only was tried goes again', async () => {
    const folder = join(fresh(), 'deep', 'down');
    await tryFolder(folder, ['results.json']);
    expect(existsSync(join(folder, '..', '..'))).toBe(false);
  });
});

/** A small disk of its own, null where this user may make none. */
function smallDisk(): {
  readonly path: string;
  readonly reads: () => void;
  readonly gone: () => void;
} | null {
  const path = freshFolder();
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=512k', 'tmpfs', path], { stdio: 'ignore' });
  } catch {
    return null;
  }
  return {
    path,
    reads: () => execFileSync('mount', ['-o', 'remount,ro', path]),
    gone: () => execFileSync('umount', [path]),
  };
}

describe('a disk', () => {
  it('that is full keeps the results that were there, and one that is read-only says so', async (context) => {
    const disk = smallDisk();
    if (disk === null) {
      context.skip('this user may not mount a disk of its own');
      return;
    }
    try {
      const folder = join(disk.path, 'out');
      await writeSet(folder, setOf(1));
      writeFileSync(join(disk.path, 'filler'), Buffer.alloc(100_000));
      expect(await messageOf(writeSet(folder, setOf(2)))).toBe(
        `${folder}: nothing was written (the disk is full); make room, or write to another disk.`,
      );
      expect(versionIn(folder)).toBe(1);
      expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
      disk.reads();
      expect(await messageOf(tryFolder(folder, []))).toContain('nothing may be written there');
      expect(versionIn(folder)).toBe(1);
    } finally {
      disk.gone();
    }
  });

  it('a folder without permission says so', async (context) => {
    if (process.getuid?.() === 0) {
      context.skip('nothing is refused to root');
      return;
    }
    const folder = fresh();
    await writeSet(folder, setOf(1));
    chmodSync(folder, 0o500);
    expect(await messageOf(writeSet(folder, setOf(2)))).toContain('no permission');
    chmodSync(folder, 0o700);
    expect(versionIn(folder)).toBe(1);
  });
});

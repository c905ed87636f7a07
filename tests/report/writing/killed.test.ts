import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { tryFolder, writeSet } from '../../../src/report/writing/write-set.ts';
import { bundledChild, quickFolder, runChild } from './crash.ts';
import { setOf, versionIn } from './sets.ts';

/** Milliseconds; each of some hundred processes starts on a machine that may be busy. */
const PATIENCE = 900_000;
const KILLS = 200;
/** Processes at once: most of the time of each is spent waiting for it to start. */
const AT_ONCE = 4;

let child: string;
beforeAll(async () => {
  child = await bundledChild();
}, PATIENCE);

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** A folder with a stranger's file and the results of version 1. */
async function begun(): Promise<string> {
  const folder = quickFolder();
  folders.push(folder);
  writeFileSync(join(folder, 'notes.txt'), 'mine');
  await writeSet(folder, setOf(1));
  return folder;
}

function state(folder: string) {
  return [versionIn(folder, ['notes.txt']), readFileSync(join(folder, 'notes.txt'), 'utf8')];
}

/** The turns 0, 1, … of a task, some at once. */
async function sideBySide(turns: number, task: (turn: number) => Promise<void>): Promise<void> {
  let next = 0;
  const row = async () => {
    while (next < turns) await task(next++);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, row));
}

describe('a run that is killed', () => {
  it('at any of its dealings with the disk leaves the old files or the new ones, once the next command looks', {
    timeout: PATIENCE,
  }, async () => {
    const whole = await runChild(child, [await begun(), '2']);
    const dealings = Number(/done (\d+)/.exec(whole.out)?.[1]);
    expect(dealings).toBeGreaterThan(80);
    let unfinished = 0;
    await sideBySide(dealings, async (turn) => {
      const at = turn + 1;
      const folder = await begun();
      const { signal } = await runChild(child, [folder, '2', 'kill', String(at)]);
      expect(signal).toBe('SIGKILL');
      if (typeof versionIn(folder, ['notes.txt']) === 'string') unfinished++;
      await tryFolder(folder, []);
      const [version, notes] = state(folder);
      expect([1, 2], `killed at ${at}`).toContain(version);
      expect(notes).toBe('mine');
    });
    // Without the list of changes some of these kills would leave a mixture for good.
    expect(unfinished).toBeGreaterThan(0);
  });

  it(`at ${KILLS} random moments leaves the old files or the new ones`, { timeout: PATIENCE }, async () => {
    const random = createRandom(19);
    const moments = Array.from({ length: KILLS }, () => random.next());
    const seen = new Set<unknown>();
    const whole = await runChild(child, [await begun(), '2']);
    const long = 1.3 * Number(/done \d+ (\d+)/.exec(whole.out)?.[1]);
    let killed = 0;
    await sideBySide(AT_ONCE, async (row) => {
      const folder = await begun();
      let last = 1;
      for (let turn = row; turn < KILLS; turn += AT_ONCE) {
        const next = 2 + turn;
        const { signal } = await runChild(child, [folder, String(next)], moments[turn]! * long);
        if (signal === 'SIGKILL') killed++;
        await tryFolder(folder, []);
        const [version, notes] = state(folder);
        expect([last, next], `turn ${turn}`).toContain(version);
        expect(notes).toBe('mine');
        seen.add(version === last ? 'old' : 'new');
        last = Number(version);
      }
    });
    expect(killed).toBeGreaterThan(KILLS / 4);
    expect([...seen].sort()).toEqual(['new', 'old']);
  });
});

describe('a disk that refuses', () => {
  it('at any dealing leaves the old files, or the new ones where only clearing up was left', {
    timeout: PATIENCE,
  }, async () => {
    const whole = await runChild(child, [await begun(), '2']);
    const dealings = Number(/done (\d+)/.exec(whole.out)?.[1]);
    const spoilt: string[] = [];
    while (spoilt.length < dealings) spoilt.push(await begun());
    const [first = '', ...more] = spoilt;
    const { out } = await runChild(child, [first, '2', 'fault', ...more]);
    const ends = out.split('\n').slice(1, -1);
    expect(ends).toHaveLength(dealings);
    for (const [at, end] of ends.entries()) {
      const [version, notes] = state(spoilt[at]!);
      expect([1, 2], `refused at ${at + 1}: ${end}`).toContain(version);
      expect(notes).toBe('mine');
      if (end.startsWith('done')) expect(version).toBe(2);
    }
    expect(ends.filter((end) => end.includes('the disk is full')).length).toBeGreaterThan(dealings / 2);
  });
});

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder, ROOT, thrum } from './thrum.ts';

const study = join(ROOT, 'datasets/demo/study.json');
const written = (text: string) => {
  const path = join(freshFolder(), 'finds.csv');
  writeFileSync(path, text);
  return path;
};

describe('thrum place --finds', () => {
  const finds = written(
    'item,structure,row spacing (cm),density 1,zzyx\nA1,open twining,3.2,2-3,red\nA2,tabby,,12,blue\n',
  );
  it('prints one line a find and names the columns it did not use', async () => {
    const { status, out, err } = await thrum('place', study, '--finds', finds);
    expect(status).toBe(0);
    expect(
      out
        .trim()
        .split('\n')
        .map((line) => line.slice(0, 11)),
    ).toEqual(['A1: nearest', 'A2: nearest']);
    expect(err).toContain('column "zzyx"');
  }, 60_000);
  it('answers a listed find as it answers the same one alone, the unit of the header included', async () => {
    const many = JSON.parse((await thrum('place', study, '--finds', finds, '--json')).out);
    const alone = ['structure=open twining', 'rowSpacing=32 mm', 'density1=2-3'];
    const one = JSON.parse(
      (await thrum('place', study, ...alone.flatMap((part) => ['--find', part]), '--json')).out,
    );
    expect(many.finds[0].result.tables.neighbours).toEqual(one.tables.neighbours);
  }, 60_000);
  it('refuses a table without any attribute', async () => {
    const { status, err } = await thrum('place', study, '--finds', written('zzyx,qqw\n1,2\n'));
    expect(status).toBe(2);
    expect(err).toContain('no column of the finds is an attribute');
  }, 60_000);
});

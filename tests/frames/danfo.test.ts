/**
 * What danfojs-node 1.2.0 gets wrong, and what src/frames/ leans on. Each wrong answer is pinned as it is
 * today, so that an upgrade which mends or breaks something is noticed; the right answer stands beside it.
 * The right answers are plain arithmetic.
 */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Danfo, type DataFrame, type FrameValue, loadDanfo } from '../../src/frames/danfo.ts';

interface Grouped {
  col(names: readonly string[]): { count(): DataFrame; mean(): DataFrame; std(): DataFrame };
}
type Whole = Omit<Danfo, 'DataFrame'> & {
  readonly DataFrame: new (
    rows: readonly (readonly FrameValue[])[],
    options: { columns: readonly string[]; dtypes?: readonly string[] },
  ) => DataFrame & {
    groupby(by: readonly string[]): Grouped;
    describe(): DataFrame;
    sortValues(by: string): DataFrame;
  };
  readCSV(path: string): Promise<DataFrame>;
  toCSV(frame: DataFrame): string;
  readExcel(path: string, options: { sheet: number | string }): Promise<DataFrame>;
  readonly StandardScaler: new () => { fitTransform(frame: DataFrame): DataFrame };
};

let danfo: Whole;
let folder: string;

beforeAll(async () => {
  danfo = (await loadDanfo()) as Whole;
  folder = mkdtempSync(join(tmpdir(), 'thrum-frames-'));
});

const grouped = (gap: FrameValue) =>
  new danfo.DataFrame(
    [
      ['a', 1],
      ['a', gap],
      ['b', 3],
      ['b', 4],
    ],
    { columns: ['kind', 'value'] },
  );
const csv = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

describe('what danfojs-node gets wrong in silence', () => {
  it.each([null, NaN])('a grouped count includes the missing value %s (right: 1 and 2)', (gap) => {
    expect(grouped(gap).groupby(['kind']).col(['value']).count().values).toEqual([
      ['a', 2],
      ['b', 2],
    ]);
  });

  it('a grouped mean takes null for 0 (right: 1 and 3.5)', () => {
    expect(grouped(null).groupby(['kind']).col(['value']).mean().values).toEqual([
      ['a', 0.5],
      ['b', 3.5],
    ]);
  });

  it('a NaN poisons the mean of its group (right: 1 and 3.5)', () => {
    expect(grouped(NaN).groupby(['kind']).col(['value']).mean().values).toEqual([
      ['a', NaN],
      ['b', 3.5],
    ]);
  });

  it('the groups (a-b, c) and (a, b-c) merge (right: two groups of one)', () => {
    const frame = new danfo.DataFrame(
      [
        ['a-b', 'c', 1],
        ['a', 'b-c', 2],
      ],
      { columns: ['first', 'second', 'value'] },
    );
    expect(frame.groupby(['first', 'second']).col(['value']).count().values).toEqual([['a-b', 'c', 2]]);
  });

  it('a comma in a cell is not quoted when a CSV is written (right: "a,b" in quotation marks)', () => {
    const frame = new danfo.DataFrame([['a,b', 1]], { columns: ['name', 'value'] });
    expect(danfo.toCSV(frame)).toBe('name,value\na,b,1\n');
  });

  it('the identifier 001 of a CSV becomes 1 (right: 001)', async () => {
    const frame = await danfo.readCSV(csv('zeros.csv', 'id,value\n001,1\n002,2\n'));
    expect(frame.values).toEqual([
      [1, 1],
      [2, 2],
    ]);
  });

  it('one NA in a CSV makes a column of numbers text (right: numbers with a gap)', async () => {
    const frame = await danfo.readCSV(csv('na.csv', 'id,value\n1,1.5\n2,NA\n'));
    expect(frame.ctypes.values).toEqual(['int32', 'string']);
  });

  it('standardising one column with one NaN gives NaN throughout (right: -1, gap, 1)', () => {
    const frame = new danfo.DataFrame([[1], [NaN], [3]], { columns: ['value'] });
    expect(new danfo.StandardScaler().fitTransform(frame).values).toEqual([[NaN], [NaN], [NaN]]);
  });

  it('rows with a NaN stop a sort half way (right: 1, 2, gap)', () => {
    const frame = new danfo.DataFrame([[2], [NaN], [1]], { columns: ['value'] });
    expect(frame.sortValues('value').values).toEqual([[2], [NaN], [1]]);
  });

  it('an unknown sheet gives an empty frame (right: an error)', async () => {
    const path = join(folder, 'sheet.xlsx');
    danfo.toExcel(new danfo.DataFrame([[1]], { columns: ['value'] }), { filePath: path, sheetName: 'Finds' });
    expect((await danfo.readExcel(path, { sheet: 'Finds' })).shape).toEqual([0, 0]);
  });
});

describe('where danfojs-node throws', () => {
  it('a description of a column with null', () => {
    expect(() => grouped(null).describe()).toThrow(/Cannot calculate mean/);
  });

  it('a grouped standard deviation with null', () => {
    expect(() => grouped(null).groupby(['kind']).col(['value']).std()).toThrow(/Cannot calculate std/);
  });

  it('a CSV with a header and no rows', async () => {
    await expect(danfo.readCSV(csv('header.csv', 'id,value\n'))).rejects.toThrow(/No data found/);
  });
});

describe('what src/frames leans on', () => {
  it.each([null, NaN])('mean, median, deviation, ends and count of a column pass over %s', (gap) => {
    const column = grouped(gap).column('value');
    expect(column.mean()).toBeCloseTo(8 / 3, 14);
    expect(column.median()).toBe(3);
    expect(column.std()).toBeCloseTo(Math.sqrt(7 / 3), 14);
    expect([column.min(), column.max(), column.count()]).toEqual([1, 4, 3]);
  });

  it('a type that is given is kept, whatever the first rows look like', () => {
    const frame = new danfo.DataFrame([['001'], ['002']], { columns: ['id'], dtypes: ['string'] });
    expect(frame.ctypes.values).toEqual(['string']);
    expect(frame.values).toEqual([['001'], ['002']]);
  });

  it('doubles keep their precision, although the type is called float32', () => {
    const frame = new danfo.DataFrame([[0.1], [0.2]], { columns: ['value'] });
    expect(frame.values).toEqual([[0.1], [0.2]]);
  });

  it('a left merge keeps every row of the left frame', () => {
    const left = new danfo.DataFrame(
      [
        ['a', 1],
        ['b', 2],
      ],
      { columns: ['site', 'value'] },
    );
    const right = new danfo.DataFrame([['a', 3]], { columns: ['site', 'grid'] });
    const merged = danfo.merge({ left, right, on: ['site'], how: 'left' });
    expect(merged.shape).toEqual([2, 3]);
    expect(merged.values[0]).toEqual(['a', 1, 3]);
  });
});

import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/analyses/claims/reading/printed-table.ts';
import {
  blankGrid,
  gridBytes,
  isBlank,
  readGrid,
  withCell,
  withColumn,
  withoutColumn,
  withoutRow,
  withRow,
} from '../../src/app/screens/printed-figures/table-grid.ts';
import { withoutBlankTables } from '../../src/app/screens/printed-figures/use-claims.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const kept = (grid: ReturnType<typeof readGrid>) => readGrid(gridBytes(grid), 'table.csv');

describe('the cells of a printed table, as they are edited', () => {
  it.each([
    ['commas', 'site,tabby,twill\nA,12,7\n'],
    ['semicolons', 'site;tabby;twill\nA;12;7\n'],
    ['tabs and a short row', 'site\ttabby\ttwill\nA\t12\t7\nB\n'],
    ['decimal commas', 'site;n;mean\nA;12;7,5\nB;9;6,25\n'],
    ['a formula that is none', 'site,tabby,twill\n=A,-3,+4\n'],
    ['commas and quotation marks in a label', 'site,tabby,twill\n"A, ""lower""",12,7\n'],
  ])('stay what they are when written and read again: %s', (_, text) => {
    const grid = readGrid(bytes(text), 'table.csv');
    expect(grid.every((line) => line.length === 3)).toBe(true);
    expect(kept(grid)).toEqual(grid);
  });

  it('an empty row and an empty column wait for their text', () => {
    const grid = withColumn(withRow(readGrid(bytes('site,tabby\nA,12\n'), 'table.csv')));
    expect(grid).toEqual([
      ['site', 'tabby', ''],
      ['A', '12', ''],
      ['', '', ''],
    ]);
    expect(kept(grid)).toEqual(grid);
    expect(kept(blankGrid(3, 4))).toEqual(blankGrid(3, 4));
  });

  it('one is changed, and a row or a column is taken out, without touching the table before', () => {
    const grid = readGrid(bytes('site,tabby,twill\nA,12,7\nB,3,9\n'), 'table.csv');
    const before = structuredClone(grid);
    expect(withCell(grid, 2, 1, '4')[2]).toEqual(['B', '4', '9']);
    expect(withoutRow(grid, 1).map(([label]) => label)).toEqual(['site', 'B']);
    expect(withoutColumn(grid, 1)[0]).toEqual(['site', 'twill']);
    expect(grid).toEqual(before);
  });

  it('an empty table is no table yet, and says what it lacks', () => {
    expect(() => readTable(gridBytes(blankGrid(3, 4)), 'table.csv')).toThrow(
      'table.csv: this is no table with labels in its first row and column; give it a row of heads and a column of labels.',
    );
  });

  it('one that is laid out is blank until something stands in it; a file without cells is not', () => {
    expect(isBlank(blankGrid(3, 4))).toBe(true);
    expect(isBlank(withCell(blankGrid(3, 4), 2, 1, '4'))).toBe(false);
    expect(isBlank(readGrid(bytes('a,b\0\0\0\n'), 'table.csv'))).toBe(false);
  });

  it('one that is blank is not checked yet; what stands beside it is', () => {
    const grids: Record<string, ReturnType<typeof blankGrid>> = {
      'new.csv': blankGrid(3, 4),
      'old.csv': withCell(blankGrid(3, 4), 0, 1, 'tabby'),
    };
    const list = { id: 'paper', kind: 'claims', tables: [{ file: 'new.csv' }, { file: 'old.csv' }] };
    const asked = withoutBlankTables(list, (file) => grids[file] ?? []);
    expect(asked?.tables).toEqual([{ file: 'old.csv' }]);
    expect(withoutBlankTables({ ...list, tables: [{ file: 'new.csv' }] }, () => blankGrid(3, 4))).toBeNull();
  });

  it('a file that cannot be parted into cells has none', () => {
    expect(readGrid(bytes('a,b\0\0\0\n'), 'table.csv')).toEqual([]);
    expect(readGrid(undefined, 'table.csv')).toEqual([]);
  });
});

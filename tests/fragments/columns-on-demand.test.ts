import { expect, it } from 'vitest';
import { columnsOnDemand, withColumns } from '../../src/fragments/columns-on-demand.ts';
import { collapseItems, viewItems } from '../../src/fragments/items/items.ts';
import { takeRows, viewRows } from '../../src/fragments/subset.ts';
import type { Column } from '../../src/fragments/table.ts';
import { makeTable, register } from './make-table.ts';

const table = makeTable([
  { item: 'A', density1: [2, 4], structure: 'woven', remarks: 'torn' },
  { item: 'B', density1: 3, structure: 'openTwining', quantity: 2 },
  { item: 'A', density1: 11, structure: 'woven', pile: 'present', remarks: 'burnt' },
  { item: 'C', fibre: 'wool' },
]);

it('a view of rows, and of items, holds what the table of them holds', () => {
  for (const rows of [[2, 0], [1, 1, 3], [], [0, 1, 2, 3]]) {
    const view = viewRows(table, rows);
    expect({ ...view, columns: new Map(view.columns) }).toEqual(takeRows(table, rows));
  }
  const items = viewItems(table, register);
  expect({ ...items, columns: new Map(items.columns) }).toEqual(collapseItems(table, register).table);
});

it('all rows in their order are the table itself', () => {
  expect(takeRows(table, [0, 1, 2, 3])).toBe(table);
  expect(takeRows(table, [0, 1, 3, 2])).not.toBe(table);
  expect(takeRows(table, [0, 1, 2])).not.toBe(table);
});

it('a column is made once, when it is first asked for, and none that nobody asks for', () => {
  const made: string[] = [];
  const make = (id: string) => {
    made.push(id);
    return table.columns.get(id) as Column;
  };
  const columns = columnsOnDemand(table.columns.keys(), make);
  expect([columns.size, columns.has('fibre'), columns.has('nowhere')]).toEqual([
    table.columns.size,
    true,
    false,
  ]);
  expect([...columns.keys()]).toEqual([...table.columns.keys()]);
  expect(columns.get('nowhere')).toBeUndefined();
  expect(made).toEqual([]);
  expect(columns.get('fibre')).toBe(columns.get('fibre'));
  expect(made).toEqual(['fibre']);

  const other = { ...(table.columns.get('fibre') as Column) };
  const more = withColumns(columns, [
    ['pile', other],
    ['new', other],
  ]);
  expect([...more.keys()]).toEqual([...table.columns.keys(), 'new']);
  expect([more.get('pile'), more.get('new'), more.get('fibre')]).toEqual([
    other,
    other,
    table.columns.get('fibre'),
  ]);
  expect(made).toEqual(['fibre']);
  expect([...more]).toEqual([
    ...withColumns(table.columns, [
      ['pile', other],
      ['new', other],
    ]),
  ]);
});

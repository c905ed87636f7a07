import { describe, expect, it } from 'vitest';
import { collapseItems } from '../../src/fragments/items/items.ts';
import { countOf, hasQuantities, itemsOf, quantityAt } from '../../src/fragments/quantity.ts';
import { takeRows } from '../../src/fragments/subset.ts';
import { makeTable, register } from './make-table.ts';

const table = makeTable([
  { item: 'A', quantity: 12 },
  { item: 'B', quantity: 0.5 },
  { item: 'C' },
  { item: 'D', quantity: 0 },
  { item: 'E', quantity: 3 },
  { item: 'E', quantity: 4 },
]);

describe('how many objects a row stands for', () => {
  it('is what is recorded, half counts and nought among it, and one where nothing is', () => {
    expect([0, 1, 2, 3].map((row) => quantityAt(table, row))).toEqual([12, 0.5, 1, 0]);
  });

  it('adds up to the number of objects', () => {
    expect(countOf(table, [0, 1, 2, 3])).toBe(13.5);
    expect(countOf(makeTable([{ site: 'a' }, { site: 'b' }]), [0, 1])).toBe(2);
  });

  it('counts an item of several rows once, and one of a single row as often as it says', () => {
    expect(itemsOf(table, [0, 1, 4, 5])).toBe(13.5);
    const { table: items } = collapseItems(table, register);
    expect(countOf(items, items.item.keys())).toBe(12 + 0.5 + 1 + 0 + 1);
  });

  it('is known to matter only where a row is not one object', () => {
    expect(hasQuantities(table)).toBe(true);
    expect(hasQuantities(takeRows(table, [2]))).toBe(false);
    expect(hasQuantities(makeTable([{ site: 'a' }]))).toBe(false);
  });
});

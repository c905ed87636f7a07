import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midpoint, termAt } from '../../src/fragments/accessors.ts';
import { collapseItems } from '../../src/fragments/items/items.ts';
import { stateAt } from '../../src/fragments/missing.ts';
import { takeRows } from '../../src/fragments/subset.ts';
import type { NumericColumn, TermColumn } from '../../src/fragments/table.ts';
import { makeTable, register } from './make-table.ts';

const collapse = (rows: Parameters<typeof makeTable>[0]) => collapseItems(makeTable(rows), register);

describe('collapseItems', () => {
  it('keeps one row an item, named by it, in order of first appearance', () => {
    const { table } = collapse([
      { item: 'B', density1: 1 },
      { item: 'A', density1: 2 },
      { item: 'B', density1: 3 },
    ]);
    expect(table.id).toEqual(['B', 'A']);
    expect(table.rows).toBe(2);
  });

  it('takes the hull of the intervals and the median of their midpoints', () => {
    const { table, disagreements } = collapse([
      { item: 'A', density1: [2, 4] },
      { item: 'A', density1: 3 },
      { item: 'A', density1: [3, 11] },
    ]);
    const column = table.columns.get('density1') as NumericColumn;
    expect([column.low[0], column.high[0]]).toEqual([2, 11]);
    expect(midpoint(column, 0)).toBe(3);
    expect(disagreements).toEqual([]);
  });

  it('does not call a contradiction what recording alone explains', () => {
    expect(
      collapse([
        { item: 'A', density1: 10 },
        { item: 'A', density1: 11.5 },
      ]).disagreements,
    ).toEqual([]);
  });

  it('counts an item whose readings lie far apart', () => {
    expect(
      collapse([
        { item: 'A', density1: [2, 3] },
        { item: 'A', density1: [5, 6] },
      ]).disagreements,
    ).toEqual([{ attribute: 'density1', items: 1 }]);
  });

  it.each([
    ['the same', ['limeBast', 'limeBast'], 'limeBast', 0],
    ['a broader and a narrower: the narrower, no contradiction', ['treeBast', 'limeBast'], 'limeBast', 0],
    ['two sisters: their parent', ['limeBast', 'willowBast'], 'treeBast', 1],
    ['no common parent: none', ['limeBast', 'wool'], null, 1],
    ['one not observed: the other', ['-not-observed', 'wool'], 'wool', 0],
  ])('terms, %s', (_, fibres, expected, contradictions) => {
    const { table, disagreements } = collapse(fibres.map((fibre) => ({ item: 'A', fibre })));
    expect(termAt(table.columns.get('fibre') as TermColumn, 0)).toBe(expected);
    expect(disagreements.length).toBe(contradictions);
  });

  it.each([
    [['present', '-absent'], 'present', 1],
    [['-absent', '-not-observed'], 'absent', 0],
    [['-not-observed', '-not-observed'], null, 0],
  ])('pile %j reads as %s', (piles, expected, contradictions) => {
    const { table, disagreements } = collapse(piles.map((pile) => ({ item: 'A', pile })));
    expect(termAt(table.columns.get('pile') as TermColumn, 0)).toBe(expected);
    expect(disagreements.length).toBe(contradictions);
  });

  it('keeps why there is no value when all fragments share the reason', () => {
    const { table } = collapse([
      { item: 'A', density1: '-not-applicable' },
      { item: 'A', density1: '-not-applicable' },
    ]);
    expect(stateAt(table.columns.get('density1') as NumericColumn, 0)).toBe('not-applicable');
  });

  it('gives the same items whatever the order of the rows', () => {
    const cell = fc.record({
      item: fc.constantFrom('A', 'B', 'C'),
      density1: fc.integer({ min: 1, max: 20 }),
      fibre: fc.constantFrom('limeBast', 'willowBast', 'treeBast', 'wool', '-not-observed'),
    });
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 12 }), (rows) => {
        const table = makeTable(rows);
        const backwards = takeRows(
          table,
          rows.map((_, row) => rows.length - 1 - row),
        );
        const one = collapseItems(table, register).table;
        const other = collapseItems(backwards, register).table;
        for (const [row, id] of one.id.entries()) {
          const twin = other.id.indexOf(id);
          const density = (t: typeof one, r: number) =>
            midpoint(t.columns.get('density1') as NumericColumn, r);
          const fibre = (t: typeof one, r: number) => termAt(t.columns.get('fibre') as TermColumn, r);
          expect(density(one, row)).toBe(density(other, twin));
          expect(fibre(one, row)).toBe(fibre(other, twin));
        }
      }),
    );
  });
});

it('an object of a single piece is that piece, to its step, its middle and the readings of its cell', () => {
  const table = makeTable([{ item: 'A', density1: [2, 4] }, { item: 'B', density1: 3 }, { item: 'C' }]);
  const plain = table.columns.get('density1') as NumericColumn;
  const column: NumericColumn = {
    ...plain,
    step: Float64Array.of(1, 0.5, Number.NaN),
    centre: Float64Array.of(2.5, Number.NaN, Number.NaN),
    state: Uint8Array.of(1, 0, 2),
    readings: new Map([[0, [2, 2.5, 4]]]),
    derivedFrom: new Map([[1, ['density2']]]),
  };
  const given = { ...table, columns: new Map([['density1', column]]) };
  expect(collapseItems(given, register).table.columns.get('density1')).toEqual(column);
});

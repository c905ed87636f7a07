import { describe, expect, it } from 'vitest';
import { leastItems } from '../../src/fragments/items/least.ts';
import { type Cell, makeTable, register } from './make-table.ts';

const least = (rows: readonly Readonly<Record<string, Cell>>[]) => leastItems(makeTable(rows), register);

describe('the least number of items', () => {
  it('is one where nothing parts the fragments of a context, however many they are', () => {
    expect(least(Array.from({ length: 9 }, () => ({ site: 'Holm', fibre: 'wool', density1: 6 })))).toBe(1);
  });
  it('counts fragments that contradict one another in structure, fibre or a reading', () => {
    expect(
      least([
        { site: 'Holm', fibre: 'wool', density1: 6 },
        { site: 'Holm', fibre: 'limeBast', density1: 6 },
        { site: 'Holm', fibre: 'wool', density1: 12 },
      ]),
    ).toBe(3);
  });
  it('takes a broader word, and readings within a fifth, for the same', () => {
    expect(
      least([
        { site: 'Holm', fibre: 'treeBast', density1: 6 },
        { site: 'Holm', fibre: 'limeBast', density1: 7 },
      ]),
    ).toBe(1);
  });
  it('adds up contexts, and does not move with the order of the rows', () => {
    const rows = [
      { id: 'a', site: 'Holm', fibre: 'wool', density1: 6 },
      { id: 'b', site: 'Holm', fibre: 'limeBast' },
      { id: 'c', site: 'Pell', fibre: 'wool', density1: 6 },
      { id: 'd', site: 'Pell', density1: 9 },
      { id: 'e', site: 'Pell', fibre: 'treeBast' },
    ];
    expect(least(rows)).toBe(4);
    expect(least([...rows].reverse())).toBe(4);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { termAt } from '../../src/fragments/accessors.ts';
import { deriveColumns } from '../../src/fragments/derive.ts';
import type { NumericColumn, TermColumn } from '../../src/fragments/table.ts';
import { type Cell, makeTable, register } from './make-table.ts';

const derived = (row: Record<string, Cell>) => deriveColumns(makeTable([row]), register);
const ends = (row: Record<string, Cell>, id: string) => {
  const column = derived(row).columns.get(id) as NumericColumn | undefined;
  return column === undefined ? undefined : [column.low[0], column.high[0]];
};
const spacingClass = (row: Record<string, Cell>) => {
  const column = derived(row).columns.get('spacingClass') as TermColumn | undefined;
  return column === undefined ? null : termAt(column, 0);
};

// Arithmetic of intervals: count d per cm and spacing p mm are p = 10 / d, ends swapped, bounds turned over.
describe('spacing and count', () => {
  it.each<[string, Cell, number[]]>([
    ['3 to 4 per cm is 2.5 to 3.33 mm', [3, 4], [2.5, 10 / 3]],
    ['less than 1 per cm is more than 10 mm', [0, 1], [10, Infinity]],
    ['an exact count', 2, [5, 5]],
  ])('%s', (_, density2, expected) => {
    expect(ends({ structure: 'twined', density2 }, 'rowSpacing')).toEqual(expected);
  });

  it('more than 20 mm is less than 0.5 per cm', () => {
    expect(ends({ structure: 'twined', rowSpacing: [20, Infinity] }, 'density2')).toEqual([0, 0.5]);
  });

  // Common practice, no source: rows of an open twining some 3.5 cm apart.
  it('35 mm is 0.286 rows per cm', () => {
    expect(ends({ structure: 'openTwining', rowSpacing: 35 }, 'density2')?.[0]).toBeCloseTo(0.286, 3);
  });

  it('a weave has no row spacing of its own, and what is recorded stays', () => {
    expect(ends({ structure: 'woven', density2: 12 }, 'rowSpacing')).toBeUndefined();
    expect(ends({ structure: 'twined', density2: 2, rowSpacing: 6 }, 'rowSpacing')).toEqual([6, 6]);
  });
});

describe('cover, openness and balance', () => {
  // Worked by hand: w d / 10 at the ends, w in [0.8, 1.0] mm and d in [3, 4] per cm.
  it('width 0.8 to 1.0 mm at 3 to 4 per cm covers 0.24 to 0.40', () => {
    const [low, high] = ends({ diameter1: [0.8, 1], density1: [3, 4] }, 'cover1') as number[];
    expect(low).toBeCloseTo(0.24, 12);
    expect(high).toBeCloseTo(0.4, 12);
  });

  // Peirce 1937: covers 0.4 and 0.5 leave (1 - 0.4)(1 - 0.5) = 0.30 open.
  it('covers of 0.4 and 0.5 leave 0.30 open', () => {
    const [low, high] = ends(
      { diameter1: 1, density1: 4, diameter2: 1, density2: 5 },
      'openness',
    ) as number[];
    expect(low).toBeCloseTo(0.3, 12);
    expect(high).toBe(low);
  });

  it('14 against 12 is a balance of 14/12', () => {
    expect(ends({ structure: 'woven', density1: 14, density2: 12 }, 'balance')).toEqual([14 / 12, 14 / 12]);
  });

  it('every end is ordered and holds the value of the middles', () => {
    const interval = fc
      .tuple(fc.double({ min: 0.1, max: 9, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true }))
      .map(([low, more]): [number, number] => [low, low + more]);
    fc.assert(
      fc.property(interval, interval, interval, interval, (diameter1, density1, diameter2, density2) => {
        const row = { structure: 'twined', diameter1, density1, diameter2, density2 };
        for (const id of ['cover1', 'openness', 'balance', 'logBalance', 'rowSpacing']) {
          const [low, high] = ends(row, id) as number[];
          expect(low).toBeLessThanOrEqual(high);
        }
        const middle = (x: [number, number]) => (x[0] + x[1]) / 2;
        const [low, high] = ends(row, 'balance') as number[];
        const at = middle(density1) / middle(density2);
        expect(at).toBeGreaterThanOrEqual(low * (1 - 1e-12));
        expect(at).toBeLessThanOrEqual(high * (1 + 1e-12));
      }),
    );
  });
});

// Common practice, no source.
describe('spacing class', () => {
  it.each<[string, Record<string, Cell>, string | null]>([
    ['rows that touch are close', { structure: 'twined', rowSpacing: 5, rowWidth: 5 }, 'close'],
    ['a gap wider than the row is open', { structure: 'twined', rowSpacing: 12, rowWidth: 4 }, 'open'],
    ['a small gap is semi-open', { structure: 'twined', rowSpacing: 6, rowWidth: 4 }, 'semi-open'],
    ['35 mm apart is open whatever the width', { structure: 'twined', rowSpacing: 35 }, 'open'],
    ['6 mm apart of unknown width cannot be said', { structure: 'twined', rowSpacing: 6 }, null],
    [
      'an interval across one limit may be either',
      { structure: 'twined', rowSpacing: [7, 12], rowWidth: 5 },
      'semi-open or open',
    ],
    ['across both limits it cannot be said', { structure: 'twined', rowSpacing: [5, 12], rowWidth: 5 }, null],
    ['a weave has none', { structure: 'woven', rowSpacing: 35 }, null],
  ])('%s', (_, row, expected) => {
    expect(spacingClass(row)).toBe(expected);
  });
});

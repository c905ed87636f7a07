import { describe, expect, it } from 'vitest';
import { extendRegister } from '../../../src/attributes/register.ts';
import { midpoint } from '../../../src/fragments/accessors.ts';
import {
  lostCells,
  numbers,
  readReal,
  realTablesMissing,
  register,
  savedProfile,
  textsOf,
} from '../support.ts';

/**
 * Textiles of the Metropolitan Museum, Open Access (CC0), as its curators describe them. The expected
 * numbers are those that SOURCE.md beside the data documents.
 */
const count = (id: string, label: string) =>
  ({
    id,
    label,
    block: 'spacing',
    scale: 'ratio',
    unit: 'per cm',
    source: 'the museum’s catalogue',
  }) as const;
const counted = extendRegister(register, {
  attributes: [count('inchCount', 'Count printed per inch'), count('cmCount', 'Count printed per cm')],
});

function sorted(values: readonly number[]): number[] {
  return [...values].sort((a, b) => a - b);
}

describe.skipIf(realTablesMissing)('museum textiles with counts per inch and per cm', () => {
  it('agree after conversion: 211 objects, mean 8.358, median 8.5, sd 1.358 per cm', () => {
    const reading = readReal(
      'met-textile-counts/met_tapestry_warp_counts.csv',
      savedProfile('met-warp-counts'),
      counted,
    );
    expect([reading.rowsRead, reading.rowsKept, reading.faults]).toEqual([211, 211, []]);
    expect(lostCells(reading)).toEqual([]);
    const cm = numbers(reading, 'cmCount');
    const inch = numbers(reading, 'inchCount');
    const centimetres = Array.from(cm.low, (_, row) => midpoint(cm, row));
    const mean = centimetres.reduce((sum, value) => sum + value, 0) / 211;
    const sd = Math.sqrt(centimetres.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 210);
    expect(mean).toBeCloseTo(8.358, 3);
    expect(sorted(centimetres)[105]).toBe(8.5);
    expect(sd).toBeCloseTo(1.358, 3);
    const differences = centimetres.map((value, row) => value - midpoint(inch, row));
    expect(differences.reduce((sum, value) => sum + value, 0) / 211).toBeCloseTo(0.22, 3);
    expect(Math.max(...differences.map(Math.abs))).toBeCloseTo(1.823, 3);
    const far = reading.table.id.filter((_, row) => Math.abs(differences[row]) > 1);
    expect(far).toHaveLength(10);
    expect(far).toEqual(expect.arrayContaining(['227933', '197750']));
  });

  it('are 750 in prose, each kept whole, with the counts found by the words beside them', () => {
    const reading = readReal(
      'met-textile-counts/met_textiles_750.csv',
      savedProfile('met-textiles'),
      counted,
    );
    expect([reading.rowsRead, reading.rowsKept]).toEqual([750, 750]);
    expect(lostCells(reading)).toEqual([]);
    expect(textsOf(reading, 'column: Medium').every((text) => text !== '')).toBe(true);
    const short = readReal(
      'met-textile-counts/met_tapestry_warp_counts.csv',
      savedProfile('met-warp-counts'),
      counted,
    );
    const rowOf = new Map(reading.table.id.map((id, row) => [id, row]));
    const prose = numbers(reading, 'cmCount');
    const plain = numbers(short, 'cmCount');
    const differing = short.table.id.filter((id, row) => {
      const at = rowOf.get(id);
      return at === undefined || prose.low[at] !== plain.low[row] || prose.high[at] !== plain.high[row];
    });
    expect(differing).toEqual([]);
  });

  it('are read as 750 rows of four columns without a profile', () => {
    const reading = readReal('met-textile-counts/met_textiles_750.csv');
    expect([reading.rowsKept, reading.columns.length, reading.rowsSetAside]).toEqual([750, 4, []]);
    expect(lostCells(reading)).toEqual([]);
    const departments = new Map<string, number>();
    const column = reading.table.columns.get('repository');
    for (const raw of column?.raw ?? []) departments.set(raw, (departments.get(raw) ?? 0) + 1);
    expect(departments.get('Islamic Art')).toBe(253);
    expect(departments.get('European Sculpture and Decorative Arts')).toBe(248);
    expect(departments.size).toBe(9);
  });
});

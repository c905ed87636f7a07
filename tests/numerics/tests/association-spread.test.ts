import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { spreadOfPhiSquared } from '../../../src/numerics/tests/association-spread.ts';

interface ByR {
  readonly data: string;
  readonly table: readonly (readonly number[])[];
  readonly spread: number;
}

/** Open data of R, the derivatives taken by R from the definition of φ². */
const { tables } = JSON.parse(
  readFileSync(new URL('../../references/association-spread.json', import.meta.url), 'utf8'),
) as { readonly tables: readonly ByR[] };

describe('how far φ² spreads in samples', () => {
  it.each(tables)('is what numerical derivatives give for $data', ({ table, spread }) => {
    expect(Math.abs(spreadOfPhiSquared(table) / spread - 1)).toBeLessThan(1e-6);
  });

  it('is the same with rows and columns exchanged, and however many records there are', () => {
    for (const { table } of tables) {
      const spread = spreadOfPhiSquared(table);
      const turned = table[0]!.map((_, j) => table.map((row) => row[j]!));
      expect(spreadOfPhiSquared(turned)).toBeCloseTo(spread, 12);
      expect(spreadOfPhiSquared(table.map((row) => row.map((count) => 7 * count)))).toBeCloseTo(spread, 12);
    }
  });

  it('is nothing where nothing goes together', () => {
    const even = [
      [10, 20],
      [20, 40],
    ];
    expect(spreadOfPhiSquared(even)).toBeCloseTo(0, 12);
  });
});

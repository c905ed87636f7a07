import { describe, expect, it } from 'vitest';
import type { Variable } from '../../../src/numerics/dissimilarity/variables.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { permutedVariables } from '../../../src/numerics/grouping/permuted.ts';

const number = (values: number[]): Variable => ({
  kind: 'quantity',
  low: Float64Array.from(values),
  high: Float64Array.from(values, (value) => value + 0.5),
  range: 1,
  block: 0,
  weight: 1,
});

describe('permutedVariables', () => {
  const values = Array.from({ length: 40 }, (_, i) => i);

  it('keeps the values of each variable, with the ends of an interval together, and cuts the ties between them', () => {
    const [first, second] = permutedVariables([number(values), number(values)], values, createRandom(2));
    if (first.kind !== 'quantity' || second.kind !== 'quantity') throw new Error('kinds changed');
    expect([...first.low].sort((a, b) => a - b)).toEqual(values);
    expect(first.low.every((low, i) => first.high[i] === low + 0.5)).toBe(true);
    expect([...first.low]).not.toEqual(values);
    expect([...first.low]).not.toEqual([...second.low]);
  });

  it('moves the fragments of an item as one', () => {
    const items = values.map((i) => i >> 1);
    const [kinds] = permutedVariables(
      [{ kind: 'presence', codes: Int32Array.from(items), block: 0, weight: 1 }],
      items,
      createRandom(3),
    );
    if (kinds.kind === 'quantity') throw new Error('kinds changed');
    for (let i = 0; i < 40; i += 2) expect(kinds.codes[i]).toBe(kinds.codes[i + 1]);
  });
});

import { describe, expect, it } from 'vitest';
import { cohenKappa } from '../../../src/numerics/tests/kappa.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

const r = reference<{ tables: { counts: number[][]; kappa: number; variance: number }[] }>('kappa');

describe(`Cohen's kappa, as ${r.tool}`, () => {
  it.each(r.tables)('$counts', ({ counts, kappa, variance }) => {
    const found = available(cohenKappa(counts));
    expectClose(found.kappa, kappa);
    expectClose(found.standardError, Math.sqrt(variance));
  });

  it('is 1 for full agreement, 0 for as much as chance and unavailable for one kind alone', () => {
    expect(
      available(
        cohenKappa([
          [5, 0],
          [0, 3],
        ]),
      ).kappa,
    ).toBe(1);
    expect(
      available(
        cohenKappa([
          [4, 4],
          [4, 4],
        ]),
      ).kappa,
    ).toBe(0);
    expect(
      cohenKappa([
        [7, 0],
        [0, 0],
      ]),
    ).toEqual({ why: 'both judgements know one kind alone' });
    expect(
      cohenKappa([
        [0, 0],
        [0, 0],
      ]),
    ).toEqual({ why: 'there is no record that both judge' });
  });
});

import { describe, expect, it } from 'vitest';
import { mixedAnalysis, projectMixed } from '../../../src/numerics/ordination/mixed.ts';
import { available, expectClose, expectUpToSign } from '../compare-up-to-sign.ts';
import { r } from './ordination-values.ts';
import { expectSharesToSumToOne } from './shares.ts';

describe('factor analysis of mixed data', () => {
  it.each(r.mixtures)('equals ade4::dudi.hillsmith on $name within 1e-9', (given) => {
    const found = available(mixedAnalysis(given.columns));
    expectClose(found.eigenvalues, given.eigenvalues, 1e-9, found.axes);
    expectUpToSign(found.rows.coordinates, found.axes, given.rows, 1e-9);
    expectUpToSign(found.columns.coordinates, found.axes, given.parts, 1e-9);
    expectSharesToSumToOne(found.rows, found.axes);
    expectSharesToSumToOne(found.columns, found.axes);
    for (let q = 0; q < given.columns.length; q++) {
      const ours = found.discrimination.slice(q * found.axes, q * found.axes + given.ratios.columns);
      expectClose(ours, given.ratios.values.slice(q * given.ratios.columns), 1e-9, given.ratios.columns);
    }
    const record = given.columns.map((column) =>
      column.kind === 'quantity' ? column.values[2] : column.codes[2],
    );
    expectClose(
      projectMixed(found, record).coordinates,
      found.rows.coordinates.slice(2 * found.axes, 3 * found.axes),
      1e-9,
    );
  });

  it('leaves out what is the same in all records', () => {
    const found = available(
      mixedAnalysis([
        { kind: 'quantity', values: [1, 2, 4] },
        { kind: 'quantity', values: [5, 5, 5] },
        { kind: 'kinds', codes: [0, 1, 1], levels: 2 },
      ]),
    );
    expect(found.constant).toEqual([1]);
  });
});

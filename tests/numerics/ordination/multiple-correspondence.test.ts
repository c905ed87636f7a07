import { describe, it } from 'vitest';
import {
  multipleCorrespondence,
  projectKinds,
} from '../../../src/numerics/ordination/multiple-correspondence.ts';
import { available, expectClose, expectUpToSign } from '../compare-up-to-sign.ts';
import { r } from './ordination-values.ts';
import { expectSharesToSumToOne } from './shares.ts';

describe('multiple correspondence analysis', () => {
  it.each(r.multiples)('equals ade4::dudi.acm, MASS::mca and ca::mjca on $name within 1e-9', (given) => {
    const found = available(multipleCorrespondence(given.columns));
    expectClose(found.eigenvalues, given.eigenvalues, 1e-9);
    expectClose(found.eigenvalues, given.mcaEigenvalues, 1e-9);
    expectUpToSign(found.rows.coordinates, found.axes, given.rows, 1e-9);
    expectUpToSign(found.columns.coordinates, found.axes, given.categories, 1e-9);
    for (let q = 0; q < given.columns.length; q++) {
      expectClose(
        found.discrimination.slice(q * found.axes, (q + 1) * found.axes),
        given.ratios.values.slice(q * given.ratios.columns, (q + 1) * given.ratios.columns),
        1e-9,
      );
    }
    expectClose(found.adjusted.inertias, given.adjustedInertias, 1e-9);
    expectClose(found.adjusted.shares, given.adjustedShares, 1e-9);
    expectSharesToSumToOne(found.rows, found.axes);
    expectSharesToSumToOne(found.columns, found.axes);
    const place = projectKinds(
      found,
      given.columns.map((column) => column.codes[3]),
    );
    expectClose(place.coordinates, found.rows.coordinates.slice(3 * found.axes, 4 * found.axes), 1e-9);
  });
});

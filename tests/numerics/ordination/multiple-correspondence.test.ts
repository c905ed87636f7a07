import { describe, expect, it } from 'vitest';
import type { MixedColumn } from '../../../src/numerics/ordination/mixed.ts';
import {
  type KindsColumn,
  multipleCorrespondence,
  projectKinds,
} from '../../../src/numerics/ordination/multiple-correspondence.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose, expectUpToSign, type MatrixRows } from '../compare-up-to-sign.ts';

interface Reference {
  readonly components: readonly {
    readonly name: string;
    readonly data: MatrixRows;
    readonly scale: boolean;
    readonly sdev: readonly number[];
    readonly rotation: MatrixRows;
    readonly scores: MatrixRows;
  }[];
  readonly tables: readonly {
    readonly name: string;
    readonly counts: MatrixRows;
    readonly eigenvalues: readonly number[];
    readonly rows: MatrixRows;
    readonly columns: MatrixRows;
    readonly rowMasses: readonly number[];
    readonly rowInertias: readonly number[];
    readonly columnInertias: readonly number[];
    readonly suprow: number;
    readonly supcol: number;
    readonly supplementaryEigenvalues: readonly number[];
    readonly supplementaryRow: readonly number[];
    readonly supplementaryColumn: readonly number[];
    readonly activeRows: MatrixRows;
  }[];
  readonly multiples: readonly {
    readonly name: string;
    readonly columns: readonly KindsColumn[];
    readonly eigenvalues: readonly number[];
    readonly rows: MatrixRows;
    readonly categories: MatrixRows;
    readonly ratios: MatrixRows;
    readonly mcaEigenvalues: readonly number[];
    readonly adjustedInertias: readonly number[];
    readonly adjustedShares: readonly number[];
  }[];
  readonly mixtures: readonly {
    readonly name: string;
    readonly columns: readonly MixedColumn[];
    readonly eigenvalues: readonly number[];
    readonly rows: MatrixRows;
    readonly parts: MatrixRows;
    readonly ratios: MatrixRows;
  }[];
}

const r = reference<Reference>('ordination');

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, value) => total + value, 0);

function expectSharesToSumToOne(
  points: { n: number; contributions: Float64Array; cos2: Float64Array },
  axes: number,
) {
  for (let k = 0; k < axes; k++) {
    let share = 0;
    for (let i = 0; i < points.n; i++) share += points.contributions[i * axes + k];
    expect(share).toBeCloseTo(1, 9);
  }
  for (let i = 0; i < points.n; i++)
    expect(sum(points.cos2.slice(i * axes, (i + 1) * axes))).toBeCloseTo(1, 8);
}

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

import { describe, expect, it } from 'vitest';
import { correspondence, projectColumn, projectRow } from '../../src/numerics/ordination/correspondence.ts';
import { type MixedColumn, mixedAnalysis, projectMixed } from '../../src/numerics/ordination/mixed.ts';
import {
  type KindsColumn,
  multipleCorrespondence,
  projectKinds,
} from '../../src/numerics/ordination/multiple-correspondence.ts';
import { principalComponents, projectScores } from '../../src/numerics/ordination/pca.ts';
import { reference } from '../references/reference.ts';
import { available, columnOf, expectClose, expectUpToSign, type MatrixRows } from './compare-up-to-sign.ts';

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

describe('principal components', () => {
  it.each(r.components)('equal R prcomp on $name within 1e-9', (given) => {
    const columns = Array.from({ length: given.data.columns }, (_, j) => columnOf(given.data, j));
    const found = available(principalComponents(columns, { scale: given.scale }));
    const largest = Math.max(...given.scores.values.map(Math.abs));
    expectClose(
      found.eigenvalues,
      given.sdev.map((sd) => sd * sd),
      1e-9 * given.sdev[0] ** 2,
      found.axes,
    );
    expectUpToSign(found.loadings, found.axes, { ...given.rotation }, 1e-9);
    expectUpToSign(found.scores, found.axes, given.scores, 1e-9 * largest);
    for (let k = 0; k < found.axes; k++) {
      let share = 0;
      for (let i = 0; i < given.data.rows; i++) share += found.rowContributions[i * found.axes + k];
      expect(share).toBeCloseTo(1, 9);
    }
    for (let j = 0; j < columns.length; j++) {
      expect(sum(found.columnCos2.slice(j * found.axes, (j + 1) * found.axes))).toBeCloseTo(1, 9);
    }
    for (const row of [0, 5]) {
      const place = available(
        projectScores(
          found,
          columns.map((column) => column[row]),
        ),
      );
      expectClose(
        place.coordinates,
        found.scores.slice(row * found.axes, (row + 1) * found.axes),
        1e-9 * largest,
      );
    }
  });

  it('leave out rows with gaps and constant columns, and name them', () => {
    const found = available(
      principalComponents([
        [1, 2, 3, Number.NaN, 5],
        [2, 1, 4, 4, 9],
        [7, 7, 7, 3, 7],
      ]),
    );
    expect([...found.keptRows]).toEqual([0, 1, 2, 4]);
    expect(found.constantColumns).toEqual([2]);
    expect(found.keptColumns).toEqual([0, 1]);
  });

  it('say what is missing: too few records, nothing that varies', () => {
    expect(
      principalComponents([
        [1, 2],
        [3, 4],
      ]),
    ).toEqual({ why: 'needs 3 records without gaps, not 2' });
    expect(
      principalComponents([
        [1, 1, 1],
        [1, 2, 3],
      ]),
    ).toEqual({ why: 'needs 2 attributes that vary, not 1' });
  });

  it('point the same way whatever the order of the records', () => {
    const { data } = r.components[0];
    const columns = Array.from({ length: data.columns }, (_, j) => columnOf(data, j));
    const forward = available(principalComponents(columns));
    const back = available(principalComponents(columns.map((column) => [...column].reverse())));
    expectClose(forward.loadings, back.loadings, 1e-9);
  });
});

describe('correspondence analysis', () => {
  it.each(r.tables)('equals the R package ca on $name within 1e-9', (given) => {
    const { rows, columns, values } = given.counts;
    const found = available(correspondence(values, rows, columns));
    expectClose(found.eigenvalues, given.eigenvalues, 1e-9);
    expectUpToSign(found.rows.coordinates, found.axes, given.rows, 1e-9);
    expectUpToSign(found.columns.coordinates, found.axes, given.columns, 1e-9);
    expectClose(found.rows.weights, given.rowMasses, 1e-12);
    expectClose(found.rows.inertias, given.rowInertias, 1e-12);
    expectClose(found.columns.inertias, given.columnInertias, 1e-12);
    expectSharesToSumToOne(found.rows, found.axes);
    expectSharesToSumToOne(found.columns, found.axes);
  });

  it('smoke has the inertias 0.0747591059, 0.0100171805, 0.0004135741 and chi-square 16.4416431', () => {
    // Greenacre 1984, smoking table; values of R ca as stated in the project's trade notes.
    const { rows, columns, values } = r.tables[0].counts;
    const found = available(correspondence(values, rows, columns));
    expectClose(found.eigenvalues, [0.0747591059, 0.0100171805, 0.0004135741], 1e-10);
    expect(found.chiSquare).toBeCloseTo(16.4416431, 7);
  });

  it.each(r.tables)('a supplementary row and column of $name fall where ca puts them', (given) => {
    const { rows, columns, values } = given.counts;
    const keepRows = Array.from({ length: rows }, (_, i) => i).filter((i) => i !== given.suprow);
    const keepColumns = Array.from({ length: columns }, (_, j) => j).filter((j) => j !== given.supcol);
    const active = keepRows.flatMap((i) => keepColumns.map((j) => values[i * columns + j]));
    const found = available(correspondence(active, keepRows.length, keepColumns.length));
    expectClose(found.eigenvalues, given.supplementaryEigenvalues, 1e-9, found.axes);
    const row = available(
      projectRow(
        found,
        keepColumns.map((j) => values[given.suprow * columns + j]),
      ),
    );
    const column = available(
      projectColumn(
        found,
        keepRows.map((i) => values[i * columns + given.supcol]),
      ),
    );
    const { axes } = found;
    for (let k = 0; k < axes; k++) {
      let same = 0;
      keepRows.forEach((_, i) => {
        same +=
          found.rows.coordinates[i * axes + k] * given.activeRows.values[i * given.activeRows.columns + k];
      });
      expect(Math.abs(row.coordinates[k] - Math.sign(same) * given.supplementaryRow[k])).toBeLessThan(1e-9);
      expect(Math.abs(column.coordinates[k] - Math.sign(same) * given.supplementaryColumn[k])).toBeLessThan(
        1e-9,
      );
    }
  });

  it('leaves out empty rows and columns, and projects an active row onto itself', () => {
    const found = available(correspondence([4, 0, 2, 0, 0, 0, 1, 0, 5, 3, 0, 3], 4, 3));
    expect(found.keptRows).toEqual([0, 2, 3]);
    expect(found.keptColumns).toEqual([0, 2]);
    const place = available(projectRow(found, [1, 0, 5]));
    expectClose(place.coordinates, found.rows.coordinates.slice(found.axes, 2 * found.axes), 1e-12);
    expect(projectRow(found, [0, 9, 0])).toEqual({ why: 'it has no count in any column of the analysis' });
  });

  it('says when there is nothing to draw', () => {
    expect(correspondence([1, 2], 1, 2)).toEqual({
      why: 'the table needs two rows and two columns that are not empty',
    });
    expect(correspondence([1, 2, 2, 4], 2, 2)).toEqual({
      why: 'all rows have the same profile, so there is nothing to spread out',
    });
    expect(() => correspondence([1, -2, 2, 4], 2, 2)).toThrow('-2 is no count');
  });
});

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

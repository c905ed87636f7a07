import { describe, expect, it } from 'vitest';
import {
  correspondence,
  projectColumn,
  projectRow,
} from '../../../src/numerics/ordination/correspondence.ts';
import { available, expectClose, expectUpToSign } from '../compare-up-to-sign.ts';
import { r } from './ordination-values.ts';
import { expectSharesToSumToOne } from './shares.ts';

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

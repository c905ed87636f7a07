import { describe, expect, it } from 'vitest';
import { principalComponents, projectScores } from '../../../src/numerics/ordination/pca.ts';
import { available, columnOf, expectClose, expectUpToSign } from '../compare-up-to-sign.ts';
import { r } from './ordination-values.ts';

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, value) => total + value, 0);

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

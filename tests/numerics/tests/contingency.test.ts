import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { association, withoutEmptyLines } from '../../../src/numerics/tests/contingency.ts';
import { fisherExact } from '../../../src/numerics/tests/fisher-exact.ts';
import { available, expectClose } from '../close.ts';
import { r } from '../counts-and-trends-values.ts';

const random = () => createRandom(11);

describe(`tables of counts, as ${r.tool} ${r.version}`, () => {
  it.each(Object.entries(r.contingency))('%s', (_, expected) => {
    const found = available(association(expected.table));
    expectClose(found.chiSquared, expected.chiSquared);
    expect(found.df).toBe(expected.df);
    expectClose(found.p, expected.p, 1e-7);
    expectClose(found.g, expected.g);
    expectClose(found.gP, expected.gP, 1e-7);
    expectClose(found.cramersV, expected.cramersV);
    found.residuals.forEach((line, i) => {
      line.forEach((residual, j) => {
        expectClose(residual, expected.residuals[i][j]);
      });
    });
    if (expected.fisher !== null) {
      const exact = available(fisherExact(expected.table, random()));
      expect(exact.method).toBe('exact');
      expectClose(exact.p, expected.fisher, 1e-7);
    }
  });

  it('draws tables where they are too many to walk, and comes near the chi-squared p', () => {
    const { table, p } = r.contingency.caithness;
    const drawn = available(
      fisherExact(
        table.map((line) => line.map((count) => Math.ceil(count / 15))),
        random(),
      ),
    );
    expect(drawn.p).toBeGreaterThan(0);
    expect(p).toBeLessThan(1e-9);
    expect(drawn.p).toBeLessThan(0.001);
  });

  it('contributions of the cells add up to one', () => {
    const { contributions } = available(association(r.contingency.hairEye.table));
    expectClose(
      contributions.flat().reduce((sum, part) => sum + part, 0),
      1,
    );
  });

  it('a corrected V of independent counts is 0', () => {
    expect(
      available(
        association([
          [10, 20],
          [20, 40],
        ]),
      ).cramersVCorrected,
    ).toBe(0);
  });

  it('says why not', () => {
    expect(association([[1, 2]])).toEqual({ why: 'an association needs two rows and two columns' });
    expect(
      association([
        [1, 0],
        [2, 0],
      ]),
    ).toEqual({ why: 'a row or column of the table is empty' });
    expect(
      withoutEmptyLines([
        [1, 0, 2],
        [0, 0, 0],
        [3, 0, 1],
      ]),
    ).toEqual({
      table: [
        [1, 2],
        [3, 1],
      ],
      rows: [0, 2],
      columns: [0, 2],
    });
  });
});

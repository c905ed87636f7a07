import { describe, expect, it } from 'vitest';
import { computeOrdination } from '../../../src/analyses/ordination/compute.ts';
import { ordination } from '../../../src/analyses/ordination/index.ts';
import { type OrdinationOptions, ordinationOptions } from '../../../src/analyses/ordination/options.ts';
import { InputError } from '../../../src/errors.ts';
import { reference } from '../../references/reference.ts';
import { attribute, madeInput } from '../grouping/made-table.ts';

const iris = reference<{
  data: number[][];
  species: number[];
  correlations: number[];
  ratios: number[];
  centres: number[][];
}>('supplementary');

const columns = [
  ...iris.data.map((values, j) => ({ attribute: attribute(`a${j}`, 'spacing', 'interval'), values })),
  {
    attribute: attribute('species', 'find', 'nominal'),
    values: iris.species.map((code) => ['setosa', 'versicolor', 'virginica'][code]),
  },
];
const of = ['a0', 'a1', 'a2'];
const run = (more: Partial<OrdinationOptions>, given = columns) =>
  computeOrdination(
    madeInput(given),
    ordinationOptions.parse({ method: 'pca', of, supplementaryAttributes: ['a3', 'species'], ...more }),
  );

describe('supplementary attributes', () => {
  it('of the first three columns of iris: correlations, ratios and centres of R (1e-9, axes up to sign)', () => {
    const found = run({});
    const [width, species, ...kinds] = found.supplementary;
    expect(found.supplementary.map(({ role }) => role)).toEqual([
      'number',
      'kinds together',
      'kind',
      'kind',
      'kind',
    ]);
    for (let k = 0; k < 3; k++) {
      const sign = Math.sign(width.at[k] * iris.correlations[k]);
      expect(sign * width.at[k]).toBeCloseTo(iris.correlations[k], 9);
      expect(species.common[k]).toBeCloseTo(iris.ratios[k], 9);
      for (const [s, kind] of kinds.entries()) expect(sign * kind.at[k]).toBeCloseTo(iris.centres[s][k], 9);
    }
  });

  it('have no say: the axes are the same with them and without', () => {
    const [one, other] = [run({}), run({ supplementaryAttributes: [] })];
    expect(ordination.tables(one).coordinates).toEqual(ordination.tables(other).coordinates);
    expect(ordination.tables(one).axes).toEqual(ordination.tables(other).axes);
    expect(ordination.tables(other).supplementary).toBeUndefined();
  });

  it('leave out the records that lack them, and count the others', () => {
    const gappy = columns.map((column, j) =>
      j === 3 ? { ...column, values: column.values.map((value, row) => (row < 10 ? null : value)) } : column,
    );
    expect(run({}, gappy as typeof columns).supplementary[0].n).toBe(140);
  });

  it('lie over principal coordinates of dissimilarities as well, in the figure and in a table', () => {
    const found = run({ method: 'pcoa' });
    expect(ordination.tables(found).supplementary.rows).toHaveLength(5);
    const { map } = ordination.figures(found);
    expect(map.caption).toContain('centres of supplementary kinds');
    expect(JSON.stringify(map.data)).toContain('species: virginica');
  });

  it('are left out of the axes where none are named', () => {
    const named = run({ method: 'pcoa', supplementaryAttributes: ['a3'] });
    const all = run({ method: 'pcoa', of: [], supplementaryAttributes: ['a3'] });
    expect(ordination.tables(all).coordinates).toEqual(ordination.tables(named).coordinates);
  });

  it('are refused where they make the axes, and in correspondence analysis', () => {
    expect(() => run({ supplementaryAttributes: ['a0'] })).toThrow(/makes the axes already/);
    expect(() => run({ method: 'ca', rows: 'species', columns: 'species', of: [] })).toThrow(InputError);
  });
});

import { describe, expect, it } from 'vitest';
import type { AnalysisInput } from '../../../src/analyses/contract.ts';
import { convexHull } from '../../../src/analyses/ordination/centres.ts';
import { computeOrdination } from '../../../src/analyses/ordination/compute.ts';
import { ordination } from '../../../src/analyses/ordination/index.ts';
import { type OrdinationOptions, ordinationOptions } from '../../../src/analyses/ordination/options.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { correspondence } from '../../../src/numerics/ordination/correspondence.ts';
import { prepareDemo } from '../../demo/prepared.ts';
import { available, columnOf, expectUpToSign, type MatrixRows } from '../../numerics/compare-up-to-sign.ts';
import { reference } from '../../references/reference.ts';
import { attribute, madeInput } from '../grouping/made-table.ts';

const { components, tables } = reference<{
  readonly components: readonly {
    readonly name: string;
    readonly data: MatrixRows;
    readonly scores: MatrixRows;
  }[];
  readonly tables: readonly {
    readonly name: string;
    readonly counts: MatrixRows;
    readonly rows: MatrixRows;
  }[];
}>('ordination');
const options = (more: Partial<OrdinationOptions>): OrdinationOptions => ordinationOptions.parse(more);
const coordinates = (found: ReturnType<typeof computeOrdination>) =>
  available(found.axes).records.flatMap(({ at }) => at);

describe('ordination of a table', () => {
  it('pca of USArrests has the scores of R prcomp, whatever the gaps beside it', () => {
    const given = components[0];
    const columns = Array.from({ length: 4 }, (_, j) => ({
      attribute: attribute(`a${j}`, 'spacing', 'interval'),
      values: [...columnOf(given.data, j), j === 2 ? null : 5],
    }));
    const input = madeInput(columns);
    const found = computeOrdination(input, options({ method: 'pca', axes: 4 }));
    expectUpToSign(coordinates(found), 4, given.scores, 1e-9);
    expect(found.n.fragments).toBe(50);
    expect(found.n.setAside).toEqual([{ reason: 'a value is missing', fragments: 1 }]);
    const filled = computeOrdination(input, options({ method: 'pca', gaps: 'mean' }));
    expect(filled.n.fragments).toBe(51);
    expect(coordinates(filled).length).toBe(51 * 3);
    expect(coordinates(filled).every(Number.isFinite)).toBe(true);
    expect(
      ordination
        .words(filled)
        .unless.map((turn) => turn.what)
        .join(' '),
    ).toContain('1 missing number took the mean');
  });

  it('ca of records counted into the smoking table (Greenacre 1984) has the rows of R ca', () => {
    const { counts, rows } = tables[0];
    const pairs = counts.values.flatMap((count, at) =>
      Array.from({ length: count }, () => [Math.floor(at / counts.columns), at % counts.columns]),
    );
    const input = madeInput([
      { attribute: attribute('site', 'context', 'nominal'), values: pairs.map(([i]) => `row ${i}`) },
      { attribute: attribute('kind', 'structure', 'nominal'), values: pairs.map(([, j]) => `kind ${j}`) },
    ]);
    const found = computeOrdination(input, options({ method: 'ca', rows: 'site', columns: 'kind' }));
    expectUpToSign(coordinates(found), 3, rows, 1e-9);
    const passive = computeOrdination(
      input,
      options({ method: 'ca', rows: 'site', columns: 'kind', supplementary: ['row 4'] }),
    );
    const active = available(correspondence(counts.values.slice(0, 16), 4, 4));
    expect(available(passive.axes).eigenvalues[0]).toBeCloseTo(active.eigenvalues[0], 12);
    expect(available(passive.axes).records[4].role).toBe('supplementary row');
    expect(() =>
      computeOrdination(
        input,
        options({ method: 'ca', rows: 'site', columns: 'kind', supplementary: ['x'] }),
      ),
    ).toThrow('"x" is no label');
    expect(() => computeOrdination(input, options({ method: 'ca' }))).toThrow('rows and columns');
  });

  it('mixed of one number and kinds names categories with their attribute', () => {
    const input = madeInput([
      { attribute: attribute('size', 'spacing', 'ratio'), values: [1, 2, 3, 4, 6] },
      { attribute: attribute('kind', 'structure', 'nominal'), values: ['a', 'b', 'a', 'b', 'b'] },
    ]);
    const found = available(computeOrdination(input, options({ method: 'mixed' })).axes);
    expect(found.variables.map(({ label }) => label)).toEqual(['size', 'kind: a', 'kind: b']);
    expect(() => computeOrdination(input, options({ method: 'mca', of: ['size', 'kind'] }))).toThrow(
      'takes kinds',
    );
  });

  it('says why there is no ordination', () => {
    const input = madeInput([{ attribute: attribute('size', 'spacing', 'ratio'), values: [2, 2, 2] }]);
    const found = computeOrdination(input, options({}));
    expect(ordination.words(found).answer).toBe(
      'No ordination: all records are alike, so there is nothing to spread out.',
    );
    expect(ordination.figures(found)).toEqual({});
    const gappy = madeInput([
      { attribute: attribute('size', 'spacing', 'ratio'), values: [1, null, 3] },
      { attribute: attribute('width', 'spacing', 'ratio'), values: [null, 2, null] },
    ]);
    expect(ordination.words(computeOrdination(gappy, options({ method: 'pca' }))).answer).toBe(
      'No ordination: no fragment has a value of every one of the 2 attributes; compare fewer, or choose principal coordinates (pcoa), which take gaps.',
    );
  });
});

describe('ordination of the demo', () => {
  const demo = prepareDemo();
  const input: AnalysisInput = { ...demo.prepared, unit: 'item', random: createRandom(3) };
  const found = computeOrdination(
    input,
    options({ of: ['structure', 'density1', 'density2', 'fibre'], by: 'site' }),
  );

  it('has a place for each item, and centres of sites that are their means', () => {
    const axes = available(found.axes);
    expect(found.tables.coordinates.rows.length).toBe(axes.rows.length);
    expect(found.tables.coordinates.columns.map(({ id }) => id).slice(0, 5)).toEqual([
      'id',
      'role',
      'label',
      'axis1',
      'axis2',
    ]);
    const [centre] = found.centres;
    const mean = centre.members.reduce(
      (sum, place) => sum + axes.records[place].at[0] / centre.members.length,
      0,
    );
    expect(centre.at[0]).toBeCloseTo(mean, 14);
    expect(centre.hull.length).toBeGreaterThan(2);
    expect(centre.ellipse.length).toBe(49);
  });

  it('contributions of each axis sum to 1, and the sentence gives the share of the first two', () => {
    const axes = available(found.axes);
    const sum = axes.records.reduce((total, { contributions }) => total + contributions[0], 0);
    expect(sum).toBeCloseTo(1, 9);
    expect(ordination.words(found).answer).toMatch(/^The first two axes carry \d/);
    expect(
      ordination
        .words(found)
        .unless.map((turn) => turn.what)
        .join(' '),
    ).toContain('Euclidean');
  });

  it('draws each site with its own colour and shape, n in the caption', () => {
    const { map } = ordination.figures(found);
    const points = map.data.filter(({ mode }) => mode === 'markers') as {
      marker: { symbol: string; color: string };
    }[];
    expect(new Set(points.map(({ marker }) => marker.symbol)).size).toBe(points.length);
    expect(new Set(points.map(({ marker }) => marker.color)).size).toBe(points.length);
    expect(map.caption).toMatch(/n = \d+ fragments of \d+ items/);
  });
});

describe('the convex hull', () => {
  it('of a square with points inside and on its edge is its four corners', () => {
    const hull = convexHull([
      [0, 0],
      [2, 0],
      [1, 1],
      [2, 2],
      [0, 2],
      [1, 0],
      [0.5, 1.5],
    ]);
    expect(hull).toEqual([
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ]);
  });
});

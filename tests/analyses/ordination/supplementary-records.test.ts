import { describe, expect, it } from 'vitest';
import { computeOrdination } from '../../../src/analyses/ordination/compute.ts';
import { ordination } from '../../../src/analyses/ordination/index.ts';
import { type OrdinationOptions, ordinationOptions } from '../../../src/analyses/ordination/options.ts';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { InputError } from '../../../src/errors.ts';
import { available, type MatrixRows } from '../../numerics/compare-up-to-sign.ts';
import { reference } from '../../references/reference.ts';
import { attribute, type MadeColumn, madeInput } from '../grouping/made-table.ts';

interface Placed {
  readonly active: MatrixRows;
  readonly places: MatrixRows;
}
interface WithCos2 extends Placed {
  readonly cos2: MatrixRows;
}

const given = reference<{
  readonly iris: { readonly data: readonly number[][]; readonly species: readonly string[] };
  readonly components: WithCos2;
  readonly cars: {
    readonly columns: Readonly<Record<string, readonly (string | number)[]>>;
    readonly passive: readonly number[];
  };
  readonly kinds: WithCos2 & { readonly mca: MatrixRows; readonly mcaActive: MatrixRows };
  readonly mixed: WithCos2;
  readonly root: Placed & { readonly squares: readonly number[] };
  readonly plain: Placed;
  readonly lingoes: Placed;
}>('supplementary-records');

const iris: readonly MadeColumn[] = [
  ...given.iris.data.map((values, j) => ({ attribute: attribute(`a${j}`, 'spacing', 'interval'), values })),
  { attribute: attribute('species', 'find', 'nominal'), values: given.iris.species },
];
const passive = new Set(given.cars.passive);
const names = Object.keys(given.cars.columns);
const cars: readonly MadeColumn[] = [
  ...Object.entries(given.cars.columns).map(([id, values]) => ({
    attribute: attribute(
      id,
      typeof values[0] === 'number' ? 'spacing' : 'structure',
      typeof values[0] === 'number' ? 'interval' : 'nominal',
    ),
    values,
  })),
  {
    attribute: attribute('set', 'find', 'nominal'),
    values: given.cars.columns[names[0]].map((_, row) => (passive.has(row) ? 'new' : 'old')),
  },
];
const late = [{ attribute: 'species', in: ['virginica'] }];
const fresh = [{ attribute: 'set', in: ['new'] }];
const run = (columns: readonly MadeColumn[], more: Partial<OrdinationOptions>) =>
  computeOrdination(madeInput(columns), ordinationOptions.parse(more));

/** Active and supplementary records have the places of the reference, each axis turned as a whole. */
function expectPlaces(
  found: ReturnType<typeof computeOrdination>,
  { active, places }: Placed,
  axes: number,
  scales: readonly number[] = [],
) {
  const { records, passive: added } = available(found.axes);
  expect(records.length).toBe(active.rows);
  expect(added.length).toBe(places.rows);
  for (let k = 0; k < axes; k++) {
    const theirs = (matrix: MatrixRows, i: number) =>
      matrix.values[i * matrix.columns + k] * (scales[k] ?? 1);
    const same = records.reduce((sum, { at }, i) => sum + at[k] * theirs(active, i), 0);
    const sign = same < 0 ? -1 : 1;
    records.forEach(({ at }, i) => {
      expect(Math.abs(at[k] - sign * theirs(active, i)), `active ${i}, axis ${k}`).toBeLessThan(1e-9);
    });
    added.forEach(({ at }, i) => {
      expect(Math.abs(at[k] - sign * theirs(places, i)), `placed ${i}, axis ${k}`).toBeLessThan(1e-9);
    });
  }
}

function expectCos2(found: ReturnType<typeof computeOrdination>, cos2: MatrixRows, axes: number) {
  available(found.axes).passive.forEach((place, i) => {
    for (let k = 0; k < axes; k++)
      expect(Math.abs(place.cos2[k] - cos2.values[i * cos2.columns + k])).toBeLessThan(1e-9);
  });
}

describe('supplementary records lie where R puts them, within 1e-9', () => {
  it('pca: virginica on the axes of the other irises (predict of prcomp)', () => {
    const found = run(iris, {
      method: 'pca',
      axes: 4,
      of: ['a0', 'a1', 'a2', 'a3'],
      supplementaryRecords: late,
    });
    expectPlaces(found, given.components, 4);
    expectCos2(found, given.components.cos2, 4);
  });

  it('mca: every third car on the axes of the others (ade4::suprow, predict of MASS::mca up to its scale)', () => {
    const of = names.slice(0, 4);
    const found = run(cars, { method: 'mca', axes: 4, of, supplementaryRecords: fresh });
    expectPlaces(found, given.kinds, 4);
    expectCos2(found, given.kinds.cos2, 4);
    const { active, mca, mcaActive } = given.kinds;
    const scales = [0, 1, 2, 3].map((k) => Math.abs(active.values[k] / mcaActive.values[k]));
    expectPlaces(found, { active: mcaActive, places: mca }, 4, scales);
  });

  it('mixed: the same with their numbers (ade4::suprow of dudi.hillsmith)', () => {
    const found = run(cars, { method: 'mixed', axes: 4, of: names, supplementaryRecords: fresh });
    expectPlaces(found, given.mixed, 4);
    expectCos2(found, given.mixed.cos2, 4);
  });

  const pcoa = { method: 'pcoa', of: names, mode: 'plain', supplementaryRecords: fresh } as const;

  it('pcoa of roots: where they lie in the full space (cmdscale of all), seen along the axes of the old', () => {
    const found = run(cars, { ...pcoa, correction: 'square-root' });
    expectPlaces(found, given.root, 3);
    available(found.axes).passive.forEach(({ at, cos2 }, i) => {
      expect(cos2[0]).toBeCloseTo((at[0] * at[0]) / given.root.squares[i], 9);
    });
  });

  it('pcoa without a correction and with that of Lingoes: the formula of Gower 1968', () => {
    expectPlaces(run(cars, pcoa), given.plain, 3);
    const found = run(cars, { ...pcoa, correction: 'lingoes' });
    expectPlaces(found, given.lingoes, 3);
    expect(ordination.words(found).unless.map(printTurn).join(' ')).toContain(
      'constant of the correction (lingoes)',
    );
  });

  it('pcoa: a copy of an active record falls on it, under the constant c of Lingoes at 1 - c / eigenvalue of its way', () => {
    const twice = cars.map(({ attribute: a, values }) => ({
      attribute: a,
      values: [...values, a.id === 'set' ? 'copy' : values[0]],
    }));
    const copy = { ...pcoa, supplementaryRecords: [{ attribute: 'set', in: ['copy'] }] };
    const plain = available(run(twice, copy).axes);
    plain.passive[0].at.forEach((value, k) => {
      expect(value).toBeCloseTo(plain.records[0].at[k], 10);
    });
    // The active records are then all cars, so the constant is not that of the reference.
    const bent = available(run(twice, { ...copy, correction: 'lingoes' }).axes);
    const constants = bent.passive[0].at.map(
      (value, k) => (1 - value / bent.records[0].at[k]) * bent.eigenvalues[k],
    );
    expect(constants[0]).toBeGreaterThan(0.001);
    expect(constants[1]).toBeCloseTo(constants[0], 9);
    expect(constants[2]).toBeCloseTo(constants[0], 9);
  });
});

describe('supplementary records', () => {
  const base: Partial<OrdinationOptions> = { method: 'pca', of: ['a0', 'a1', 'a2', 'a3'], resamples: 20 };
  const only = (species: readonly string[]) =>
    iris.map(({ attribute: a, values }) => ({
      attribute: a,
      values: values.filter((_, row) => species.includes(given.iris.species[row])),
    }));

  it.each(['pca', 'pcoa', 'mixed'] as const)('have no say: %s of the others alone is the same', (method) => {
    const more = { ...base, method, by: 'species' };
    const found = run(iris, { ...more, supplementaryRecords: late });
    const without = run(only(['setosa', 'versicolor']), more);
    expect(ordination.tables(found).axes).toEqual(ordination.tables(without).axes);
    expect(ordination.tables(found).variables).toEqual(ordination.tables(without).variables);
    expect(ordination.tables(found).coordinates.rows.slice(0, 100)).toEqual(
      ordination.tables(without).coordinates.rows,
    );
    expect(
      ordination
        .tables(found)
        .coordinates.rows.slice(100)
        .every((row) => row[1] === 'supplementary record'),
    ).toBe(true);
    expect(found.n).toEqual({
      fragments: 100,
      items: 100,
      setAside: [{ reason: 'supplementary: placed on the axes without a say in them', fragments: 50 }],
    });
  });

  it('are hollow in the map, named in its legend, counted in caption and sentence, with a centre of their own', () => {
    const found = run(iris, { ...base, by: 'species', supplementaryRecords: late });
    const { map } = ordination.figures(found);
    const named = map.data.filter(({ name }) => name === 'virginica, supplementary');
    expect(named).toHaveLength(1);
    expect((named[0] as { x: readonly number[] }).x).toHaveLength(50);
    expect(named[0].marker).toMatchObject({ color: '#FCF9F2', line: { width: 1.8 } });
    expect(map.caption).toContain('Hollow: 50 supplementary fragments, placed without a say in the axes.');
    expect(map.caption).toContain('n = 100 fragments');
    const words = ordination.words(found);
    expect(words.answer).toContain('spread of 100 fragments');
    expect(words.because.join(' ')).toContain('50 supplementary fragments placed without a say');
    expect(words.unless.map(printTurn).join(' ')).not.toContain('set aside');
    const centre = ordination.tables(found).centres.rows.find(([label]) => label === 'virginica');
    const mean = available(found.axes).passive.reduce((sum, { at }) => sum + at[0] / 50, 0);
    expect(centre?.slice(1, 3)).toEqual(['supplementary records', 50]);
    expect(centre?.[3]).toBeCloseTo(mean, 12);
  });

  it('with a gap, or a kind that no other record has, are set aside with the reason; gaps: mean fills numbers', () => {
    const gappy = iris.map(({ attribute: a, values }, j) => ({
      attribute: a,
      values: values.map((value, row) => (j === 1 && row === 149 ? null : value)),
    }));
    const found = run(gappy, { ...base, supplementaryRecords: late });
    expect(found.n.setAside[0]).toEqual({ reason: 'supplementary, but a value is missing', fragments: 1 });
    const filled = run(gappy, { ...base, gaps: 'mean', supplementaryRecords: late });
    expect(available(filled.axes).passive).toHaveLength(50);
    expect(ordination.words(filled).unless.map(printTurn).join(' ')).toContain(
      '1 missing number took the mean',
    );
    const odd = run(iris, {
      ...base,
      method: 'mixed',
      of: ['a0', 'a1', 'species'],
      supplementaryRecords: late,
    });
    expect(odd.n.setAside).toEqual([
      { reason: 'supplementary, with a kind that makes no axis', fragments: 50 },
    ]);
  });

  it('that cannot be told from the others are neither: set aside', () => {
    const unsure = iris.map(({ attribute: a, values }) => ({
      attribute: a,
      values: values.map((value, row) => (a.id === 'species' && row === 0 ? null : value)),
    }));
    const found = run(unsure, { ...base, supplementaryRecords: late });
    expect(found.n.fragments).toBe(99);
    expect(found.n.setAside[0]).toEqual({
      reason: 'not recorded whether supplementary: species is virginica',
      fragments: 1,
    });
  });

  it('are refused where nothing meets the conditions, where none is left, and in correspondence analysis', () => {
    const ask = (supplementaryRecords: OrdinationOptions['supplementaryRecords'], more = {}) =>
      run(iris, { ...base, ...more, supplementaryRecords });
    expect(() => ask([{ attribute: 'a0', atLeast: 99 }])).toThrow(
      'no fragment certainly meets a0 at least 99',
    );
    expect(() => ask([{ attribute: 'a0', atLeast: 0 }])).toThrow('is left to make the axes');
    expect(() => ask([{ attribute: 'a0', in: ['x'] }])).toThrow(/^supplementaryRecords: .*it is a number/);
    expect(() => ask(late, { method: 'ca', rows: 'species', columns: 'species' })).toThrow(InputError);
  });
});

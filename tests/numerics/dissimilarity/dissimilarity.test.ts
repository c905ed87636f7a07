import { existsSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { condensedIndex, dissimilarityAt } from '../../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities, dissimilaritiesTo } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { explainPair } from '../../../src/numerics/dissimilarity/explain-pair.ts';
import { kindDistances } from '../../../src/numerics/dissimilarity/term-distance.ts';
import {
  codeValue,
  type DissimilaritySpec,
  type QuantityVariable,
  quantityValue,
  type Variable,
  valueAt,
} from '../../../src/numerics/dissimilarity/variables.ts';
import { type Cases, daisy } from './daisy-values.ts';
import { mixed } from './mixed-columns.ts';

function quantity(values: readonly number[], block = 0, weight = 1): QuantityVariable {
  const low = Float64Array.from(values);
  const known = low.filter((value) => !Number.isNaN(value));
  return {
    kind: 'quantity',
    low,
    high: low,
    range: Math.max(...known) - Math.min(...known),
    block,
    weight,
  };
}

function plain(variables: readonly Variable[]): DissimilaritySpec {
  return { variables, blockWeights: [1], mode: 'plain', intervals: 'midpoint', minimumOverlap: 0 };
}

function variablesOf(given: Cases['cases'][number]): Variable[] {
  return given.columns.map((column, k) => {
    const weight = given.weights[k];
    if (column.kind === 'quantity') {
      return quantity(
        column.values.map((value) => value ?? Number.NaN),
        0,
        weight,
      );
    }
    const codes = Int32Array.from(column.codes);
    if (column.kind === 'presence') return { kind: 'presence', codes, block: 0, weight };
    const { levels } = column;
    return { kind: 'kinds', codes, between: kindDistances(levels), levels, block: 0, weight };
  });
}

describe('plain mode is the coefficient of Gower 1971', () => {
  it.each(daisy.cases)('equals R cluster::daisy on $name', (given) => {
    const { values } = dissimilarities(plain(variablesOf(given)));
    expect(values.length).toBe(given.distances.length);
    given.distances.forEach((expected, pair) => {
      // daisy lists the lower triangle column by column, which is the upper one row by row.
      if (expected === null) expect(values[pair]).toBeNaN();
      else expect(Math.abs(values[pair] - expected)).toBeLessThan(1e-12);
    });
  });

  it('gives 1 - 0.875 for the hand case: 8 and 12 of 4 to 20, same structure, twist known for one', () => {
    // Gower 1971, Biometrics 27:857, by hand: (0.75 + 1) / 2 = 0.875.
    const density = { ...quantity([8, 12]), range: 16 };
    const structure = variablesOf({
      ...daisy.cases[0],
      columns: [{ kind: 'kinds', codes: [0, 0], levels: 2 }],
    });
    const twist = variablesOf({
      ...daisy.cases[0],
      columns: [{ kind: 'kinds', codes: [0, -1], levels: 2 }],
    });
    expect(dissimilarities(plain([density, ...structure, ...twist])).values[0]).toBeCloseTo(0.125, 15);
  });
});

describe('blocks', () => {
  it('takes the mean within each block first, then over the blocks by weight', () => {
    // By hand: block 0 has distances 1 and 0 (mean 0.5), block 1 has 0.25; weights 1 and 3.
    const spec: DissimilaritySpec = {
      variables: [quantity([0, 1]), { ...quantity([0, 0]), range: 5 }, { ...quantity([0, 1], 1), range: 4 }],
      blockWeights: [1, 3],
      mode: 'blocks',
      intervals: 'midpoint',
      minimumOverlap: 0,
    };
    expect(dissimilarities(spec).values[0]).toBeCloseTo((0.5 + 3 * 0.25) / 4, 15);
  });

  it('is unknown where nothing can be compared, and below the least overlap', () => {
    const a = quantity([1, Number.NaN, 3]);
    const b = quantity([Number.NaN, 2, 4], 1);
    const spec: DissimilaritySpec = {
      variables: [a, b],
      blockWeights: [1, 1],
      mode: 'blocks',
      intervals: 'midpoint',
      minimumOverlap: 0,
    };
    const free = dissimilarities(spec);
    expect(dissimilarityAt(free, 0, 1)).toBeNaN();
    expect(dissimilarityAt(free, 0, 2)).toBe(1);
    const strict = dissimilarities({ ...spec, minimumOverlap: 0.6 });
    expect(dissimilarityAt(strict, 0, 2)).toBeNaN();
    expect(dissimilarityAt(dissimilarities({ ...spec, minimumOverlap: 0.5 }), 0, 2)).toBe(1);
  });

  it('asks no overlap of what is only brought along, and compares it where both have it', () => {
    // By hand: a is known of both, so that all of what is asked for is; the two others are gaps, or 1 apart.
    const a = quantity([1, 3]);
    const gap = { ...quantity([1, Number.NaN]), besides: true as const };
    const told = { ...quantity([1, 2]), besides: true as const };
    const spec: DissimilaritySpec = {
      variables: [{ ...a, range: 4 }, gap, told],
      blockWeights: [1],
      mode: 'blocks',
      intervals: 'midpoint',
      minimumOverlap: 0.9,
    };
    expect(dissimilarityAt(dissimilarities(spec), 0, 1)).toBe(0.75);
    expect(explainPair(spec, 0, 1).overlap).toBe(1);
    expect(explainPair(spec, 0, 1).dissimilarity).toBe(0.75);
    const counted = { ...spec, variables: spec.variables.map(({ besides: _, ...rest }) => rest) };
    expect(dissimilarityAt(dissimilarities(counted), 0, 1)).toBeNaN();
  });

  it('leaves out a block of weight 0 and does not divide by it', () => {
    const spec = mixed(4, 12);
    const without = { ...spec, variables: spec.variables.filter((variable) => variable.block !== 1) };
    expect(dissimilarities({ ...spec, blockWeights: [1, 0, 0.5] }).values).toEqual(
      dissimilarities(without).values,
    );
  });

  it('does not depend on the order of the records, and its diagonal to a copy is the distance to itself', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), (seed) => {
        const spec = { ...mixed(seed, 9), intervals: 'midpoint' as const };
        const forward = dissimilarities(spec);
        const back = dissimilarities({
          ...spec,
          variables: spec.variables.map((variable) =>
            variable.kind === 'quantity'
              ? { ...variable, low: variable.low.slice().reverse(), high: variable.high.slice().reverse() }
              : { ...variable, codes: variable.codes.slice().reverse() },
          ),
        });
        for (let i = 0; i < 9; i++) {
          for (let j = i + 1; j < 9; j++) {
            const there = forward.values[condensedIndex(9, i, j)];
            const here = back.values[condensedIndex(9, 8 - i, 8 - j)];
            if (Number.isNaN(there)) expect(here).toBeNaN();
            else expect(Math.abs(there - here)).toBeLessThan(1e-14);
          }
        }
      }),
      { numRuns: 25 },
    );
  });
});

describe('one record against all', () => {
  it.each(['midpoint', 'expected', 'least', 'greatest'] as const)(
    'a known record has the distances of its own row (%s)',
    (intervals) => {
      const spec = { ...mixed(7, 30), intervals };
      const matrix = dissimilarities(spec);
      const record = spec.variables.map((variable) => valueAt(variable, 11));
      const to = dissimilaritiesTo(spec, record);
      for (let j = 0; j < 30; j++) {
        if (j !== 11 && !Number.isNaN(to[j])) expect(to[j]).toBeCloseTo(dissimilarityAt(matrix, 11, j), 14);
        if (j !== 11) expect(Number.isNaN(to[j])).toBe(Number.isNaN(dissimilarityAt(matrix, 11, j)));
      }
    },
  );

  it('a number beyond the range counts more than 1', () => {
    const to = dissimilaritiesTo(plain([quantity([0, 1, 2])]), [quantityValue(6)]);
    expect([...to]).toEqual([3, 2.5, 2]);
  });

  it('says how many values it expected', () => {
    expect(() => dissimilaritiesTo(plain([quantity([0, 1])]), [])).toThrow('0 values for 1 variables');
  });
});

describe('presence', () => {
  it('joint absence says nothing: Jaccard on traits', () => {
    // Jaccard 1901 by hand: shared 1 of 3 present in either = distance 2/3.
    const traits = [
      [1, 1],
      [1, 0],
      [0, 1],
      [0, 0],
    ];
    const variables = traits.map(
      (pair): Variable => ({
        kind: 'presence',
        codes: Int32Array.from(pair),
        block: 0,
        weight: 1,
      }),
    );
    expect(dissimilarities(plain(variables)).values[0]).toBeCloseTo(2 / 3, 15);
    expect(
      dissimilaritiesTo(plain(variables), [codeValue(0), codeValue(0), codeValue(0), codeValue(-1)]),
    ).toEqual(Float64Array.of(1, 1));
  });
});

const IKAT = new URL('../../../../shared/real/ikat-textiles/', import.meta.url);

describe('Southeast Asian ikat, 36 traditions by 110 traits (Buckley 2012, PLOS ONE 7(12) e52064)', () => {
  const codings = [
    { file: 'ikat_Data_S1.csv', present: '1', absent: '0' },
    { file: 'textiles_ikat_seasia_decoded.csv', present: 'TRUE', absent: 'FALSE' },
  ];
  it.skipIf(!existsSync(IKAT)).each(codings)(
    '$file gives the Jaccard distances of the reference',
    ({ file, present, absent }) => {
      const lines = readFileSync(new URL(file, IKAT), 'utf8').trim().split(/\r?\n/);
      const rows = lines.slice(1).map((line) => line.split(','));
      const variables = rows[0].slice(1).map(
        (_, k): Variable => ({
          kind: 'presence',
          codes: Int32Array.from(rows, (row) =>
            row[k + 1] === present ? 1 : row[k + 1] === absent ? 0 : -1,
          ),
          block: 0,
          weight: 1,
        }),
      );
      const stated = JSON.parse(readFileSync(new URL('reference_values.json', IKAT), 'utf8'));
      expect(rows.length).toBe(stated.traditions);
      const { n, values } = dissimilarities(plain(variables));
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      expect(mean).toBeCloseTo(stated.jaccard_mean, 8);
      expect(Math.max(...values)).toBe(stated.jaccard_max);
      const [pair, least] = stated.nearest_pair;
      const [i, j] = pair.map((name: string) => rows.findIndex((row) => row[0] === name));
      expect(values[condensedIndex(n, i, j)]).toBeCloseTo(least, 8);
      expect(Math.min(...values)).toBeCloseTo(least, 8);
    },
  );
});

import { describe, expect, it } from 'vitest';
import { dissimilarities, dissimilaritiesTo } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { JOINED_FROM, joinKinds } from '../../../src/numerics/dissimilarity/joined-kinds.ts';
import { prepareComparison } from '../../../src/numerics/dissimilarity/prepare.ts';
import {
  type DissimilaritySpec,
  type Variable,
  valueAt,
} from '../../../src/numerics/dissimilarity/variables.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

/** Eight facets of three values that two records in five have, in two blocks, their values differently far apart. */
function facets(n: number): DissimilaritySpec {
  const random = createRandom(5);
  const variables = Array.from({ length: 8 }, (_, c): Variable => {
    const codes = Int32Array.from({ length: n }, () => (random.next() < 0.4 ? random.integer(3) : -1));
    const between = Float64Array.from([0, 0.3, 1, 0.3, 0, 0.7, 1, 0.7, 0]);
    return { kind: 'kinds', codes, between, levels: 3, block: c < 6 ? 0 : 1, weight: 1 + c / 7 };
  });
  return { variables, blockWeights: [1, 0.5], mode: 'blocks', intervals: 'midpoint', minimumOverlap: 0 };
}

describe('kinds with gaps that are looked up together', () => {
  const spec = facets(JOINED_FROM);
  const prepared = prepareComparison(spec);

  it('are joined three by three, never across blocks', () => {
    expect(joinKinds(prepared).map(({ of }) => of)).toEqual([
      [0, 1, 2],
      [3, 4, 5],
      [6, 7],
    ]);
    const fewer = prepareComparison(facets(JOINED_FROM - 1));
    expect(joinKinds(fewer).every(({ of }) => of.length === 1)).toBe(true);
  });

  it('are as far apart as one by one, unknown pairs included', () => {
    const { values, n } = dissimilarities(spec);
    let place = 0;
    let unknown = 0;
    for (let i = 0; i < n - 1; i++) {
      const one = dissimilaritiesTo(
        spec,
        spec.variables.map((variable) => valueAt(variable, i)),
      );
      for (let j = i + 1; j < n; j++, place++) {
        if (Number.isNaN(one[j]!)) unknown++;
        if (Number.isNaN(one[j]!) !== Number.isNaN(values[place]!)) expect([i, j]).toBe('unknown alike');
        else if (Math.abs(one[j]! - values[place]!) > 1e-12) expect(values[place]).toBe(one[j]);
      }
    }
    expect(unknown).toBeGreaterThan(0);
    expect(unknown).toBeLessThan(values.length / 2);
  });
});

import { kindDistances } from '../../../src/numerics/dissimilarity/term-distance.ts';
import type { DissimilaritySpec, Variable } from '../../../src/numerics/dissimilarity/variables.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

/** Mixed columns with gaps, in three blocks. */
export function mixed(seed: number, n: number): DissimilaritySpec {
  const random = createRandom(seed);
  const gap = () => random.next() < 0.25;
  const variables: Variable[] = [];
  for (let k = 0; k < 4; k++) {
    const low = Float64Array.from({ length: n }, () => (gap() ? Number.NaN : random.next() * 10));
    const high = low.map((value) => (random.next() < 0.5 ? value : value + random.next()));
    variables.push({ kind: 'quantity', low, high, range: 11, block: k % 2, weight: 1 + k });
  }
  for (let k = 0; k < 2; k++) {
    const codes = Int32Array.from({ length: n }, () => (gap() ? -1 : random.integer(3)));
    variables.push({ kind: 'kinds', codes, between: kindDistances(3), levels: 3, block: 2, weight: 1 });
    const traits = Int32Array.from({ length: n }, () => (gap() ? -1 : random.integer(2)));
    variables.push({ kind: 'presence', codes: traits, block: 1 + k, weight: 2 });
  }
  return {
    variables,
    blockWeights: [1, 2, 0.5],
    mode: 'blocks',
    intervals: 'expected',
    minimumOverlap: 0,
  };
}

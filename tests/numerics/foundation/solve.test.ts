import { describe, expect, it } from 'vitest';
import { solveSymmetric } from '../../../src/numerics/foundation/solve.ts';
import { expectClose } from '../compare-up-to-sign.ts';

describe('solving a small symmetric system', () => {
  it('4x + y = 1, x + 3y = 2 gives 1/11 and 7/11; a singular one gives nothing', () => {
    expectClose(solveSymmetric(Float64Array.of(4, 1, 1, 3), Float64Array.of(1, 2))!, [1 / 11, 7 / 11], 1e-15);
    expect(solveSymmetric(Float64Array.of(1, 1, 1, 1), Float64Array.of(1, 1))).toBeNull();
  });
});

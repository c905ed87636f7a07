import { describe, expect, it } from 'vitest';
import { fitsLogarithm } from '../../../src/numerics/describing/scale-by-fit.ts';
import { exp } from '../../../src/numerics/foundation/elementary.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';

describe('the scale that readings fit', () => {
  it('is the logarithm for a lognormal and not for a normal, nor with a value at nought', () => {
    const random = createRandom(2);
    const normal = Array.from({ length: 80 }, () => standardNormal(random));
    expect(fitsLogarithm(normal.map((z) => 5 * exp(0.8 * z)))).toBe(true);
    expect(fitsLogarithm(normal.map((z) => 50 + 5 * z))).toBe(false);
    expect(fitsLogarithm([0, ...normal.map((z) => 5 * exp(0.8 * z))])).toBe(false);
  });
});

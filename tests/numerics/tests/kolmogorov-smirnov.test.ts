import { describe, it } from 'vitest';
import { kolmogorovSmirnov } from '../../../src/numerics/tests/kolmogorov-smirnov.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';
import { twoSample } from '../rank-values.ts';

describe('Kolmogorov-Smirnov in the tail', () => {
  it('equals the share of paths counted in whole numbers', () => {
    const exact = reference<{ statistic: number; p: number }>('smirnov-exact');
    const test = available(kolmogorovSmirnov(twoSample.cats.first, twoSample.cats.second));
    expectClose(test.statistic, exact.statistic);
    expectClose(test.p, exact.p);
  });
});

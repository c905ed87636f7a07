import { describe, it } from 'vitest';
import { kolmogorovSmirnov } from '../../../src/numerics/tests/kolmogorov-smirnov.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

interface Tested {
  readonly statistic: number;
  readonly p: number;
  readonly df?: number;
}

const { twoSample } = reference<{
  kSample: Record<
    string,
    { groups: number[][]; kruskal: Tested; anova: Tested; brownForsythe: Tested; welch: Tested | null }
  >;
  twoSample: Record<
    string,
    {
      first: number[];
      second: number[];
      ties: boolean;
      U: number;
      pNormal: number;
      pExact: number | null;
      ks: Tested;
      shift: number;
      rankCorrelationDelta: number;
    }
  >;
}>('rank-tests');

describe('Kolmogorov-Smirnov in the tail', () => {
  it('equals the share of paths counted in whole numbers', () => {
    const exact = reference<{ statistic: number; p: number }>('smirnov-exact');
    const test = available(kolmogorovSmirnov(twoSample.cats.first, twoSample.cats.second));
    expectClose(test.statistic, exact.statistic);
    expectClose(test.p, exact.p);
  });
});

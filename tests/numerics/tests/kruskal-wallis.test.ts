import { describe, expect, it } from 'vitest';
import { brownForsythe, oneWayAnova, welchAnova } from '../../../src/numerics/tests/analysis-of-variance.ts';
import { dunnPairs, kruskalWallis } from '../../../src/numerics/tests/kruskal-wallis.ts';
import { available, expectClose } from '../close.ts';
import { kSample, tool, twoSample, version } from '../rank-values.ts';

describe(`several samples, as ${tool} ${version}`, () => {
  it.each(Object.entries(kSample))('%s', (_, { groups, kruskal, anova, welch, brownForsythe: spread }) => {
    const ranks = available(kruskalWallis(groups));
    expectClose(ranks.statistic, kruskal.statistic);
    expectClose(ranks.p, kruskal.p);
    expect(ranks.df).toBe(kruskal.df);
    const means = oneWayAnova(groups);
    if ('why' in means) expect(anova.statistic).toBeGreaterThan(1e12);
    else {
      expectClose(means.statistic, anova.statistic);
      expectClose(means.p, anova.p);
    }
    const unequal = welchAnova(groups);
    if (welch === null) expect(unequal).toHaveProperty('why');
    else {
      expectClose(available(unequal).statistic, welch.statistic);
      expectClose(available(unequal).dfWithin, welch.df as number);
      expectClose(available(unequal).p, welch.p);
    }
    const spreads = available(brownForsythe(groups));
    expectClose(spreads.statistic, spread.statistic);
    expectClose(spreads.p, spread.p);
  });
});

describe('Dunn follows Kruskal-Wallis', () => {
  it('of two groups has the p of Kruskal-Wallis itself', () => {
    const groups = [twoSample.sleep.first, twoSample.sleep.second];
    const [pair] = available(dunnPairs(groups));
    expectClose(pair.p, available(kruskalWallis(groups)).p);
    expect(pair.statistic).toBeLessThan(0);
  });
});

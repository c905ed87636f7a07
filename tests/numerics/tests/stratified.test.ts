import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { midranks } from '../../../src/numerics/foundation/ranks.ts';
import { association } from '../../../src/numerics/tests/contingency.ts';
import { kruskalWallis } from '../../../src/numerics/tests/kruskal-wallis.ts';
import { commonOdds, mantelHaenszel } from '../../../src/numerics/tests/mantel-haenszel.ts';
import { stratifiedPermutation, stratifiedTest } from '../../../src/numerics/tests/stratified.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

interface Odds {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  readonly statistic: number;
  readonly p: number;
}

const r = reference<{
  readonly cases: Record<
    string,
    { tables: number[][][]; statistic: number; df: number; p: number; odds: Odds | null }
  >;
}>('mantel-haenszel');

describe(`association within strata, as ${r.tool} (${r.version})`, () => {
  it.each(Object.entries(r.cases))('%s', (_, { tables, statistic, df, p, odds }) => {
    const found = available(mantelHaenszel(tables));
    expectClose(found.statistic, statistic, 1e-9);
    expect(found.df).toBe(df);
    expectClose(found.p, p, 1e-6);
    if (odds === null) return;
    const common = available(commonOdds(tables, 0.95));
    for (const key of ['estimate', 'low', 'high', 'statistic', 'p'] as const)
      expectClose(common[key], odds[key], 1e-7);
  });

  it('covers tables of two by two and larger ones', () => {
    const sizes = Object.values(r.cases).map(({ df }) => df);
    expect(sizes.filter((df) => df === 1).length).toBeGreaterThanOrEqual(2);
    expect(sizes.filter((df) => df > 1).length).toBeGreaterThanOrEqual(3);
  });
});

describe('one stratum is the plain test', () => {
  it('ranks: (n - 1) / n of nothing else than Kruskal and Wallis', () => {
    // Hollander & Wolfe 1999, table 6.1, half-clearance of mucus; the statistic there is 0.771.
    const groups = [
      [2.9, 3.0, 2.5, 2.6, 3.2],
      [3.8, 2.7, 4.0, 2.4],
      [2.8, 3.4, 3.7, 2.2, 2.0],
    ];
    const values = groups.flat();
    const labels = groups.flatMap((group, label) => group.map(() => label));
    const found = available(
      stratifiedTest({
        labels,
        labelCount: 3,
        strata: values.map(() => 0),
        scores: [midranks(values).ranks],
      }),
    );
    expectClose(found.statistic, available(kruskalWallis(groups)).statistic, 1e-12);
    expect(found.statistic).toBeCloseTo(0.771, 3);
    expect(found.df).toBe(2);
  });

  it('kinds: (n - 1) / n of chi-square', () => {
    const table = [
      [12, 5, 3],
      [4, 9, 7],
    ];
    const { statistic } = available(mantelHaenszel([table]));
    expectClose(statistic, (available(association(table)).chiSquared * 39) / 40, 1e-12);
  });
});

describe('dealing labels within strata', () => {
  const data = {
    // Two strata of 3 and 3, each wholly apart: of 20 * 20 deals 4 are as extreme only where both turn the same way.
    labels: [0, 0, 0, 1, 1, 1, 0, 0, 0, 1, 1, 1],
    labelCount: 2,
    strata: [0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1],
    scores: [[1, 2, 3, 4, 5, 6, 11, 12, 13, 14, 15, 16]],
  };

  it('walks all deals where they are few: 2 of 400 are as extreme', () => {
    const found = available(stratifiedPermutation(data, { random: createRandom(1), relabellings: 99 }));
    expect(found).toEqual({ p: 2 / 400, method: 'exact', relabellings: 400 });
  });

  it('draws them where they are many, and comes near the same', () => {
    const found = available(
      stratifiedPermutation(data, { random: createRandom(1), relabellings: 19_999, exactLimit: 0 }),
    );
    expect(found.method).toBe('resampled');
    expect(Math.abs(found.p - 2 / 400)).toBeLessThan(0.0015);
  });

  it('a difference between strata alone is none within them', () => {
    const labels = [0, 0, 0, 1, 1, 0, 1, 1, 1, 0];
    const strata = [0, 0, 0, 0, 0, 1, 1, 1, 1, 1];
    const scores = [[1, 2, 3, 2, 2, 101, 102, 103, 101, 102]];
    const found = available(
      stratifiedPermutation(
        { labels, labelCount: 2, strata, scores },
        { random: createRandom(1), relabellings: 99 },
      ),
    );
    expect(found.p).toBeGreaterThan(0.5);
  });

  it('keeps the readings of one item together: six readings of two items show nothing', () => {
    const items = ['a', 'a', 'a', 'b', 'b', 'b', 'c', 'c', 'c', 'd', 'd', 'd'];
    const found = available(
      stratifiedPermutation({ ...data, items }, { random: createRandom(1), relabellings: 99 }),
    );
    // One item a label in each stratum: of 2 * 2 deals two are as extreme.
    expect(found).toEqual({ p: 0.5, method: 'exact', relabellings: 4 });
  });

  it('says so where no stratum has two labels', () => {
    const strata = data.labels;
    expect(stratifiedTest({ ...data, strata })).toHaveProperty('why');
    expect(
      stratifiedPermutation({ ...data, strata }, { random: createRandom(1), relabellings: 99 }),
    ).toHaveProperty('why');
  });
});

describe('many readings of one item each', () => {
  it.each([0, 0.12])('the p known by distribution is that of dealing again, at a shift of %d', (shift) => {
    const random = createRandom(4);
    const n = 1200;
    const labels = Array.from({ length: n }, (_, at) => at % 2);
    const strata = Array.from({ length: n }, (_, at) => at % 3);
    // Rounded, so that many tie.
    const values = labels.map((label) => Math.round(20 * (random.next() + shift * label)));
    const data = { labels, labelCount: 2, strata, scores: [midranks(values).ranks] };
    const known = available(stratifiedTest(data)).pAsymptotic;
    const dealt = available(stratifiedPermutation(data, { random, relabellings: 4999 })).p;
    // Four standard errors of the share of 4,999 deals.
    const room = 4 * Math.sqrt((known * (1 - known) + 1e-4) / 4999) + 1 / 5000;
    expect(Math.abs(known - dealt)).toBeLessThan(room);
    expect(known < 0.05).toBe(shift > 0);
  });
});

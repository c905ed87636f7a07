import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { midranks } from '../../../src/numerics/foundation/ranks.ts';
import { permutationTest } from '../../../src/numerics/resampling/permutation.ts';
import { oneWayAnova } from '../../../src/numerics/tests/analysis-of-variance.ts';
import { centroidDistances, dispersionTest } from '../../../src/numerics/tests/dispersion.ts';
import { permanova, similarityAnalysis } from '../../../src/numerics/tests/permanova.ts';
import { condensed, expectSameP, options, r } from '../assemblages-values.ts';
import { available, expectClose } from '../close.ts';

describe(`groups on a dissimilarity, as ${r.tool}`, () => {
  const bray = condensed(r.bray);

  it('permutational analysis of variance', () => {
    const found = available(permanova(bray, r.groups, options()));
    expectClose(available(found.statistic), r.permanova.f);
    expectClose(found.rSquared, r.permanova.r2);
    expectClose(found.sumOfSquaresWithin, r.permanova.within);
    expectClose(found.sumOfSquaresTotal, r.permanova.total);
    expectSameP(found.p, r.permanova.p);
  });

  // Anderson 2001: on Euclidean distances of one variable the pseudo-F is the F of analysis of variance.
  it('on one variable its F is Fisher’s', () => {
    const groups = [
      [1.2, 3.4, 2.2],
      [4.1, 5.0, 3.9, 4.4],
      [0.3, 1.9],
    ];
    const values = groups.flat();
    const labels = groups.flatMap((group, label) => group.map(() => label));
    const distances = values.flatMap((a, i) => values.slice(i + 1).map((b) => Math.abs(a - b)));
    expectClose(
      available(available(permanova(condensed(distances), labels, options(99))).statistic),
      available(oneWayAnova(groups)).statistic,
    );
  });

  it('dispersion', () => {
    const distances = centroidDistances(bray, r.groups);
    distances.forEach((distance, i) => {
      expectClose(distance, r.dispersion.distances[i]);
    });
    const found = available(dispersionTest(bray, r.groups, options(199)));
    expectClose(found.statistic, r.dispersion.f);
    found.meanDistance.forEach((mean, group) => {
      expectClose(mean, r.dispersion.means[group]);
    });
  });

  it('analysis of similarities', () => {
    const ranks = { n: bray.n, values: midranks(bray.values).ranks };
    const found = available(similarityAnalysis(ranks, r.groups, options()));
    expectClose(found.statistic, r.anosim.r);
    expectSameP(found.p, r.anosim.p);
  });

  it('gives no F where nothing varies within the groups, but its p', () => {
    const apart = available(permanova(condensed([0, 1, 1, 1, 1, 0]), [0, 0, 1, 1], options()));
    expect(apart).toMatchObject({ statistic: { why: 'nothing varies within the groups' }, rSquared: 1 });
    // Two of the six ways to deal two and two part them so.
    expectClose(apart.p, 1 / 3);
  });

  it('says why not', () => {
    expect(permanova(bray, new Array(bray.n).fill(0), options())).toEqual({
      why: 'a comparison needs two groups',
    });
    expect(permanova(condensed([0, 0, 0]), [0, 0, 1], options())).toEqual({ why: 'all objects are alike' });
    expect(permanova(condensed([1, Number.NaN, 1]), [0, 0, 1], options())).toEqual({
      why: 'some pairs cannot be compared',
    });
  });
});

it('two groups of very many objects have the p that looking at every pair within both gives', () => {
  const chance = createRandom(3);
  const points = Array.from({ length: 240 }, (_, at) => chance.next() + (at % 3 === 0 ? 0.05 : 0));
  const labels = points.map((_, at) => (at % 3 === 0 ? 0 : 1));
  const matrix = condensed(points.flatMap((a, i) => points.slice(i + 1).map((b) => Math.abs(a - b))));
  const found = available(permanova(matrix, labels, { random: createRandom(4), relabellings: 499 }));
  // On one variable the sum of squares within groups is that about their means (Anderson 2001).
  const inside = (dealt: ArrayLike<number>) =>
    [0, 1].reduce((sum, group) => {
      const own = points.filter((_, at) => dealt[at] === group);
      const mean = own.reduce((total, value) => total + value, 0) / own.length;
      return sum + own.reduce((total, value) => total + (value - mean) ** 2, 0);
    }, 0);
  const plainly = permutationTest(labels, (dealt) => -inside(dealt), {
    random: createRandom(4),
    relabellings: 499,
  });
  expectClose(found.sumOfSquaresWithin, inside(labels));
  expect(found.p).toBe(plainly.p);
  expect(found.p).toBeGreaterThan(0.005);
  expect(found.p).toBeLessThan(0.9);
});

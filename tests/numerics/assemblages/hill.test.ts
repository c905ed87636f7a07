import { describe, expect, it } from 'vitest';
import { rarefiedRichness } from '../../../src/numerics/assemblages/diversity.ts';
import { diversityLimits, estimatedShares } from '../../../src/numerics/assemblages/diversity-limits.ts';
import {
  coverageAt,
  hillNumber,
  richnessAtCoverage,
  sameKind,
  sampleCoverage,
  shannonEstimate,
} from '../../../src/numerics/assemblages/hill.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

interface Sample {
  readonly counts: readonly number[];
  readonly coverage: number;
  readonly entropy: number;
  readonly same: number;
  readonly unbiased: number;
  readonly half: number;
  readonly coverageHalf: number;
  readonly rarefiedHalf: number;
}

const { samples, tool, version } = reference<{ samples: Record<string, Sample> }>('diversity-estimates');

describe(`diversity of the whole, as ${tool} ${version} and the formulas in R, within 1e-9`, () => {
  it.each(Object.entries(samples))('%s', (_, wanted) => {
    const { counts } = wanted;
    expectClose(available(sampleCoverage(counts)), wanted.coverage, 1e-9);
    expectClose(available(shannonEstimate(counts)), wanted.entropy, 1e-9);
    expectClose(available(sameKind(counts)), wanted.same, 1e-9);
    // vegan gives Simpson without bias as 1 less the chance of the same kind.
    expectClose(1 - available(sameKind(counts)), wanted.unbiased, 1e-9);
    expectClose(available(coverageAt(counts, wanted.half)), wanted.coverageHalf, 1e-9);
    expectClose(available(rarefiedRichness(counts, wanted.half)), wanted.rarefiedHalf, 1e-9);
  });

  // Chao et al. 2014, Ecol. Monogr. 84:45, table of the spider data; values from memory, as printed.
  it.each([
    ['girdled', 0.9289, 13.826, 8.175],
    ['logged', 0.9446, 16.337, 6.92],
  ] as const)('the published worked example: spiders of the %s plots', (name, coverage, common, dominant) => {
    const { counts } = samples[name];
    expect(Math.abs(available(sampleCoverage(counts)) - coverage)).toBeLessThan(5e-5);
    expect(Math.abs(available(hillNumber(counts, 1)) - common)).toBeLessThan(5e-4);
    expect(Math.abs(available(hillNumber(counts, 2)) - dominant)).toBeLessThan(5e-4);
  });
});

describe('kinds at a coverage', () => {
  const { counts, half, coverageHalf, rarefiedHalf } = samples.girdled;
  it('of half the sample are those of half the sample, of its own coverage those that it has', () => {
    expectClose(available(richnessAtCoverage(counts, coverageHalf)), rarefiedHalf, 1e-9);
    expectClose(available(richnessAtCoverage(counts, available(sampleCoverage(counts)))), 26, 1e-9);
    expect(half).toBe(84);
  });
  it('grow with the coverage, beyond the sample too, and never pass the estimate of all', () => {
    const kinds = [0.3, 0.6, 0.9, 0.95, 0.99, 1].map((coverage) =>
      available(richnessAtCoverage(counts, coverage)),
    );
    expect(kinds).toEqual([...kinds].sort((a, b) => a - b));
    // 26 + (167 / 168) 12² / (2 · 4), Chao 1984.
    expectClose(kinds[5], 26 + ((167 / 168) * 144) / 8, 1e-9);
  });
});

describe('limits of diversity', () => {
  const measures = [
    (counts: ArrayLike<number>) => available(shannonEstimate(counts)),
    (counts: ArrayLike<number>) => 1 - available(sameKind(counts)),
    (counts: ArrayLike<number>) => available(rarefiedRichness(counts, 5)),
  ];
  const bounds = [
    [0, Number.POSITIVE_INFINITY],
    [0, 1],
    [1, Number.POSITIVE_INFINITY],
  ] as const;
  const limitsOf = (counts: readonly number[], perItem = 1) => {
    const each = counts.flatMap((count, column) =>
      Array.from({ length: count / perItem }, () =>
        Float64Array.from(counts, (_, at) => (at === column ? perItem : 0)),
      ),
    );
    return diversityLimits(counts, each, measures, bounds, {
      random: createRandom(5),
      resamples: 199,
      confidence: 0.95,
    });
  };

  it('never leave out their estimate, never lack width, never pass the bounds, for any small sample', () => {
    for (const counts of [
      [5, 1],
      [3, 3],
      [6, 0, 0],
      [1, 1, 1, 1, 1],
      [9, 1, 1],
      [2, 2, 2],
      [4, 4, 4, 4],
      [20, 10, 5, 2, 1],
    ]) {
      limitsOf(counts).forEach((limits, which) => {
        if ('why' in limits) return;
        const value = measures[which](counts);
        expect(limits.low).toBeLessThanOrEqual(value);
        expect(limits.high).toBeGreaterThanOrEqual(value);
        expect(limits.high - limits.low).toBeGreaterThan(1e-9);
        expect(limits.low).toBeGreaterThanOrEqual(bounds[which][0]);
        expect(limits.high).toBeLessThanOrEqual(bounds[which][1]);
      });
    }
  });

  it('are wider where the same records come from fewer items', () => {
    const width = (limits: ReturnType<typeof limitsOf>[number]) =>
      'why' in limits ? 0 : limits.high - limits.low;
    const [single] = limitsOf([12, 8, 4, 4]);
    const [clustered] = limitsOf([12, 8, 4, 4], 4);
    expect(width(clustered)).toBeGreaterThan(1.5 * width(single));
  });

  it('draw from shares that leave room for kinds not met and sum to 1', () => {
    const shares = estimatedShares([10, 6, 4]);
    expect(shares.length).toBe(5);
    expectClose(
      shares.reduce((sum, share) => sum + share, 0),
      1,
      1e-12,
    );
    // Two of 22 items are taken to have been passed over.
    expectClose(shares[3] + shares[4], 2 / 22, 1e-12);
  });
});

import { describe, expect, it } from 'vitest';
import { condensedIndex, pairCount } from '../../../src/numerics/dissimilarity/condensed.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { calibrate, conformalP, fewestToExclude, verdictAt } from '../../../src/numerics/tests/conformal.ts';
import { available } from '../compare-up-to-sign.ts';

function within(points: readonly (readonly number[])[]) {
  const n = points.length;
  const values = new Float64Array(pairCount(n));
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) values[condensedIndex(n, i, j)] = apart(points[i], points[j]);
  }
  return { n, values };
}

const apart = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, k) => sum + Math.abs(value - b[k]), 0);

function pOf(points: readonly (readonly number[])[], extra: readonly number[], neighbours: number) {
  return conformalP(
    calibrate(within(points), neighbours),
    points.map((point) => apart(point, extra)),
  );
}

describe('conformal p values', () => {
  it('by hand: 0, 1, 2, 10 on a line and a new 4, one neighbour', () => {
    // Distances to the nearest other, the new one included: 1, 1, 1, 6; the new one has 2. One of four is
    // at least as strange, so p = (1 + 1) / 5 (Vovk, Gammerman & Shafer 2005, eq. 2.18).
    expect(pOf([[0], [1], [2], [10]], [4], 1)).toEqual({ p: 2 / 5, n: 4, score: 2 });
  });

  it('by hand with two neighbours, fewer where there are fewer: 0 and 3, new 1', () => {
    // Means of two distances: 0 -> (1 + 3)/2, 3 -> (2 + 3)/2, new -> (1 + 2)/2: both are stranger.
    expect(pOf([[0], [3]], [1], 2)).toEqual({ p: 1, n: 2, score: 1.5 });
    expect(available(pOf([[0]], [5], 2)).p).toBe(1);
  });

  /** How often p was at most 1/20, 2/20 … 20/20 among records drawn alike. */
  function cumulative(neighbours: number, trials: number): number[] {
    const counts = new Float64Array(21);
    for (let trial = 0; trial < trials; trial++) {
      const random = createRandom(1000 * neighbours + trial);
      const points = Array.from({ length: 20 }, () => [random.next(), random.next() * random.next()]);
      counts[Math.round(20 * available(pOf(points.slice(0, 19), points[19], neighbours)).p)]++;
    }
    let below = 0;
    return Array.from({ length: 20 }, (_, step) => {
      below += counts[step + 1];
      return below / trials;
    });
  }
  const TRIALS = 1500;
  const fourSd = (share: number) => 4 * Math.sqrt((share * (1 - share)) / TRIALS) + 1e-12;

  it.each([3, 7])(
    'on exchangeable records are uniform on 1/20 … 20/20 (%i neighbours, 4 sd)',
    (neighbours) => {
      cumulative(neighbours, TRIALS).forEach((share, step) => {
        const expected = (step + 1) / 20;
        expect(Math.abs(share - expected), `p <= ${expected}`).toBeLessThan(fourSd(expected));
      });
    },
  );

  it('with one neighbour are never too small; mutual neighbours tie, which makes them larger', () => {
    const shares = cumulative(1, TRIALS);
    shares.forEach((share, step) => {
      const expected = (step + 1) / 20;
      expect(share, `p <= ${expected}`).toBeLessThan(expected + fourSd(expected));
    });
    expect(shares[18]).toBeLessThan(0.95 - fourSd(0.95));
  });

  it('a judgement without the new record in the set would not be uniform: the guarantee rests on it', () => {
    // The naive score compares members by their own neighbours only; p is then too small too often.
    const trials = 1500;
    let low = 0;
    for (let trial = 0; trial < trials; trial++) {
      const random = createRandom(trial);
      const points = Array.from({ length: 10 }, () => [random.next(), random.next()]);
      const nine = points.slice(0, 9);
      const { nearest } = calibrate(within(nine), 3);
      const mean = (list: Float64Array) => (list[0] + list[1] + list[2]) / 3;
      const scores = nine.map((_, i) => mean(nearest.slice(3 * i, 3 * i + 3)));
      const own = nine.map((point) => apart(point, points[9])).sort((a, b) => a - b);
      const score = (own[0] + own[1] + own[2]) / 3;
      const p = (scores.filter((one) => one >= score).length + 1) / 10;
      if (p > 0.9) low++;
    }
    const sd = Math.sqrt(0.09 / trials);
    expect(Math.abs(low / trials - 0.1)).toBeGreaterThan(4 * sd);
  });

  it('ties make p larger, never smaller', () => {
    expect(available(pOf([[1], [1], [1], [1]], [1], 2)).p).toBe(1);
  });

  it('unknown dissimilarities are passed over, and nothing comparable is said', () => {
    const values = Float64Array.of(Number.NaN, 1, Number.NaN);
    const calibration = calibrate({ n: 3, values }, 2);
    expect(conformalP(calibration, [Number.NaN, Number.NaN, Number.NaN])).toEqual({
      why: 'nothing in common that could be compared',
    });
    expect(available(conformalP(calibration, [0.5, Number.NaN, 0.5])).n).toBe(2);
  });
});

describe('too few to judge', () => {
  it('needs 4 records at 80 %, 9 at 90 %, 19 at 95 %, because p is never below 1 / (n + 1)', () => {
    expect([0.8, 0.9, 0.95].map(fewestToExclude)).toEqual([4, 9, 19]);
  });

  it('is neither in nor out', () => {
    expect(verdictAt(0.9, { p: 1 / 9, n: 8 })).toBe('too few to judge');
    expect(verdictAt(0.9, { p: 0.1, n: 9 })).toBe('excluded');
    expect(verdictAt(0.9, { p: 0.2, n: 9 })).toBe('cannot be excluded');
  });
});

describe('a new record that is recorded better than some members', () => {
  // Ten members on a line, one apart, each judged by its nearest; the new record lies five beyond the first.
  const line = {
    n: 10,
    values: Float64Array.from(
      Array.from({ length: 10 }, (_, i) => Array.from({ length: 9 - i }, (__, j) => j + 1)).flat(),
    ),
  };
  const calibration = calibrate(line, 1);
  const toNew = Array.from({ length: 10 }, (_, i) => 5 + i);
  const p = (found: ReturnType<typeof conformalP>) => ('why' in found ? Number.NaN : found.p);

  it('is as strange as can be to members that lack nothing', () => {
    expect(p(conformalP(calibration, toNew))).toBeCloseTo(1 / 11, 12);
  });

  it('is judged by the others without what they lack, but these speak at most twice as loud as the complete ones', () => {
    // Without what the last four lack the new record lies by them; by hand: credit min(4, 4 x 2 x 1/7), p (8/7 + 1) / 11.
    const alike = [
      { members: [0, 1, 2, 3, 4, 5], complete: true, toNew },
      { members: [6, 7, 8, 9], complete: false, toNew: toNew.map(() => 0.5) },
    ];
    expect(p(conformalP(calibration, toNew, alike))).toBeCloseTo((8 / 7 + 1) / 11, 12);
  });

  it('is not strange where none of the members has it all', () => {
    const alike = [{ members: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9], complete: false, toNew: toNew.map(() => 0.5) }];
    expect(p(conformalP(calibration, toNew, alike))).toBe(1);
  });
});

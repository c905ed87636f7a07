import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import {
  bandwidthTest,
  criticalBandwidth,
  turnsOf,
  valleyOfTwo,
} from '../../../src/numerics/modes/silverman.ts';
import { reference } from '../../references/reference.ts';
import { available } from '../close.ts';

interface Reference {
  bandwidths: { name: string; x: number[]; one: number; two: number; three: number; valleys: number[] }[];
}
const r = reference<Reference>('typology');
const sorted = (values: readonly number[]) => Float64Array.from(values).sort();
/** Both sides look for the turning points on a grid, so the last bump to go is seen a little early. */
const GRID = 2e-3;
const near = (found: number, expected: number) => expect(Math.abs(found / expected - 1)).toBeLessThan(GRID);

describe(`critical bandwidths and valleys, as ${r.tool}`, () => {
  it.each(r.bandwidths)('$name', ({ x, one, two, three, valleys }) => {
    const values = sorted(x);
    near(available(criticalBandwidth(values, 1)), one);
    near(available(criticalBandwidth(values, 2)), two);
    near(available(criticalBandwidth(values, 3)), three);
    near(available(valleyOfTwo(values)), valleys[0]);
  });

  it('as Silverman 1981 gives them for the silica of 22 chondrites (data and 2.39, 1.83, 0.68 from memory)', () => {
    const silica = sorted([
      20.77, 22.56, 22.71, 22.99, 26.39, 27.08, 27.32, 27.33, 27.57, 27.81, 28.69, 29.36, 30.25, 31.89, 32.88,
      33.23, 33.28, 33.4, 33.52, 33.83, 33.95, 34.82,
    ]);
    [2.39, 1.83, 0.68].forEach((published, place) => {
      expect(available(criticalBandwidth(silica, place + 1))).toBeCloseTo(published, 1);
    });
  });
});

describe('the test for more than k modes', () => {
  it('speaks against one mode where there are two far heaps, and not against two', () => {
    const { x } = r.bandwidths.find(({ name }) => name === 'two far heaps')!;
    expect(available(bandwidthTest(x, 1, createRandom(3))).p).toBeLessThan(0.02);
    expect(available(bandwidthTest(x, 2, createRandom(3))).p).toBeGreaterThan(0.1);
  });

  it('gives the same answer whatever the order of the values and for the same seed', () => {
    const { x } = r.bandwidths[2];
    const forwards = bandwidthTest(Object.freeze([...x]), 1, createRandom(3), 49);
    expect(bandwidthTest([...x].reverse(), 1, createRandom(3), 49)).toEqual(forwards);
  });

  it('says why not', () => {
    expect(bandwidthTest([2, 2, 2, 2], 1, createRandom(1))).toEqual({
      why: 'more than 1 different values are needed to look for more than 1 modes',
    });
  });
});

describe('peaks and valleys', () => {
  it('alternate, with one peak more than valleys, at any bandwidth', () => {
    for (const { x } of r.bandwidths)
      for (const width of [0.03, 0.1, 0.3, 1, 3]) {
        const { peaks, valleys } = turnsOf(sorted(x), width);
        expect(peaks.length).toBe(valleys.length + 1);
        valleys.forEach((valley, place) => {
          expect(valley).toBeGreaterThan(peaks[place]);
          expect(valley).toBeLessThan(peaks[place + 1]);
        });
      }
  });

  it('two single values far apart are two peaks with the valley half-way', () => {
    const { peaks, valleys } = turnsOf([0, 10], 1);
    expect(peaks.length).toBe(2);
    expect(valleys[0]).toBeCloseTo(5, 1);
    expect(turnsOf([0, 100], 1).peaks.length).toBe(2);
  });
});

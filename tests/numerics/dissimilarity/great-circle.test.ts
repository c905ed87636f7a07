import { describe, it } from 'vitest';
import { chordDistance, EARTH_RADIUS } from '../../../src/numerics/dissimilarity/great-circle.ts';
import { expectClose } from '../close.ts';

describe('straight distance through the sphere', () => {
  it('is the diameter between the poles, root two radii for a quarter turn, and symmetric', () => {
    expectClose(chordDistance([90, 0], [-90, 0]), 2 * EARTH_RADIUS, 1e-12);
    expectClose(chordDistance([0, 0], [0, 90]), Math.SQRT2 * EARTH_RADIUS, 1e-12);
    expectClose(chordDistance([50, 10], [48, 11]), chordDistance([48, 11], [50, 10]), 1e-12);
  });
  it('agrees with the formula of haversines to 1 in 100,000 over 100 km', () => {
    const rad = (degrees: number) => (degrees * Math.PI) / 180;
    const h = Math.sin(rad(0.5)) ** 2 + Math.cos(rad(47)) * Math.cos(rad(48)) * Math.sin(rad(0.25)) ** 2;
    expectClose(chordDistance([47, 8], [48, 8.5]), 2 * EARTH_RADIUS * Math.sqrt(h), 1e-12);
    expectClose(chordDistance([47, 8], [48, 8.5]), 2 * EARTH_RADIUS * Math.asin(Math.sqrt(h)), 2e-5);
  });
});

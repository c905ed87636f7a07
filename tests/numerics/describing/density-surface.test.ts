import { describe, expect, it } from 'vitest';
import { densitySurface, heightsHolding } from '../../../src/numerics/describing/density-surface.ts';
import { expectClose } from '../close.ts';

/** [column of x][row of y]. */
const R_DENSITY = [
  [1.49926250546e-7, 4.43819701319e-4, 1.64722919495e-9],
  [3.12002625784e-5, 2.16327847717e-2, 9.67758529589e-7],
  [1.04265505964e-14, 5.98199453527e-5, 4.9103200866e-6],
] as const;

describe('density of points in a plane', () => {
  const x = [1, 2, 4, 8];
  const y = [3, 1, 2, 5];

  it('is that of MASS::kde2d of R', () => {
    // R 4.2.2, MASS 7.3-58.2, whose h is four standard deviations: sd 1 on the grid of our surface.
    // kde2d(c(1,2,4,8), c(3,1,2,5), h = c(4, 4), n = 3, lims = c(-2, 11, -2, 8))$z
    const { x: columns, y: rows, heights } = densitySurface(x, y, 3, [1, 1]);
    expect(columns).toEqual([-2, 4.5, 11]);
    expect(rows).toEqual([-2, 3, 8]);
    for (const [column, line] of R_DENSITY.entries())
      for (const [row, value] of line.entries()) expectClose(heights[row][column], value, 1e-9);
  });

  it('holds all of one over its whole reach, and the densest share above its height', () => {
    const many = Array.from({ length: 400 }, (_, i) => ((i * 7919) % 401) / 40);
    const other = Array.from({ length: 400 }, (_, i) => ((i * 104729) % 397) / 40);
    const surface = densitySurface(many, other, 60);
    const cell = (surface.x[1] - surface.x[0]) * (surface.y[1] - surface.y[0]);
    const whole = surface.heights.flat().reduce((sum, height) => sum + height * cell, 0);
    expect(whole).toBeGreaterThan(0.97);
    expect(whole).toBeLessThan(1.01);
    const [half, most] = heightsHolding(surface, many, other, [0.5, 0.9]);
    expect(half).toBeGreaterThan(most);
    expect(most).toBeGreaterThan(0);
  });
});

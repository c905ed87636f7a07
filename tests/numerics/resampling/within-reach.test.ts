import { expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { drawnByGroup } from '../../../src/numerics/resampling/drawn-by-group.ts';
import { permutationTest, shuffle } from '../../../src/numerics/resampling/permutation.ts';
import { drawsWithinReach } from '../../../src/numerics/resampling/within-reach.ts';

it('as many draws are made as are asked for, until things are so many that each takes long', () => {
  expect(drawsWithinReach(9999, 2000)).toBe(9999);
  expect(drawsWithinReach(9999, 4000)).toBe(5000);
  expect(drawsWithinReach(9999, 1_000_000)).toBe(999);
  expect(drawsWithinReach(199, 1_000_000)).toBe(199);
  expect(drawsWithinReach(9999, 0)).toBe(9999);
});

it('a test of very many things says how many ways it tried, and its p is a share of those', () => {
  const labels = Int32Array.from({ length: 40_000 }, (_, at) => at % 2);
  const found = permutationTest(labels, (dealt) => dealt[0], { random: createRandom(1), relabellings: 4999 });
  expect(found.relabellings).toBe(999);
  expect((found.p * 1000) % 1).toBeCloseTo(0, 9);
  expect(found.p).toBeGreaterThan(0.9);
});

it('fewer deals come to the p of as many as are asked for, as near as chance brings either to the true one', () => {
  const chance = createRandom(8);
  const n = 8000;
  const values = Float64Array.from({ length: n }, (_, at) => chance.next() + (at % 2 === 0 ? 0.012 : 0));
  const labels = Int32Array.from({ length: n }, (_, at) => at % 2);
  const apart = (dealt: ArrayLike<number>) => {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += dealt[i] === 0 ? values[i]! : -values[i]!;
    return Math.abs(sum);
  };
  const asked = 9999;
  const found = permutationTest(labels, apart, { random: createRandom(1), relabellings: asked });
  expect(found.relabellings).toBe(2500);
  const dealt = labels.slice();
  const random = createRandom(2);
  let reached = 0;
  for (let deal = 0; deal < asked; deal++) {
    shuffle(dealt, random);
    if (apart(dealt) >= found.observed) reached++;
  }
  const full = (reached + 1) / (asked + 1);
  expect(full).toBeGreaterThan(0.01);
  expect(full).toBeLessThan(0.5);
  const spread = Math.sqrt(full * (1 - full) * (1 / found.relabellings + 1 / asked));
  expect(Math.abs(found.p - full)).toBeLessThan(4 * spread);
});

const labels = Int32Array.from({ length: 10_000 }, (_, at) => (at < 20 ? 2 : at % 10 === 0 ? 1 : 0));
const draw = (seed: number) =>
  drawnByGroup(labels, { most: 1000, leastOfEach: 50, random: createRandom(seed) });

it('of many things some of each group are drawn: a rare group whole, the others by their share', () => {
  const drawn = draw(1);
  const sizes = [0, 1, 2].map((group) => drawn.filter((place) => labels[place] === group).length);
  const wholes = [0, 1, 2].map((group) => labels.filter((label) => label === group).length);
  expect(sizes[2]).toBe(20);
  expect(sizes[0]).toBe(Math.round(wholes[0]! / 10));
  expect(sizes[1]).toBe(Math.round(wholes[1]! / 10));
  expect(new Set(drawn).size).toBe(drawn.length);
  expect(drawn).toEqual(drawn.slice().sort());
  expect(draw(1)).toEqual(drawn);
  expect(draw(2)).not.toEqual(drawn);
});

it('of few things all are taken, in their order', () => {
  const all = drawnByGroup([1, 0, 1], { most: 3, leastOfEach: 1, random: createRandom(1) });
  expect([...all]).toEqual([0, 1, 2]);
});

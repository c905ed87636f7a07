import { expect, it } from 'vitest';
import { ownItems } from '../../../src/analyses/standing/unlike.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

it('of a very large site some items are drawn by the seed, of others all are taken', () => {
  const rows = Array.from({ length: 1000 }, (_, at) => 3 * at);
  const drawn = ownItems(rows, createRandom(1));
  expect(drawn.length).toBe(300);
  expect(new Set(drawn).size).toBe(300);
  expect(drawn.every((row) => rows.includes(row))).toBe(true);
  expect([...drawn].sort((a, b) => a - b)).toEqual([...drawn]);
  expect(ownItems(rows, createRandom(1))).toEqual(drawn);
  expect(ownItems(rows, createRandom(2))).not.toEqual(drawn);
  expect(ownItems(rows.slice(0, 300), createRandom(1))).toEqual(rows.slice(0, 300));
});

import { expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { medianDifference } from '../../../src/numerics/tests/pairwise-median.ts';

const random = createRandom(5);
const draw = (n: number, decimals: number, shift: number) =>
  Array.from({ length: n }, () => Number((shift + 10 * (random.next() - 0.5)).toFixed(decimals)));

/** By writing all differences down and putting them in order. */
function plainly(first: readonly number[], second: readonly number[]): number {
  const all = Float64Array.from(first.flatMap((a) => second.map((b) => a - b))).sort();
  const upper = all.length >> 1;
  return all.length % 2 === 1 ? all[upper]! : (all[upper - 1]! + all[upper]!) / 2;
}

it.each([
  ['rounded readings with ties', 120, 90, 1, 0],
  ['an odd number of pairs', 101, 77, 3, 2],
  ['differences about nought', 80, 81, 0, 0],
  ['differences below nought', 70, 90, 2, -30],
  ['one reading against many', 1, 6001, 4, 1],
])('%s: counted, the median difference is the very one that is written down', (_, n, m, decimals, shift) => {
  const [first, second] = [draw(n, decimals, shift), draw(m, decimals, 0)];
  expect(n * m).toBeGreaterThan(4000);
  expect(medianDifference(first, second)).toBe(plainly(first, second));
});

it('takes no memory for the pairs: twice 100,000 readings', () => {
  const [first, second] = [draw(100_000, 1, 3), draw(100_000, 1, 0)];
  expect(Math.abs((medianDifference(first, second) as number) - 3)).toBeLessThan(0.15);
});

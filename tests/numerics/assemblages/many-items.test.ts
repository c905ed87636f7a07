import { describe, expect, it } from 'vitest';
import { drawnCounts, likenessInterval } from '../../../src/numerics/assemblages/draws.ts';
import { likenessDraws } from '../../../src/numerics/assemblages/ranking.ts';
import { sameSource } from '../../../src/numerics/assemblages/same-source.ts';
import { assemblageSimilarity } from '../../../src/numerics/assemblages/similarity.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { bootstrapInterval } from '../../../src/numerics/resampling/bootstrap.ts';
import { permutationTest } from '../../../src/numerics/resampling/permutation.ts';
import { fisherExact } from '../../../src/numerics/tests/fisher-exact.ts';
import { available } from '../close.ts';

/** So many items by their kinds; every seventh brings a second record of the next kind. */
const itemsOf = (counts: readonly number[]) =>
  counts.flatMap((count, kind) =>
    Array.from({ length: count }, (_, at) => {
      const item = new Float64Array(counts.length);
      item[kind]!++;
      if (at % 7 === 0) item[(kind + 1) % counts.length]!++;
      return item;
    }),
  );
const first = itemsOf([1500, 900, 300, 40]);
const second = itemsOf([1400, 1000, 260, 55]);

describe('very many items, drawn by how many bring the same', () => {
  it('give the limits that drawing them one by one gives', () => {
    const settings = { coefficient: 'brainerd-robinson', resamples: 999, confidence: 0.95 } as const;
    const counted = available(
      likenessInterval(first, second, new Float64Array(4), { ...settings, random: createRandom(1) }),
    );
    const likeness = (one: Float64Array, other: Float64Array) =>
      assemblageSimilarity([one, other], settings.coefficient).values[0]!;
    const single = available(
      bootstrapInterval(
        [first.length, second.length],
        ([one, other]) => likeness(drawnCounts(first, one!, 4), drawnCounts(second, other!, 4)),
        { random: createRandom(2), resamples: 999, method: 'centred' },
      ),
    );
    const width = single.high - single.low;
    expect(width).toBeGreaterThan(1);
    expect(Math.abs(counted.low - single.low)).toBeLessThan(0.12 * width);
    expect(Math.abs(counted.high - single.high)).toBeLessThan(0.12 * width);
    expect(counted.resamples).toBe(999);
  });

  it('give the p that dealing them one by one gives', () => {
    const counted = sameSource(first, second, 4, 'brainerd-robinson', {
      random: createRandom(3),
      relabellings: 1999,
    });
    const both = [...first, ...second];
    const single = permutationTest(
      both.map((_, at) => (at < first.length ? 0 : 1)),
      (labels) => {
        const counts = [new Float64Array(4), new Float64Array(4)];
        for (const [at, item] of both.entries())
          for (let kind = 0; kind < 4; kind++) counts[labels[at]!]![kind]! += item[kind]!;
        return -assemblageSimilarity(counts, 'brainerd-robinson').values[0]!;
      },
      { random: createRandom(4), relabellings: 1999 },
    );
    // Four standard errors of the difference of two shares of 1,999 deals.
    expect(Math.abs(counted.p - single.p)).toBeLessThan(
      4 * Math.sqrt((2 * single.p * (1 - single.p) + 1e-4) / 1999),
    );
    expect(single.p).toBeLessThan(0.2);
  });

  it('keep the size of every draw', () => {
    const draws = likenessDraws([first, second], 4, 'brainerd-robinson', 3, createRandom(5));
    for (const { values } of draws) expect(values[0]).toBeGreaterThan(180);
  });
});

it('Fisher’s test of a large table by dealing columns comes to the exact p', () => {
  const table = [
    [5200, 3],
    [640, 3],
  ];
  const exact = available(fisherExact(table, createRandom(1)));
  const drawn = available(fisherExact(table, createRandom(1), 9999, 0));
  expect([exact.method, drawn.method]).toEqual(['exact', 'resampled']);
  expect(exact.p).toBeGreaterThan(0.005);
  expect(exact.p).toBeLessThan(0.3);
  expect(Math.abs(drawn.p - exact.p)).toBeLessThan(4 * Math.sqrt(exact.p / 9999));
});

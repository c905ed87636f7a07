import { describe, expect, it } from 'vitest';
import { sharedLeanings } from '../../src/numerics/assemblages/shared-leaning.ts';
import { condensedIndex } from '../../src/numerics/dissimilarity/condensed.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { expectClose } from './close.ts';

const R_LEANING = [
  [0, 1, 0.215420386905],
  [0, 2, -0.443005952381],
  [0, 3, -0.108432539683],
  [1, 2, -0.325316220238],
  [1, 3, -0.0914682539683],
  [2, 3, 0.0612103174603],
] as const;

/** One item a record. */
const place = (...counts: number[]) =>
  counts.flatMap((count, kind) =>
    Array.from({ length: count }, () => Float64Array.from(counts, (_, other) => (other === kind ? 1 : 0))),
  );

describe('assemblages that lean the same way', () => {
  const items = [place(12, 2, 2), place(11, 3, 2), place(2, 12, 2), place(3, 3, 3)];
  const found = sharedLeanings(items, 3, [true, true, true, true], { random: createRandom(1), deals: 1999 });
  const at = (first: number, second: number) => condensedIndex(4, first, second);

  it('the leaning is the inner product of chi-square departures, as in R', () => {
    // R 4.2.2: n <- rbind(c(12,2,2), c(11,3,2), c(2,12,2), c(3,3,3)); p <- n / rowSums(n); c <- colSums(n) / sum(n);
    // d <- sweep(p, 2, c); print(d %*% diag(1 / c) %*% t(d), digits = 12)
    for (const [first, second, value] of R_LEANING)
      expectClose(found.leaning.values[at(first, second)], value, 1e-9);
  });

  it('two that have more of the same kind lean together; p of those that lean apart is near 1', () => {
    expect(found.leaning.values[at(0, 1)]).toBeGreaterThan(0);
    expect(found.p.values[at(0, 1)]).toBeLessThan(0.01);
    expect(found.leaning.values[at(0, 2)]).toBeLessThan(0);
    expect(found.p.values[at(0, 2)]).toBeGreaterThan(0.9);
  });

  it('samples of one source are alike and do not lean together', () => {
    const same = Array.from({ length: 5 }, () => place(8, 4, 4));
    const { p } = sharedLeanings(
      same,
      3,
      same.map(() => true),
      { random: createRandom(2), deals: 499 },
    );
    expect(Math.min(...p.values)).toBeGreaterThan(0.2);
  });

  it('p is never 0, and of what takes no part there is none', () => {
    const { p } = sharedLeanings(items, 3, [true, true, true, false], { random: createRandom(1), deals: 99 });
    expect(p.values[at(0, 1)]).toBeGreaterThanOrEqual(0.01);
    expect(p.values[at(0, 3)]).toBeNaN();
  });
});

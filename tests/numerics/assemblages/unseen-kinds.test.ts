import { describe, expect, it } from 'vitest';
import { chanceOfUnseen } from '../../../src/numerics/assemblages/unseen-kinds.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { available } from '../compare-up-to-sign.ts';

describe('the chance of an unseen kind', () => {
  it('is the share of kinds met once, with the limit of Esty 1983 by hand', () => {
    // Counts 1 1 1 2 5: n = 10, n1 = 3, n2 = 1; 0.3 + 1.644854 sqrt(3 x 0.7 + 2) / 10.
    const { chance, high, singletons, kinds } = available(chanceOfUnseen([1, 1, 1, 2, 5, 0]));
    expect([chance, singletons, kinds]).toEqual([0.3, 3, 5]);
    expect(high).toBeCloseTo(0.3 + (1.6448536269514722 * Math.sqrt(4.1)) / 10, 12);
  });

  it('is right on average: sampling from known kinds, estimate and truth agree within 4 sd', () => {
    const random = createRandom(77);
    const kinds = Array.from({ length: 60 }, (_, k) => 1 / (k + 1));
    const whole = kinds.reduce((sum, weight) => sum + weight, 0);
    const differences = Array.from({ length: 400 }, () => {
      const counts = kinds.map(() => 0);
      for (let draw = 0; draw < 80; draw++) {
        let left = random.next() * whole;
        let kind = 0;
        while (kind < 59 && left > kinds[kind]) left -= kinds[kind++];
        counts[kind]++;
      }
      const truth = kinds.reduce((sum, weight, k) => sum + (counts[k] === 0 ? weight / whole : 0), 0);
      return available(chanceOfUnseen(counts)).chance - truth;
    });
    const mean = differences.reduce((sum, one) => sum + one, 0) / differences.length;
    const sd = Math.sqrt(
      differences.reduce((sum, one) => sum + (one - mean) ** 2, 0) / differences.length ** 2,
    );
    // Good's estimate is for the next draw, not the present sample: its bias is below 1/n.
    expect(Math.abs(mean)).toBeLessThan(4 * sd + 1 / 80);
  });

  it('needs two records', () => {
    expect(chanceOfUnseen([1])).toEqual({ why: 'needs 2 records of known kind, not 1' });
  });
});

import { describe, expect, it } from 'vitest';
import { welchOnRanks } from '../../../src/analyses/contrast/welch-on-ranks.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { blockedSample } from '../../../src/numerics/tests/blocked-sample.ts';

const random = createRandom(11);
const drawn = (sizes: readonly number[], shift = 0) =>
  sizes.map((size, group) => {
    const values = Float64Array.from({ length: size }, () => random.next() + shift * group);
    return blockedSample(
      values,
      Array.from(values, (_, i) => `${group} ${i}`),
    );
  });
const asked = (sizes: readonly number[], shift = 0) =>
  welchOnRanks(drawn(sizes, shift), { random: random.stream('deals'), relabellings: 199 });

describe('Welch’s test on ranks', () => {
  it('of many small groups from one source seldom tells them apart', () => {
    const sizes = Array.from({ length: 21 }, (_, i) => 3 + ((i * 5) % 10));
    const runs = 200;
    const passed = Array.from({ length: runs }, () => asked(sizes)).filter(
      (found) => !('why' in found) && found.p <= 0.05,
    ).length;
    // By the F distribution 41 % did. Of a fair 5 %, 19 or more of 200 come in fewer than 1 of 100 cases.
    expect(passed).toBeLessThan(19);
  });

  it('of small groups that lie apart tells them apart, by dealing', () => {
    const found = asked([6, 6, 6], 2);
    expect(found).toMatchObject({ symbol: 'F', df: 2, p: 0.005 });
    expect(found).toMatchObject({ method: '199 random ways to deal the items, ranks of one median an item' });
  });

  it('of two groups, or of large ones, takes the F distribution', () => {
    for (const sizes of [
      [5, 5],
      [20, 20, 20],
    ])
      expect(asked(sizes)).toMatchObject({ method: 'F distribution, ranks of one median an item' });
  });
});

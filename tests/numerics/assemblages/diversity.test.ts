import { describe, expect, it } from 'vitest';
import { diversity, rarefiedRichness } from '../../../src/numerics/assemblages/diversity.ts';
import { r } from '../assemblages-values.ts';
import { available, expectClose } from '../close.ts';

describe(`diversity, as ${r.tool}`, () => {
  it.each(r.diversity.map((expected, index) => ({ index, expected })))(
    'forest plot $index',
    ({ expected }) => {
      const counts = (expected as unknown as { counts: number[] }).counts;
      const found = available(diversity(counts));
      expect(found.richness).toBe(expected.richness);
      expectClose(found.shannon, expected.shannon);
      expectClose(found.simpson, expected.simpson);
      expectClose(available(found.evenness), expected.evenness);
      expectClose(found.chao1, expected.chao1);
      expectClose(available(rarefiedRichness(counts, 50)), expected.rarefied50);
      expectClose(available(rarefiedRichness(counts, 200)), expected.rarefied200);
    },
  );

  it('says why not', () => {
    expect(diversity([0, 0])).toEqual({ why: 'no item to count' });
    expect(available(diversity([5])).evenness).toEqual({ why: 'evenness needs two kinds' });
    expect(rarefiedRichness([2, 1], 4)).toEqual({ why: 'a draw of 4 cannot be made from 3 items' });
  });
});

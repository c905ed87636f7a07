import { describe, expect, it } from 'vitest';
import { spreadDistances } from '../../../src/numerics/dissimilarity/spread-distance.ts';

/** Expected values are worked by hand from the definition: a mean, a least and a greatest of four products at most. */
describe('distances of codes that may be several kinds', () => {
  // Kinds a, b, c: a to b 0.25, a to c 1, b to c 0.5.
  const between = Float64Array.of(0, 0.25, 1, 0.25, 0, 0.5, 1, 0.5, 0);
  const spreads = [{ code: 3, kinds: [0, 1], weights: [3, 1] }];
  const under = (rule: 'expected' | 'least' | 'greatest') => spreadDistances(between, 3, spreads, rule);

  it('keeps what single kinds are apart, whatever the rule', () => {
    for (const rule of ['expected', 'least', 'greatest'] as const)
      for (let a = 0; a < 3; a++)
        for (let b = 0; b < 3; b++) expect(under(rule)[a * 4 + b]).toBe(between[a * 3 + b]);
  });

  it('are the mean, the least and the greatest over the kinds, and symmetric', () => {
    // To a: 3/4 · 0 + 1/4 · 0.25; to b: 3/4 · 0.25; to c: 3/4 · 1 + 1/4 · 0.5; to itself: 2 · 3/4 · 1/4 · 0.25.
    expect([...under('expected').slice(12)]).toEqual([0.0625, 0.1875, 0.875, 0.09375]);
    expect([...under('least').slice(12)]).toEqual([0, 0, 0.5, 0]);
    expect([...under('greatest').slice(12)]).toEqual([0.25, 0.25, 1, 0.25]);
    const wide = under('expected');
    for (let code = 0; code < 4; code++) expect(wide[code * 4 + 3]).toBe(wide[12 + code]);
  });

  it('may replace a code of the tree, and be two such codes apart', () => {
    const both = [
      { code: 0, kinds: [1, 2], weights: [1, 1] },
      { code: 3, kinds: [1, 2], weights: [1, 3] },
    ];
    // Different kinds with chance 1/2 · 3/4 + 1/2 · 1/4 = 1/2, then 0.5 apart.
    expect(spreadDistances(between, 3, both, 'expected')[3]).toBe(0.25);
    expect(spreadDistances(between, 3, both, 'least')[3]).toBe(0);
    expect(spreadDistances(between, 3, both, 'greatest')[3]).toBe(0.5);
  });
});

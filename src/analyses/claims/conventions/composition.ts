import { diversity } from '../../../numerics/assemblages/diversity.ts';
import { assemblageSimilarity } from '../../../numerics/assemblages/similarity.ts';
import { ln } from '../../../numerics/foundation/elementary.ts';
import type { TestMethod } from '../reading/terms.ts';
import type { Way } from './way.ts';

/** Likeness of two lists of counts, in the ways in which the coefficient is printed. */
export function similarityWays(
  method: TestMethod | null,
  a: readonly number[],
  b: readonly number[],
): readonly Way[] {
  if (method === 'bray-curtis' || method === 'morisita-horn' || method === 'jaccard') {
    const [value] = assemblageSimilarity([a, b], method).values;
    return Number.isNaN(value)
      ? []
      : [
          { said: method, value },
          { said: `${method}, as a distance`, value: 1 - value },
        ];
  }
  const [value] = assemblageSimilarity([a, b], 'brainerd-robinson').values;
  return Number.isNaN(value)
    ? []
    : [
        { said: 'Brainerd-Robinson, 0 to 200', value },
        { said: 'Brainerd-Robinson, as a share of 200', value: value / 200 },
      ];
}

/** Diversity of counts, in the ways in which the index is printed. */
export function diversityWays(method: TestMethod | null, counts: readonly number[]): readonly Way[] {
  const found = diversity(counts);
  if ('why' in found) return [];
  const { n, richness, shannon, simpson, evenness } = found;
  switch (method) {
    case 'richness':
      return [{ said: 'kinds seen', value: richness }];
    case 'evenness':
      return typeof evenness === 'number' ? [{ said: "Pielou's evenness", value: evenness }] : [];
    case 'simpson': {
      const unbiased = n > 1 ? (simpson * n) / (n - 1) : null;
      return [
        { said: '1 − Σp²', value: simpson },
        ...(unbiased === null ? [] : [{ said: 'without replacement', value: unbiased }]),
        { said: 'Σp²', value: 1 - simpson },
        { said: '1/Σp²', value: 1 / (1 - simpson) },
      ];
    }
    default:
      return [
        { said: 'natural logarithms', value: shannon },
        { said: 'logarithms to base 2', value: shannon / ln(2) },
        { said: 'logarithms to base 10', value: shannon / ln(10) },
      ];
  }
}

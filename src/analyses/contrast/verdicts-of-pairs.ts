import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { findsNeeded } from '../../numerics/tests/equivalence.ts';
import { toldAt } from '../verdicts.ts';
import type { AttributeSamples, JudgedPair, PairContrast } from './found.ts';
import type { ContrastOptions } from './options.ts';

/** The pairs of every attribute with their verdicts: p values are adjusted over all pairs of the contrast. */
export function judgePairs(
  attributes: readonly { readonly samples: AttributeSamples; readonly pairs: readonly PairContrast[] }[],
  options: ContrastOptions,
): readonly (readonly JudgedPair[])[] {
  const all = attributes.flatMap(({ pairs }) => pairs);
  const p = adjustKnown(
    all.map((pair) => pair.p),
    options.adjust,
  );
  const alike = adjustKnown(
    all.map(({ equivalence }) => ('why' in equivalence ? { why: equivalence.why } : equivalence.p)),
    options.adjust,
  );
  let place = 0;
  return attributes.map(({ samples, pairs }) =>
    pairs.map((pair): JudgedPair => {
      const at = place++;
      const delta = 'why' in pair.delta ? 0 : pair.delta.estimate;
      const tested = toldAt(p[at], options.confidence);
      // Ranks that balance out tell of no direction, whatever their p.
      const told = tested === 'told apart' && delta === 0 ? 'not told apart' : tested;
      return {
        ...pair,
        pAdjusted: p[at],
        told,
        larger: told === 'told apart' ? (delta > 0 ? 'first' : 'second') : null,
        alikePAdjusted: alike[at],
        alike: toldAt(alike[at], options.confidence),
        findsNeeded:
          'why' in pair.delta
            ? pair.delta
            : findsNeeded(pair.delta.estimate, { alpha: 1 - options.confidence, power: options.power }),
        quotable: samples.tested[pair.first].quotable && samples.tested[pair.second].quotable,
      };
    }),
  );
}

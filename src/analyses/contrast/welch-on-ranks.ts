import { midranks } from '../../numerics/foundation/ranks.ts';
import { permutationTest } from '../../numerics/resampling/permutation.ts';
import { welchAnova } from '../../numerics/tests/analysis-of-variance.ts';
import { type BlockedSample, blockMedians } from '../../numerics/tests/blocked-sample.ts';
import type { Unavailable } from '../contract.ts';
import { dealtBy } from './dealt.ts';
import type { TestAnswer } from './found.ts';
import type { TestSettings } from './tests.ts';

/**
 * Below this many items in a group the F distribution is a poor guide to Welch's statistic of three groups or more: of
 * 21 groups of 3 to 12 items from one source 41 % passed 0.05, of ten groups of 5 15 %, of twenty groups of 20 6 %.
 */
const FEW_FOR_WELCH = 20;

/**
 * Welch's analysis of variance on the ranks of one median an item: a test of place that equal spreads are not
 * assumed for (Cribbie, Wilcox, Bewell & Keselman 2007, J. Mod. Appl. Stat. Methods 6:117; from memory). Of small groups
 * its p is from dealing the ranks (after Pauly, Brunner & Konietschke 2015, J. R. Stat. Soc. B 77:461; from memory).
 */
export function welchOnRanks(
  samples: readonly BlockedSample[],
  settings: TestSettings,
): TestAnswer | Unavailable {
  const medians = samples.map(blockMedians);
  const { ranks } = midranks(Float64Array.from(medians.flatMap((values) => Array.from(values))));
  const labels = Int32Array.from(
    medians.flatMap(({ length }, group) => new Array<number>(length).fill(group)),
  );
  const welchOf = (dealt: Int32Array) => {
    const groups = medians.map((): number[] => []);
    dealt.forEach((group, at) => void groups[group].push(ranks[at]));
    return welchAnova(groups);
  };
  const found = welchOf(labels);
  if ('why' in found) return found;
  const few = samples.length > 2 && medians.some(({ length }) => length < FEW_FOR_WELCH);
  const exactLimit = settings.relabellings;
  const dealt = few
    ? permutationTest(labels, (ways) => statisticOf(welchOf(ways)), { ...settings, exactLimit })
    : null;
  return {
    question: 'welch',
    name: 'Welch’s analysis of variance on ranks',
    symbol: 'F',
    statistic: found.statistic,
    df: found.dfBetween,
    dfWithin: found.dfWithin,
    p: dealt === null ? found.p : dealt.p,
    method: `${dealt === null ? 'F distribution' : dealtBy(dealt)}, ranks of one median an item`,
  };
}

/** A deal that leaves a group without spread is as far apart as can be. */
const statisticOf = (found: ReturnType<typeof welchAnova>) => ('why' in found ? Infinity : found.statistic);

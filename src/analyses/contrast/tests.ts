import { ln } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { countRelabellings } from '../../numerics/resampling/permutation.ts';
import { brownForsythe, oneWayAnova, welchAnova } from '../../numerics/tests/analysis-of-variance.ts';
import { type BlockedSample, blockMedians, sharesBlocks } from '../../numerics/tests/blocked-sample.ts';
import {
  blockedRankTest,
  blockedShapeTest,
  blockedSmirnovTest,
  blockedSpreadTest,
} from '../../numerics/tests/blocked-tests.ts';
import { kolmogorovSmirnov } from '../../numerics/tests/kolmogorov-smirnov.ts';
import { kruskalWallis } from '../../numerics/tests/kruskal-wallis.ts';
import { mannWhitney } from '../../numerics/tests/mann-whitney.ts';
import type { Unavailable } from '../contract.ts';
import { dealtBy } from './dealt.ts';
import type { AttributeSamples, FurtherTest, TestAnswer, TestQuestion } from './found.ts';

export interface TestSettings {
  readonly random: Random;
  readonly relabellings: number;
}

/** All ways to deal the items are tried up to this many; the p is then exact. */
const EXACT_LIMIT = 300_000;

/** Below this many items in a group chi-squared is a poor guide to the Kruskal-Wallis H. */
const FEW_FOR_CHI_SQUARED = 6;

/**
 * Do values tend to be larger in some groups? Mann-Whitney for two, Kruskal-Wallis for more. Where items
 * have several fragments, or groups are small, the p comes from dealing whole items.
 */
export function placeTest(
  samples: readonly BlockedSample[],
  settings: TestSettings,
): TestAnswer | Unavailable {
  const values = samples.map((sample) => sample.values);
  const shared = samples.some(sharesBlocks);
  const labels = Int32Array.from(samples.flatMap((sample, s) => new Array<number>(sample.count).fill(s)));
  const deal = () =>
    blockedRankTest(samples, {
      random: settings.random.stream('place'),
      relabellings: settings.relabellings,
      exactLimit: EXACT_LIMIT,
    });
  if (samples.length === 2) {
    const found = mannWhitney(values[0], values[1]);
    if ('why' in found) return found;
    const dealt = shared ? deal() : null;
    if (dealt !== null && 'why' in dealt) return dealt;
    return {
      question: 'place',
      name: 'Mann-Whitney',
      symbol: 'U',
      statistic: found.statistic,
      df: null,
      dfWithin: null,
      p: dealt === null ? found.p : dealt.p,
      method: dealt === null ? found.method : dealtBy(dealt),
    };
  }
  const found = kruskalWallis(values);
  if ('why' in found) return found;
  const few = samples.some((sample) => sample.count < FEW_FOR_CHI_SQUARED);
  const dealt = shared || few || countRelabellings(labels) <= EXACT_LIMIT ? deal() : null;
  if (dealt !== null && 'why' in dealt) return dealt;
  return {
    question: 'place',
    name: 'Kruskal-Wallis',
    symbol: 'H',
    statistic: found.statistic,
    df: found.df,
    dfWithin: null,
    p: dealt === null ? found.p : dealt.p,
    method: dealt === null ? 'chi-squared' : dealtBy(dealt),
  };
}

/** Every further test of one attribute, each an answer or the reason why there is none. */
export function furtherTests(
  { tested, graded, logarithmic }: AttributeSamples,
  means: boolean,
  settings: TestSettings,
): readonly Pick<FurtherTest, 'question' | 'name' | 'answer'>[] {
  const samples = tested.map((group) => group.points);
  const named = (question: TestQuestion, name: string, answer: Answer) => ({
    question,
    name,
    answer: 'why' in answer ? answer : { ...answer, question, name },
  });
  const tests = [
    named('shape', 'Anderson-Darling', shape(samples, settings)),
    named('curve', 'Kolmogorov-Smirnov', curve(samples, settings)),
  ];
  if (!graded) tests.push(named('spread', 'Brown-Forsythe', spread(samples, settings)));
  if (!graded && means) {
    const scale = logarithmic ? ln : (value: number) => value;
    const groups = samples.map((sample) => blockMedians(sample).map(scale));
    const said = `F distribution, ${samples.some(sharesBlocks) ? 'one median an item' : 'one value an item'}${logarithmic ? ', logarithms' : ''}`;
    const from = (found: ReturnType<typeof oneWayAnova> | ReturnType<typeof welchAnova>): Answer =>
      'why' in found
        ? found
        : {
            symbol: 'F',
            statistic: found.statistic,
            df: found.dfBetween,
            dfWithin: found.dfWithin,
            p: found.p,
            method: said,
          };
    tests.push(named('means', 'Analysis of variance', from(oneWayAnova(groups))));
    tests.push(named('welch', "Welch's analysis of variance", from(welchAnova(groups))));
  }
  return tests;
}

type Answer = Omit<TestAnswer, 'question' | 'name'> | Unavailable;

function shape(samples: readonly BlockedSample[], settings: TestSettings): Answer {
  const found = blockedShapeTest(samples, {
    random: settings.random.stream('shape'),
    relabellings: settings.relabellings,
  });
  return 'why' in found
    ? found
    : { symbol: 'A²', statistic: found.observed, ...NO_DF, p: found.p, method: dealtBy(found) };
}

function curve(samples: readonly BlockedSample[], settings: TestSettings): Answer {
  const [first, second, third] = samples;
  if (third !== undefined) return { why: 'the test is for two groups; Anderson-Darling takes all of them' };
  const plain = kolmogorovSmirnov(first.values, second.values);
  if ('why' in plain) return plain;
  if (!samples.some(sharesBlocks))
    return { symbol: 'D', statistic: plain.statistic, ...NO_DF, p: plain.p, method: plain.method };
  const found = blockedSmirnovTest([first, second], {
    random: settings.random.stream('curve'),
    relabellings: settings.relabellings,
  });
  return 'why' in found
    ? found
    : { symbol: 'D', statistic: found.observed, ...NO_DF, p: found.p, method: dealtBy(found) };
}

function spread(samples: readonly BlockedSample[], settings: TestSettings): Answer {
  const plain = brownForsythe(samples.map((sample) => sample.values));
  if ('why' in plain) return plain;
  const { statistic, dfBetween: df, dfWithin } = plain;
  if (!samples.some(sharesBlocks))
    return { symbol: 'F', statistic, df, dfWithin, p: plain.p, method: 'F distribution' };
  const found = blockedSpreadTest(samples, {
    random: settings.random.stream('spread'),
    relabellings: settings.relabellings,
  });
  return 'why' in found
    ? found
    : { symbol: 'F', statistic, df, dfWithin, p: found.p, method: dealtBy(found) };
}

const NO_DF = { df: null, dfWithin: null } as const;

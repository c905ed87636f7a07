import type { Random } from '../../numerics/foundation/random.ts';
import type { BlockedSample } from '../../numerics/tests/blocked-sample.ts';
import type { Unavailable } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import type { AskedOtherwise, AttributeSamples, ContrastGroup, TestAnswer } from './found.ts';
import type { ContrastOptions } from './options.ts';
import { hasIntervals } from './samples.ts';
import { placeTest } from './tests.ts';
import { welchOnRanks } from './welch-on-ranks.ts';

/** Relabellings of a trial: only whether it passes the level is asked of it. */
const TRIAL_RELABELLINGS = 999;
/** Groups that are left out in turn. */
const MOST_GROUPS = 12;

/**
 * Does the verdict on place stand with the readings at their ends, where spreads may differ, and with groups
 * left out? Each is the same question with one thing done otherwise.
 */
export function askedOtherwise(
  samples: AttributeSamples,
  options: ContrastOptions,
  random: Random,
): readonly AskedOtherwise[] {
  const settings = (name: string) => ({
    random: random.stream(name),
    relabellings: Math.min(options.relabellings, TRIAL_RELABELLINGS),
  });
  const asked = (
    change: AskedOtherwise['change'],
    what: string,
    answer: TestAnswer | Unavailable,
  ): AskedOtherwise => ({
    change,
    what,
    answer,
    told: toldAt('why' in answer ? answer : answer.p, options.confidence),
  });
  const { tested } = samples;
  const without = (left: readonly ContrastGroup[]) =>
    placeTest(
      tested.filter((group) => !left.includes(group)).map(({ points }) => points),
      settings(`without ${left.map(({ label }) => label).join()}`),
    );
  const small = tested.filter(({ quotable }) => !quotable);
  return [
    ...(hasIntervals(samples) ? readingsAtEnds(tested) : []).map(({ at, ends }) =>
      asked('ends of the readings', at, placeTest(ends, settings(at))),
    ),
    asked(
      'spreads may differ',
      'Welch’s test on ranks',
      welchOnRanks(
        tested.map(({ points }) => points),
        settings('spreads may differ'),
      ),
    ),
    ...(tested.length < 3 ? [] : tested.slice(0, MOST_GROUPS)).map((group) =>
      asked('a group left out', group.label, without([group])),
    ),
    ...(small.length > 1 && tested.length - small.length > 1
      ? [asked('small groups left out', small.map(({ label }) => label).join(', '), without(small))]
      : []),
  ];
}

/** The readings at one end; for two groups also with the ends drawn together and apart. */
function readingsAtEnds(
  tested: readonly ContrastGroup[],
): { readonly at: string; readonly ends: readonly BlockedSample[] }[] {
  const ways = [
    { at: 'all readings at their low ends', ends: tested.map((group) => group.low) },
    { at: 'all readings at their high ends', ends: tested.map((group) => group.high) },
  ];
  if (tested.length !== 2) return ways;
  const [first, second] = tested;
  return [
    ...ways,
    { at: `${first.label} at low ends, ${second.label} at high ends`, ends: [first.low, second.high] },
    { at: `${first.label} at high ends, ${second.label} at low ends`, ends: [first.high, second.low] },
  ];
}

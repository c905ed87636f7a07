import { chanceOfUnseen } from '../../numerics/assemblages/unseen-kinds.ts';
import { verdictOn } from './sets.ts';
import type { JudgedLabel, Novelty } from './sets-found.ts';

/** Whether the find can be said to be of none of the labels of an attribute, at this level. */
export function noveltyOf(attribute: string, judged: readonly JudgedLabel[], level: number): Novelty {
  const own = judged
    .filter((one) => one.attribute === attribute)
    .map((one) => ({ ...one, at: verdictOn(level, one.outcome) }));
  const tooFew = own.filter(({ at }) => at === 'too few to judge').map(({ label }) => label);
  const ps = own.flatMap(({ outcome, at }) =>
    'why' in outcome || at === 'too few to judge' ? [] : [outcome.p],
  );
  const verdict =
    ps.length === 0
      ? 'too few to judge'
      : own.some(({ at }) => at === 'cannot be excluded')
        ? 'cannot be excluded'
        : tooFew.length > 0
          ? 'only small ones left'
          : 'none of these';
  return {
    attribute,
    verdict,
    greatest:
      ps.length === 0
        ? { why: 'no label has enough records to be judged' }
        : ps.reduce((most, p) => Math.max(most, p)),
    tooFew,
    unseen: chanceOfUnseen(own.map(({ size }) => size)),
  };
}

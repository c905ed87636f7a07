import { chanceOfUnseen } from '../../numerics/assemblages/unseen-kinds.ts';
import { type Verdict, verdictAt } from '../../numerics/tests/conformal.ts';
import type { JudgedLabel, Novelty } from './found.ts';

/** Whether every label of an attribute that can be judged at this level is excluded there. */
export function noveltyOf(attribute: string, judged: readonly JudgedLabel[], level: number): Novelty {
  const own = judged.filter((one) => one.attribute === attribute);
  const verdictOf = ({ outcome }: JudgedLabel): Verdict =>
    'why' in outcome ? 'too few to judge' : verdictAt(level, outcome);
  const tooFew = own.filter((one) => verdictOf(one) === 'too few to judge').map(({ label }) => label);
  const ps = own.flatMap((one) =>
    'why' in one.outcome || verdictOf(one) === 'too few to judge' ? [] : [one.outcome.p],
  );
  return {
    attribute,
    greatest: ps.length > 0 ? Math.max(...ps) : { why: 'no label has enough records to be judged' },
    tooFew,
    verdict:
      ps.length === 0
        ? 'too few to judge'
        : own.some((one) => verdictOf(one) === 'cannot be excluded')
          ? 'cannot be excluded'
          : 'excluded',
    unseen: chanceOfUnseen(own.map(({ size }) => size)),
  };
}

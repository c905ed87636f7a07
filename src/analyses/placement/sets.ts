import type { ConformalP, LabelVerdict } from '../../numerics/tests/conformal.ts';
import { verdictAt } from '../../numerics/tests/conformal.ts';
import type { Unavailable } from '../contract.ts';
import { LEVELS } from './options.ts';
import type { JudgedLabel, LabelSet } from './sets-found.ts';

/** The verdict on a label at a level; one that could not be compared at all is not excluded either. */
export function verdictOn(level: number, outcome: ConformalP | Unavailable): LabelVerdict {
  return 'why' in outcome ? 'too few to judge' : verdictAt(level, outcome);
}

/** The levels at which sets are shown: the usual ones and the one asked for, lowest first. */
export function levelsShown(asked: number): readonly number[] {
  return [...new Set([...LEVELS, asked])].sort((a, b) => a - b);
}

/** The set of each attribute at each level shown. */
export function setsOf(judged: readonly JudgedLabel[], asked: number): readonly LabelSet[] {
  const attributes = [...new Set(judged.map(({ attribute }) => attribute))];
  return attributes.flatMap((attribute) => {
    const own = judged.filter((one) => one.attribute === attribute);
    return levelsShown(asked).map((level): LabelSet => {
      const named = (wanted: LabelVerdict) =>
        own
          .filter(({ outcome }) => verdictOn(level, outcome) === wanted)
          .sort((a, b) => rankOf(a) - rankOf(b))
          .map(({ label }) => label);
      return {
        attribute,
        by: own[0].by,
        level,
        asked: level === asked,
        kept: named('cannot be excluded'),
        tooFew: named('too few to judge'),
        excluded: named('excluded'),
      };
    });
  });
}

const rankOf = ({ likelihood }: JudgedLabel): number => likelihood?.rank ?? Infinity;

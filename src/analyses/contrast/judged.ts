import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { toldAt } from '../verdicts.ts';
import type { Computed } from './computed.ts';
import type { AskedOtherwise, AttributeContrast, FurtherTest } from './found.ts';
import { missingShifts } from './missing-shift.ts';
import type { ContrastOptions } from './options.ts';
import { judgePairs } from './verdicts-of-pairs.ts';

/** Verdicts: p of one question is adjusted over the attributes asked, p of pairs over all pairs. */
export function judged(
  computed: readonly Computed[],
  options: ContrastOptions,
): readonly Omit<AttributeContrast, 'guard'>[] {
  const pairs = judgePairs(computed, options);
  const plain = computed.map((one) => ('why' in one.place ? { why: one.place.why } : one.place.p));
  const place = adjustKnown(plain, options.adjust);
  const questions = new Set(computed.flatMap(({ further }) => further.map(({ question }) => question)));
  const further = new Map<Computed['further'][number], FurtherTest>();
  for (const question of questions) {
    const family = computed.flatMap((one) => one.further.filter((test) => test.question === question));
    const p = adjustKnown(
      family.map(({ answer }) => ('why' in answer ? { why: answer.why } : answer.p)),
      options.adjust,
    );
    family.forEach((test, at) => {
      further.set(test, { ...test, pAdjusted: p[at], told: toldAt(p[at], options.confidence) });
    });
  }
  return computed.map((one, at) => {
    const told = toldAt(place[at], options.confidence);
    return {
      ...one,
      pAdjusted: place[at],
      told,
      pairs: pairs[at],
      further: one.further.flatMap((test) => further.get(test) ?? []),
      missingShifts: missingShifts(one.samples, told, (p) =>
        toldAt(adjustKnown(plain.with(at, p), options.adjust)[at], options.confidence),
      ),
      hangsOn: one.otherwise.filter((other) => turns(told, other)),
    };
  });
}

/** A trial without an answer changes no verdict; one with another answer does. */
function turns(told: AttributeContrast['told'], other: AskedOtherwise): boolean {
  return told !== 'cannot be told' && other.told !== 'cannot be told' && other.told !== told;
}

import { describe, expect, it } from 'vitest';
import { HANDS, MODELS } from './print.ts';

/** Forms that are refused, aloud: a list of all pairs in one row of claims. */
const HANDS_REFUSED = ['scipy/several5'];
const MODELS_REFUSED = ['scipy/tukey'];

describe.each([
  [`in other hands (${HANDS.tool}), without the records`, HANDS, false, 6_000, 2_000, HANDS_REFUSED],
  [`in other hands (${HANDS.tool}), with the records open`, HANDS, true, 6_000, 4_000, HANDS_REFUSED],
  [`of models (${MODELS.tool}), without the records`, MODELS, false, 4_000, 2_000, MODELS_REFUSED],
  [`of models (${MODELS.tool}), with the records open`, MODELS, true, 4_000, 2_500, MODELS_REFUSED],
] as const)('right figures %s', (_, { cases, checked }, withRecords, least, settled, forms) => {
  const against: string[] = [];
  const refused = new Set<string>();
  let judged = 0;
  let agreeing = 0;
  for (const one of cases) {
    const found = checked(one, withRecords);
    if (found === null) {
      if (!/NaN|nan\b/.test(one.table ?? one.rows[0]?.printed ?? '')) refused.add(`${one.hand}/${one.form}`);
      continue;
    }
    judged += found.judged.length;
    for (const { figure, verdict, why } of found.judged) {
      if (verdict.startsWith('agrees')) agreeing++;
      if (verdict === 'differs' || verdict === 'cannot be')
        against.push(
          `${one.hand}/${one.form} ${one.set}: ${figure.quantity} “${figure.printed}” ${verdict}: ${why}`,
        );
    }
  }

  it('calls none of them differing or impossible', () => {
    expect(against).toEqual([]);
  });

  it(`reads more than ${least} and settles more than ${settled}`, () => {
    expect(judged).toBeGreaterThan(least);
    expect(agreeing).toBeGreaterThan(settled);
  });

  it('refuses no other form than those that are named', () => {
    expect([...refused].sort()).toEqual(forms);
  });
});

import { describe, expect, it } from 'vitest';
import { cases, checked, tool } from './print.ts';

/** Forms that are refused, aloud: a comparison of all pairs as a triangle or a list, a share with its own interval. */
const REFUSED = ['R/pairwise', 'bio/count2', 'scipy/several5'];

describe.each([
  ['without the records', false, 6_000, 2_000],
  ['with the records open', true, 6_000, 4_000],
] as const)(`right figures in other hands (${tool}), %s`, (_, withRecords, least, settled) => {
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
    expect([...refused].sort()).toEqual(REFUSED);
  });
});

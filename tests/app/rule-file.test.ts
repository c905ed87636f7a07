import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type TypeRule, typologyFile } from '../../src/analyses/typology/rules.ts';
import { groupOf, ruleFrom } from '../../src/app/screens/type-rules/rule-file.ts';

/** What a rule answers for truth values of its attributes; two-valued logic by the schoolbook. */
function holds(rule: TypeRule, truth: Readonly<Record<string, boolean>>): boolean {
  if ('all' in rule) return rule.all.every((part) => holds(part, truth));
  if ('any' in rule) return rule.any.some((part) => holds(part, truth));
  return 'not' in rule ? !holds(rule.not, truth) : truth[rule.attribute]!;
}

const rule = fc.letrec<{ rule: TypeRule }>((tie) => ({
  rule: fc.oneof(
    { depthSize: 'small' },
    fc.constantFrom('a', 'b', 'c').map((attribute): TypeRule => ({ attribute, known: true })),
    fc.array(tie('rule'), { minLength: 1, maxLength: 3 }).map((all) => ({ all })),
    fc.array(tie('rule'), { minLength: 1, maxLength: 3 }).map((any) => ({ any })),
    tie('rule').map((not) => ({ not })),
  ),
})).rule;

describe('a rule in the form', () => {
  it('says the same when it is read and written back, however deep it is nested', () => {
    fc.assert(
      fc.property(rule, (before) => {
        const after = ruleFrom(groupOf(before)!) as TypeRule;
        expect(
          typologyFile.safeParse({ title: 't', types: [{ id: 'x', label: 'x', when: after }] }).success,
        ).toBe(true);
        for (let bits = 0; bits < 8; bits++) {
          const truth = { a: bits % 2 > 0, b: bits % 4 > 1, c: bits > 3 };
          expect(holds(after, truth)).toBe(holds(before, truth));
        }
      }),
      { numRuns: 500 },
    );
  });

  it('keeps a group that is still being filled', () => {
    fc.assert(
      fc.property(rule, (before) => {
        const group = groupOf(before)!;
        const kept = groupOf(ruleFrom(group))!;
        expect(groupOf(ruleFrom(kept))).toEqual(kept);
      }),
      { numRuns: 200 },
    );
    const a = { attribute: 'a', known: true } as const;
    const fresh = { join: 'all', parts: [a, { join: 'any', parts: [a] }] } as const;
    expect(groupOf(ruleFrom(fresh))).toEqual(fresh);
    const alone = { join: 'none', parts: [{ join: 'any', parts: [a] }] } as const;
    expect(groupOf(ruleFrom(alone))).toEqual(alone);
  });

  it('is written as a condition where it is one, and as "not" where none may hold', () => {
    const a = { attribute: 'a', known: true } as const;
    const b = { attribute: 'b', known: true } as const;
    expect(ruleFrom({ join: 'all', parts: [a] })).toEqual(a);
    expect(ruleFrom({ join: 'none', parts: [a] })).toEqual({ not: a });
    expect(ruleFrom({ join: 'none', parts: [a, b] })).toEqual({ not: { any: [a, b] } });
    expect(groupOf({ not: { all: [a, b] } })).toEqual({ join: 'notAll', parts: [a, b] });
  });

  it('is refused where it is none', () => {
    for (const none of [null, 3, {}, { all: 3 }, { any: [{}] }]) expect(groupOf(none)).toBeNull();
  });
});

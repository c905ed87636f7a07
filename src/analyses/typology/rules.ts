import { z } from 'zod';
import type { Register } from '../../attributes/definition.ts';
import { termLabel } from '../../fragments/groups.ts';
import { type ConditionAnswer, conditionAnswer } from '../../fragments/select-answer.ts';
import { type Condition, condition, describeCondition } from '../../fragments/select-condition.ts';
import type { FragmentTable } from '../../fragments/table.ts';

/** A typology as data: ordered types, each with a rule over attributes. */

export type TypeRule =
  | Condition
  | { readonly all: readonly TypeRule[] }
  | { readonly any: readonly TypeRule[] }
  | { readonly not: TypeRule };

const rule: z.ZodType<TypeRule> = z
  .lazy(() =>
    z.union([
      condition,
      z.strictObject({ all: z.array(rule).min(1) }),
      z.strictObject({ any: z.array(rule).min(1) }),
      z.strictObject({ not: rule }),
    ]),
  )
  .meta({ id: 'rule', description: 'A condition, or all / any / not of further rules' });

export const typologyFile = z
  .strictObject({
    title: z.string().min(1).describe('What the typology claims, in a line'),
    author: z.string().default('').describe('Who proposed it'),
    source: z.string().default('').describe('Where it stands in print'),
    among: z
      .array(condition)
      .default([])
      .describe('Which fragments it speaks of; the rest is left out of every count'),
    types: z
      .array(
        z.strictObject({
          id: z.string().min(1).describe('Short name, unique in the file'),
          label: z.string().min(1).describe('Name in print'),
          when: rule,
        }),
      )
      .min(1)
      .describe('The types, in the order in which they are asked'),
    several: z
      .enum(['first', 'undecided'])
      .default('first')
      .describe('A fragment that fits several types: takes the first, or stays undecided'),
  })
  .meta({ title: 'Typology', description: 'Rules that say which type a fragment is of' });

export type Typology = z.output<typeof typologyFile>;

/** Every condition that a rule holds, however deep. */
export function conditionsOf(one: TypeRule): readonly Condition[] {
  if ('all' in one) return one.all.flatMap(conditionsOf);
  if ('any' in one) return one.any.flatMap(conditionsOf);
  return 'not' in one ? conditionsOf(one.not) : [one];
}

/** A rule as a reader would say it, with labels of attributes and terms. */
export function describeRule(one: TypeRule, register: Register): string {
  const parts = (rules: readonly TypeRule[]) => rules.map((part) => describeRule(part, register));
  if ('all' in one) return parts(one.all).join(' and ');
  if ('any' in one) return `(${parts(one.any).join(' or ')})`;
  if ('not' in one) return `not (${describeRule(one.not, register)})`;
  return describeCondition(labelled(one, register));
}

function labelled(one: Condition, register: Register): Condition {
  const attribute = register.attributes.get(one.attribute);
  if (attribute === undefined) return one;
  const label = (term: string) => termLabel(attribute, term, register);
  return {
    ...one,
    attribute: attribute.label,
    ...(one.in === undefined ? {} : { in: one.in.map(label) }),
    ...(one.notIn === undefined ? {} : { notIn: one.notIn.map(label) }),
  };
}

/** What a rule answers for a row, and which attribute keeps it from answering. */
export interface RuleAnswer {
  readonly answer: 'in' | 'out' | 'cannot say';
  readonly blame: string | null;
  readonly why: 'not recorded' | 'cannot say' | null;
}

/**
 * Three-valued logic (Kleene 1952): "all" is out when any part is out, in when all are in; "any" the
 * reverse; otherwise it cannot say, and the first undecided part is to blame.
 */
export function ruleAnswer(
  one: TypeRule,
  table: FragmentTable,
  register: Register,
): (row: number) => RuleAnswer {
  if ('all' in one) {
    const parts = one.all.map((part) => ruleAnswer(part, table, register));
    return (row) => settle(parts, row, 'out', 'in');
  }
  if ('any' in one) {
    const parts = one.any.map((part) => ruleAnswer(part, table, register));
    return (row) => settle(parts, row, 'in', 'out');
  }
  if ('not' in one) {
    const inner = ruleAnswer(one.not, table, register);
    return (row) => {
      const given = inner(row);
      return given.answer === 'cannot say'
        ? given
        : { ...given, answer: given.answer === 'in' ? 'out' : 'in' };
    };
  }
  const answer = conditionAnswer(one, table, register);
  return (row) => asRuleAnswer(answer(row), one.attribute);
}

function asRuleAnswer(answer: ConditionAnswer, attribute: string): RuleAnswer {
  if (answer === 'in' || answer === 'out') return { answer, blame: null, why: null };
  return { answer: 'cannot say', blame: attribute, why: answer };
}

function settle(
  parts: readonly ((row: number) => RuleAnswer)[],
  row: number,
  decides: 'in' | 'out',
  otherwise: 'in' | 'out',
): RuleAnswer {
  let undecided: RuleAnswer | undefined;
  for (const part of parts) {
    const given = part(row);
    if (given.answer === decides) return { answer: decides, blame: null, why: null };
    if (given.answer === 'cannot say') undecided ??= given;
  }
  return undecided ?? { answer: otherwise, blame: null, why: null };
}

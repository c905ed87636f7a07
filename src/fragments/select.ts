import { z } from 'zod';
import type { Register } from '../attributes/definition.ts';
import { partsOf } from '../attributes/mixtures.ts';
import { isWithin } from '../attributes/tree.ts';
import { meaningOf } from '../cells/descriptions/meaning.ts';
import { CERTAINTIES } from '../cells/reading.ts';
import { InputError } from '../errors.ts';
import { termAt } from './accessors.ts';
import { isMissing } from './missing.ts';
import { requireColumn } from './require-column.ts';
import type { Column, FragmentTable, NumericColumn, TermColumn } from './table.ts';

const words = z.array(z.string().min(1)).min(1);

/** One condition of a selection; a fragment must meet all of them. */
export const condition = z
  .strictObject({
    attribute: z
      .string()
      .min(1)
      .meta({ description: 'Id of the attribute, or "assemblage"', refersTo: 'grouping' }),
    in: words.optional().describe('Terms to keep, each with everything below it in the vocabulary'),
    notIn: words.optional().describe('Terms to leave out, each with everything below it'),
    atLeast: z.number().optional().describe('Smallest number to keep, in the unit of the attribute'),
    atMost: z.number().optional().describe('Largest number to keep, in the unit of the attribute'),
    below: z.number().optional().describe('Keep only what is smaller than this number'),
    certainty: z
      .enum(['certain', 'probable', 'possible'])
      .optional()
      .describe(
        'Keep only attributions that are at least this sure; "certain" leaves out every "?" and "cf."',
      ),
    known: z.boolean().optional().describe('true keeps what has a value, false what has none'),
  })
  .describe('Which fragments to keep, by one attribute');

export type Condition = z.infer<typeof condition>;

export interface Selection {
  /** Rows that meet every condition. */
  readonly rows: Int32Array;
  /** Rows that do not, or that cannot be decided, by the first condition that stopped them. */
  readonly setAside: readonly { readonly reason: string; readonly fragments: number }[];
}

/** Whether a row meets a condition; the last two are both "undecided", for different reasons. */
export type ConditionAnswer = 'in' | 'out' | 'not recorded' | 'cannot say';

/**
 * Keeps the rows that certainly meet every condition. A reading whose interval straddles a limit, or a
 * term broader than the one asked for, cannot be decided: it is set aside and counted as such.
 *
 * @throws InputError for an unknown attribute, limits on kinds or terms on numbers, a term that the
 * vocabulary does not hold, or a condition that says nothing.
 */
export function selectRows(
  table: FragmentTable,
  conditions: readonly Condition[],
  register: Register,
): Selection {
  const tests = conditions.map((one) => ({ one, answer: conditionAnswer(one, table, register) }));
  const rows: number[] = [];
  const aside = new Map<string, number>();
  for (let row = 0; row < table.rows; row++) {
    const stopped = firstStop(tests, row);
    if (stopped === undefined) rows.push(row);
    else aside.set(stopped, (aside.get(stopped) ?? 0) + 1);
  }
  return {
    rows: Int32Array.from(rows),
    setAside: [...aside].map(([reason, fragments]) => ({ reason, fragments })),
  };
}

function firstStop(
  tests: readonly { one: Condition; answer: (row: number) => ConditionAnswer }[],
  row: number,
): string | undefined {
  for (const { one, answer } of tests) {
    const given = answer(row);
    if (given !== 'in') return reasonFor(one, given);
  }
  return undefined;
}

function reasonFor(one: Condition, given: ConditionAnswer): string {
  if (given === 'out') return `left out by the selection: ${describeCondition(one)}`;
  if (given === 'not recorded') return `${one.attribute} not recorded`;
  return `cannot say whether ${describeCondition(one)}`;
}

function describeLimits({ atLeast, atMost, below }: Condition): string {
  const parts = [
    atLeast === undefined ? undefined : `at least ${atLeast}`,
    atMost === undefined ? undefined : `at most ${atMost}`,
    below === undefined ? undefined : `below ${below}`,
  ];
  return parts.filter((part) => part !== undefined).join(' and ');
}

const CERTAINTY_WORDS = {
  certain: 'is certain',
  probable: 'is at least probable',
  possible: 'is at least possible',
};

/** A condition in words, as it stands in reasons and on screens. */
export function describeCondition(one: Condition): string {
  const limits = describeLimits(one);
  const parts = [
    one.in === undefined ? undefined : `is ${one.in.join(' or ')}`,
    one.notIn === undefined ? undefined : `is not ${one.notIn.join(' or ')}`,
    limits === '' ? undefined : limits,
    one.certainty === undefined ? undefined : CERTAINTY_WORDS[one.certainty],
    one.known === undefined ? undefined : one.known ? 'is recorded' : 'is not recorded',
  ].filter((part) => part !== undefined);
  return `${one.attribute} ${parts.join(' and ')}`;
}

/** Answers one condition row by row; throws as selectRows does. */
export function conditionAnswer(
  one: Condition,
  table: FragmentTable,
  register: Register,
): (row: number) => ConditionAnswer {
  const parts = [one.in, one.notIn, one.atLeast, one.atMost, one.below, one.known, one.certainty];
  if (parts.every((part) => part === undefined))
    throw fault(
      one,
      'the condition says nothing',
      'add "in", "notIn", "atLeast", "atMost", "below", "known" or "certainty"',
    );
  if (one.attribute === 'assemblage') return amongWords(one, (row) => table.assemblage[row]);
  const column = requireColumn(table, one.attribute, register);
  const answer = sureEnough(one, column, answerFrom(one, column, table, register));
  if (one.known === undefined) return (row) => (isMissing(column, row) ? 'not recorded' : answer(row));
  const { known } = one;
  return (row) => {
    const has = !isMissing(column, row);
    if (has !== known) return 'out';
    return has ? answer(row) : 'in';
  };
}

/** Out where the attribution is less sure than asked for; only kinds are marked as doubtful. */
function sureEnough(
  one: Condition,
  column: Column,
  answer: (row: number) => ConditionAnswer,
): (row: number) => ConditionAnswer {
  if (one.certainty === undefined) return answer;
  if (column.kind !== 'term')
    throw fault(
      one,
      'it has no attributions that could be doubtful',
      'ask for certainty of an attribute of kinds',
    );
  const least = CERTAINTIES.indexOf(one.certainty);
  return (row) => (column.codes[row] >= 0 && column.certainty[row] > least ? 'out' : answer(row));
}

function answerFrom(
  one: Condition,
  column: Column,
  table: FragmentTable,
  register: Register,
): (row: number) => ConditionAnswer {
  switch (column.kind) {
    case 'numeric':
      if (one.in !== undefined || one.notIn !== undefined)
        throw fault(one, 'it is a number and has no terms', 'use "atLeast", "atMost" or "below"');
      return withinLimits(one, column);
    case 'term':
      refuseLimits(one);
      return amongTerms(one, column, table, register);
    case 'text':
      refuseLimits(one);
      return amongWords(one, (row) => column.raw[row].trim());
  }
}

function withinLimits(one: Condition, { low, high }: NumericColumn): (row: number) => ConditionAnswer {
  const { atLeast = -Infinity, atMost = Infinity, below = Infinity } = one;
  if (atLeast > atMost || atLeast >= below)
    throw fault(one, `no number is ${describeLimits(one)}`, 'swap the two limits');
  return (row) => {
    // A reading without an upper end is above what it is above: "more than 30" is at least 9.
    const underneath = one.below === undefined || high[row] < below;
    if (low[row] >= atLeast && high[row] <= atMost && underneath) return 'in';
    return high[row] < atLeast || low[row] > atMost || low[row] >= below ? 'out' : 'cannot say';
  };
}

function amongTerms(
  one: Condition,
  column: TermColumn,
  table: FragmentTable,
  register: Register,
): (row: number) => ConditionAnswer {
  const vocabulary =
    column.attribute.vocabulary === undefined
      ? undefined
      : register.vocabularies.get(column.attribute.vocabulary);
  const known = new Set(vocabulary?.terms.map((term) => term.id) ?? column.attribute.levels);
  const described = new Map<string, (row: number) => ConditionAnswer>();
  if (known.size > 0)
    for (const term of [...(one.in ?? []), ...(one.notIn ?? [])])
      if (!known.has(term)) {
        const sides = describedBy(term, column, table, register);
        if (sides !== null) described.set(term, sides);
        else
          throw fault(
            one,
            `"${term}" is not one of its terms`,
            'use a term id of its vocabulary, or add the term',
          );
      }
  const holds = (term: string, asked: string): ConditionAnswer => {
    if (vocabulary === undefined) return term === asked ? 'in' : 'out';
    if (isWithin(vocabulary, term, asked)) return 'in';
    // A mixture is of each of its kinds.
    if (partsOf(term, vocabulary).some((part) => isWithin(vocabulary, part, asked))) return 'in';
    return isWithin(vocabulary, asked, term) ? 'cannot say' : 'out';
  };
  return (row) => {
    const term = termAt(column, row);
    if (term === null) return 'not recorded';
    return combine(one, (asked) => described.get(asked)?.(row) ?? holds(term, asked));
  };
}

/** A description stands for a condition on each attribute that it tells ("open twining" for two); null for none. */
function describedBy(
  text: string,
  column: TermColumn,
  table: FragmentTable,
  register: Register,
): ((row: number) => ConditionAnswer) | null {
  const sides = meaningOf(text, column.attribute, register);
  if (sides === null) return null;
  const tests = [...sides].map(([id, value]) => sideAnswer(id, value, table, register));
  return (row) => {
    const answers = tests.map((test) => test(row));
    if (answers.includes('out')) return 'out';
    return answers.every((answer) => answer === 'in') ? 'in' : 'cannot say';
  };
}

function sideAnswer(
  id: string,
  value: string,
  table: FragmentTable,
  register: Register,
): (row: number) => ConditionAnswer {
  const column = table.columns.get(id);
  if (column === undefined) return () => 'not recorded';
  if (column.kind === 'numeric') {
    const limit = Number(value);
    return withinLimits({ attribute: id, atLeast: limit, atMost: limit }, column);
  }
  return answerFrom({ attribute: id, in: [value] }, column, table, register);
}

function amongWords(one: Condition, wordAt: (row: number) => string): (row: number) => ConditionAnswer {
  refuseLimits(one);
  return (row) => {
    const word = wordAt(row);
    if (word === '') return 'not recorded';
    return combine(one, (asked) => (word === asked ? 'in' : 'out'));
  };
}

/** In when any wanted term holds and no unwanted one does; undecided when that hangs on a broader term. */
function combine(one: Condition, holds: (asked: string) => ConditionAnswer): ConditionAnswer {
  const wanted = one.in === undefined ? ['in' as const] : one.in.map(holds);
  const unwanted = (one.notIn ?? []).map(holds);
  if (unwanted.includes('in') || wanted.every((answer) => answer === 'out')) return 'out';
  return unwanted.includes('cannot say') || !wanted.includes('in') ? 'cannot say' : 'in';
}

function refuseLimits(one: Condition): void {
  if (describeLimits(one) !== '')
    throw fault(one, 'it is not a number and has no limits', 'use "in" and "notIn"');
}

function fault(one: Condition, what: string, mend: string): InputError {
  return new InputError(
    `the selection by "${one.attribute}" cannot be made: ${what}`,
    { path: 'select' },
    mend,
  );
}

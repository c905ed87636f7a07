import type { Register } from '../attributes/definition.ts';
import { partsOf } from '../attributes/mixtures.ts';
import { isWithin } from '../attributes/tree.ts';
import { meaningOf } from '../cells/descriptions/meaning.ts';
import { CERTAINTIES } from '../cells/reading.ts';
import { InputError } from '../errors.ts';
import { termAt } from './accessors.ts';
import { isMissing } from './missing.ts';
import { requireColumn } from './require-column.ts';
import { type Condition, describeLimits } from './select-condition.ts';
import type { Column, FragmentTable, NumericColumn, TermColumn } from './table.ts';

/** Whether a row meets a condition; the last two are both "undecided", for different reasons. */
export type ConditionAnswer = 'in' | 'out' | 'not recorded' | 'cannot say';

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

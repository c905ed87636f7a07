import type { Register } from '../attributes/definition.ts';
import { type ConditionAnswer, conditionAnswer } from './select-answer.ts';
import { type Condition, describeCondition } from './select-condition.ts';
import type { FragmentTable } from './table.ts';

export interface Selection {
  /** Rows that meet every condition. */
  readonly rows: Int32Array;
  /** Rows that do not, or that cannot be decided, by the first condition that stopped them. */
  readonly setAside: readonly { readonly reason: string; readonly fragments: number }[];
}

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

import { attributesOf } from '../columns/claims.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import type { LaidOut } from '../layout/layout.ts';
import { gatherRows, type Move } from '../layout/long-form.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';

/** The records of a source, one a fragment. */
export interface Sheet {
  readonly headers: readonly string[];
  readonly body: readonly (readonly string[])[];
  readonly origins: readonly number[];
  readonly gathered: ReadonlySet<number>;
  /** Column -> rows of the grid whose cell is merged with the one above, where a workbook says so. */
  readonly merged?: ReadonlyMap<number, ReadonlySet<number>>;
}

/** Gathers rows with one fragment id where the profile asks for it; the ledger keeps every cell that moved. */
export function applyGather(
  laidOut: LaidOut,
  plans: readonly ColumnPlan[],
  gather: boolean,
  ledger: Ledger,
): Sheet {
  enterMoves(laidOut.moves, ledger);
  if (!gather) return laidOut;
  const by = plans.filter((plan) => attributesOf(plan).includes('fragment')).map((plan) => plan.index);
  const sites = plans.filter((plan) => attributesOf(plan).includes('site')).map((plan) => plan.index);
  if (by.length === 0) return laidOut;
  const gathered = gatherRows(laidOut.headers, laidOut.body, laidOut.origins, [...sites, ...by]);
  enterMoves(gathered.moves, ledger);
  return gathered;
}

const WHY: Readonly<Record<Move['rule'], string>> = {
  gathered: 'The row is one of several of the same fragment.',
  contradiction: 'Rows of one fragment differ here; the first was kept.',
  counted: 'A count of one kind at one place; it became a row of its own, or none where it is nought.',
  'key-value': 'The line holds a key and its value.',
};

function enterMoves(moves: readonly Move[], ledger: Ledger): void {
  for (const { row, column, raw, readAs, rule } of moves) {
    const level = rule === 'contradiction' ? 'flagged' : 'read';
    enter(ledger, { row, column, raw, readAs, level, rule, why: WHY[rule] });
  }
}

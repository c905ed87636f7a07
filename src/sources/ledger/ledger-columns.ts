import type { Register } from '../../attributes/definition.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import { isBlank } from '../layout/cell-shapes.ts';
import type { ColumnTexts } from '../reading/read-column.ts';
import { enter, type Ledger } from './ledger.ts';

/** What became of whole columns: left out, kept as text, taken in doubt. */

/** Every text of a column that the profile leaves out. */
export function ledgerIgnored({ header, texts, origins }: ColumnTexts, ledger: Ledger): void {
  for (const [row, text] of texts.entries()) {
    if (isBlank(text)) continue;
    enter(ledger, {
      row: origins[row]!,
      column: header,
      raw: text,
      readAs: '',
      level: 'read',
      rule: 'column-ignored',
      why: 'The profile leaves this column out.',
    });
  }
}

/** That a column was kept as text, and why. */
export function enterKeptAsText(plan: ColumnPlan, register: Register, ledger: Ledger): void {
  if (plan.via === 'profile') return;
  const near = register.attributes.get(plan.suggestion?.attribute ?? '')?.label;
  const why =
    plan.suggestion !== undefined
      ? `Perhaps "${near}": ${plan.suggestion.reason}. Kept as text until that is confirmed.`
      : `No attribute was recognised${plan.doubt === undefined ? '' : ` (${plan.doubt})`}; the column is kept as text.`;
  enter(ledger, {
    row: 0,
    column: plan.header,
    raw: plan.header,
    readAs: 'text',
    level: plan.suggestion === undefined ? 'not-understood' : 'flagged',
    rule: plan.suggestion === undefined ? 'column-unknown' : 'column-suggested',
    why,
  });
}

/** What is doubtful about a column that was taken. */
export function enterDoubt(header: string, label: string, doubt: string, ledger: Ledger): void {
  enter(ledger, {
    row: 0,
    column: header,
    raw: header,
    readAs: label,
    level: 'flagged',
    rule: 'column-doubted',
    why: `The column is ${doubt}.`,
  });
}

import { isBlank } from '../layout/cell-shapes.ts';
import type { LaidOut } from '../layout/layout.ts';
import { enter, type Ledger } from './ledger.ts';

/** Enters what the layout changed: remarks on headers and rows, and every text of a row set aside. */
export function ledgerLayout(laidOut: LaidOut, ledger: Ledger): void {
  for (const remark of laidOut.remarks) enter(ledger, remark);
  for (const { row, reason } of laidOut.setAside) {
    const cells = laidOut.grid[row - 1] ?? [];
    for (const [i, text] of cells.entries()) {
      if (isBlank(text)) continue;
      enter(ledger, {
        row,
        column: laidOut.headers[i] ?? `column ${i + 1}`,
        raw: text,
        readAs: '',
        level: DOUBTFUL.test(reason) ? 'flagged' : 'read',
        rule: 'row-set-aside',
        why: `The row was set aside: ${reason}.`,
      });
    }
  }
}

/** Rows that a person may want to have back. */
const DOUBTFUL = /ragged|total|heading|neither|another table/;

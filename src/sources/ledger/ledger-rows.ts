import { isBlank } from '../layout/cell-shapes.ts';
import type { Sheet } from '../reading/gather-fragments.ts';
import { saysNothing } from '../reading/says-nothing.ts';
import type { ColumnReading, RowSetAside } from '../source-reading.ts';
import { enter, type Ledger } from './ledger.ts';

/** Rows that a decision about identifiers sets aside; their texts stay in the ledger. */
export function ledgerDropped(
  dropped: ReadonlyMap<number, string>,
  sheet: Sheet,
  ledger: Ledger,
): RowSetAside[] {
  return [...dropped].map(([at, reason]) => {
    const row = sheet.origins[at]!;
    for (const [i, text] of sheet.body[at]!.entries()) {
      if (isBlank(text)) continue;
      enter(ledger, {
        row,
        column: sheet.headers[i] ?? `column ${i + 1}`,
        raw: text,
        readAs: '',
        level: 'read',
        rule: 'row-set-aside',
        why: `The row was set aside: ${reason}.`,
      });
    }
    return { row, reason };
  });
}

/** Cells are counted among the rows that were kept. */
export function withoutDropped(
  columns: readonly ColumnReading[],
  dropped: ReadonlyMap<number, string>,
  sheet: Sheet,
): readonly ColumnReading[] {
  if (dropped.size === 0) return columns;
  return columns.map((column) => {
    const gone = [...dropped.keys()].filter((at) => !saysNothing(sheet.body[at]![column.index] ?? ''));
    return { ...column, filled: column.filled - gone.length };
  });
}

/** A remark on the file as a whole. */
export function remarkOnFile(ledger: Ledger, why: string): void {
  enter(ledger, {
    row: 0,
    column: '',
    raw: '',
    readAs: '',
    level: 'flagged',
    rule: 'file',
    why: `${sentenceCase(why)}.`,
  });
}

/** A row in which a quotation mark stands where none opens or closes a cell. */
export function oddQuote(ledger: Ledger, row: number, cells: readonly string[]): void {
  enter(ledger, {
    row,
    column: '',
    raw: cells.join(' '),
    readAs: '',
    level: 'flagged',
    rule: 'odd-quotation-mark',
    why: 'A quotation mark stands where none opens or closes a cell; check where the cells of this row begin and end.',
  });
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

import { CELL_STATES } from '../../cells/reading.ts';
import { isMissing, stateAt } from '../../fragments/missing.ts';
import type { FragmentTable } from '../../fragments/table.ts';

/** How much of one attribute a source records. */
export interface FilledShare {
  readonly attribute: string;
  readonly label: string;
  readonly rows: number;
  /** Rows with a value. */
  readonly filled: number;
  readonly approximate: number;
  readonly notObserved: number;
  readonly notApplicable: number;
  readonly absent: number;
}

/** One line an attribute: rows with a value, and why the others have none. */
export function filledShares(table: FragmentTable): FilledShare[] {
  return [...table.columns].map(([id, column]) => {
    const counts = new Map(CELL_STATES.map((state) => [state, 0]));
    let filled = 0;
    for (let row = 0; row < table.rows; row++) {
      const state = stateAt(column, row);
      const has = !isMissing(column, row);
      if (has) filled++;
      if (!has || state === 'approximate') counts.set(state, counts.get(state)! + 1);
    }
    return {
      attribute: id,
      label: column.attribute.label,
      rows: table.rows,
      filled,
      approximate: counts.get('approximate')!,
      notObserved: counts.get('not-observed')! + counts.get('measured')!,
      notApplicable: counts.get('not-applicable')!,
      absent: counts.get('absent')!,
    };
  });
}

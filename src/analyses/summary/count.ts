import { CELL_STATES } from '../../cells/reading.ts';
import { countBehind } from '../../fragments/behind.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { NumericColumn, TermColumn } from '../../fragments/table.ts';
import type { AnalysisInput } from '../contract.ts';
import type { GroupCounts } from './found.ts';

const NOT_APPLICABLE = CELL_STATES.indexOf('not-applicable');
const ABSENT = CELL_STATES.indexOf('absent');

/** n, fragments, items, missing and its three reasons, for the rows of one group. */
export function groupCounts(
  input: AnalysisInput,
  column: NumericColumn | TermColumn,
  rows: readonly number[],
): GroupCounts {
  const filled = rows.filter((row) => !isMissing(column, row));
  const gaps = rows.filter((row) => isMissing(column, row));
  const inState = (code: number) => gaps.filter((row) => column.state[row] === code).length;
  const counts = countHolding(input, filled, column.attribute.id);
  const absent = inState(ABSENT);
  const notApplicable = inState(NOT_APPLICABLE);
  return {
    n: filled.length,
    ...counts,
    missing: gaps.length,
    notObserved: gaps.length - absent - notApplicable,
    notApplicable,
    absent,
  };
}

/** How many fragments, and of how many original objects, hold a value behind these records. */
function countHolding(
  input: AnalysisInput,
  rows: readonly number[],
  attribute: string,
): { fragments: number; items: number } {
  const items = new Set(rows.map((row) => input.records.item[row]));
  const column = input.fragments.columns.get(attribute);
  if (input.unit === 'fragment' || column === undefined || column.kind === 'text') {
    return countBehind(input.fragments, input.records, input.unit, rows);
  }
  const holding = input.fragments.item.filter((item, row) => items.has(item) && !isMissing(column, row));
  return { fragments: holding.length, items: items.size };
}

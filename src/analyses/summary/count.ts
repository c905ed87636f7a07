import { CELL_STATES } from '../../cells/reading.ts';
import { countBehind } from '../../fragments/behind.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { NumericColumn, TermColumn } from '../../fragments/table.ts';
import type { AnalysisInput, ResultColumn, TableCell } from '../contract.ts';

const NOT_APPLICABLE = CELL_STATES.indexOf('not-applicable');
const ABSENT = CELL_STATES.indexOf('absent');

/** Columns that say how many records a line rests on, in the order of `countCells`. */
export const COUNT_COLUMNS: readonly ResultColumn[] = [
  { id: 'n', label: 'n' },
  { id: 'fragments', label: 'fragments' },
  { id: 'items', label: 'items' },
  { id: 'missing', label: 'missing' },
  { id: 'notObserved', label: 'not observed' },
  { id: 'notApplicable', label: 'not applicable' },
  { id: 'absent', label: 'absent' },
];

/** n, fragments, items, missing and its three reasons, for the rows of one group. */
export function countCells(
  input: AnalysisInput,
  column: NumericColumn | TermColumn,
  rows: readonly number[],
): TableCell[] {
  const filled = rows.filter((row) => !isMissing(column, row));
  const gaps = rows.filter((row) => isMissing(column, row));
  const inState = (code: number) => gaps.filter((row) => column.state[row] === code).length;
  const counts = countHolding(input, filled, column.attribute.id);
  const absent = inState(ABSENT);
  const notApplicable = inState(NOT_APPLICABLE);
  return [
    filled.length,
    counts.fragments,
    counts.items,
    gaps.length,
    gaps.length - absent - notApplicable,
    notApplicable,
    absent,
  ];
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

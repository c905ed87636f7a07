import { codeValue, quantityValue, type RecordValue } from '../../numerics/dissimilarity/variables.ts';
import { termAt } from '../accessors.ts';
import type { FragmentTable, TermColumn } from '../table.ts';
import { plainIn } from '../told-apart.ts';
import type { Comparison } from './comparison.ts';
import { codeInterval } from './numbers.ts';

const UNKNOWN_QUANTITY = quantityValue(Number.NaN);
const UNKNOWN_CODE = codeValue(-1);

/**
 * One row of another table (a find from outside, a record of another site) as values of a comparison, coded
 * exactly as its own records were: same logarithm, same closing of open ends, same distances between
 * kinds, and for midpoints the same median of an item's fragments. What the row lacks is unknown, never guessed; a kind that no record has is far from all of them.
 */
export function recordOfRow(
  comparison: Comparison,
  table: FragmentTable,
  row: number,
): readonly RecordValue[] {
  const midpoints = comparison.spec.intervals === 'midpoint';
  return comparison.attributes.map(({ attribute, coding }) => {
    const column = table.columns.get(attribute.id);
    if (coding.kind === 'number') {
      if (column?.kind !== 'numeric') return UNKNOWN_QUANTITY;
      const centre = midpoints ? (column.centre?.[row] ?? Number.NaN) : Number.NaN;
      const ends = Number.isNaN(centre)
        ? codeInterval(coding, column.low[row], column.high[row])
        : codeInterval(coding, centre, centre);
      return ends === null ? UNKNOWN_QUANTITY : quantityValue(ends[0], ends[1]);
    }
    const term = column?.kind === 'term' ? termAt(column, row) : null;
    if (term === null || column?.kind !== 'term') return UNKNOWN_CODE;
    const broad = coding.broad.get(term);
    const code =
      broad !== undefined && !isPlain(comparison, column, table, row) ? broad : coding.codes.get(term);
    return codeValue(code ?? coding.unseen);
  });
}

const plain = new WeakMap<TermColumn, (row: number) => boolean>();

/** Whether the term is meant as a kind of its own by the table that the row stands in. */
function isPlain({ register }: Comparison, column: TermColumn, table: FragmentTable, row: number): boolean {
  const known = plain.get(column);
  if (known !== undefined) return known(row);
  const vocabulary = register.vocabularies.get(column.attribute.vocabulary ?? '');
  const made = vocabulary === undefined ? () => true : plainIn(column, vocabulary, table, register);
  plain.set(column, made);
  return made(row);
}

/** Whether the record has a value of this variable. */
export function isKnown(value: RecordValue): boolean {
  return value.code >= 0 && !Number.isNaN(value.low);
}

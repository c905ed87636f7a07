import { pointOf } from './accessors.ts';
import { likeNumbers } from './like-numbers.ts';
import type { NumericColumn } from './table.ts';

/** A condition known of a smaller share than this says nothing of the others. */
export const FEWEST_KNOWN = 0.5;

/** What there is of a condition among the records compared. */
export interface Looked {
  /**
   * `unknown`: no column of it; `scarce`: known of less than half; `one`: the same for all that are known; `looked
   * at`: it can be looked at.
   */
  readonly state: 'unknown' | 'scarce' | 'one' | 'looked at';
  /** Records compared of which it is known. */
  readonly known: number;
  readonly kinds: readonly string[];
  /** Kind of each record compared, -1 where it is not known. */
  readonly of: Int32Array;
}

export function byKinds(terms: readonly (string | null)[]): Looked {
  const kinds = [...new Set(terms)].filter((term) => term !== null).sort();
  return looked(
    kinds,
    Int32Array.from(terms, (term) => (term === null ? -1 : kinds.indexOf(term))),
  );
}

function looked(kinds: readonly string[], of: Int32Array): Looked {
  const known = of.filter((kind) => kind >= 0).length;
  const state =
    known === 0
      ? 'unknown'
      : known < FEWEST_KNOWN * of.length
        ? 'scarce'
        : kinds.length < 2
          ? 'one'
          : 'looked at';
  return { state, known, kinds, of };
}

/** Numbers as classes of like size. */
export function byNumbers(column: NumericColumn, rows: readonly number[]): Looked {
  const { kinds, of } = likeNumbers(rows.map((row) => pointOf(column, row)));
  return looked(kinds, of);
}

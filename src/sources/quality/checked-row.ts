import type { Register } from '../../attributes/definition.ts';
import { type ReachFound, reachOf } from '../../attributes/method-reach.ts';
import { isWithin } from '../../attributes/tree.ts';
import { lowered, takeDoubt } from '../../cells/certainty.ts';
import type { Certainty } from '../../cells/reading.ts';
import { termAt } from '../../fragments/accessors.ts';
import { impliedInterval } from '../../fragments/derived/precision.ts';
import { limitsOf } from '../../fragments/facet-limits.ts';
import type { Interval } from '../../fragments/intervals.ts';
import { isMissing, stateAt } from '../../fragments/missing.ts';
import type { FragmentTable } from '../../fragments/table.ts';

/** What a check sees of one row. */
export interface CheckedRow {
  readonly number: (id: string) => Interval;
  readonly term: (id: string) => string | null;
  readonly has: (id: string) => boolean;
  readonly absent: (id: string) => boolean;
  readonly raw: (id: string) => string;
  readonly within: (vocabulary: string, term: string | null, broader: string) => boolean;
  /** How sure the recorder was, by the words of the cell. */
  readonly recorded: (id: string) => Certainty;
  /** How sure a fibre can be by a method. */
  readonly reach: (fibre: string, method: string) => ReachFound | null;
  /** Where the study parts what is derived. */
  readonly limits: ReturnType<typeof limitsOf>;
}

export interface RowFault {
  readonly rule: string;
  readonly of: readonly string[];
  readonly why: string;
}

export type RowCheck = (row: CheckedRow) => RowFault | null;

/** One row of a table as the checks see it. */
export function rowOf(table: FragmentTable, register: Register, at: number): CheckedRow {
  const column = (id: string) => table.columns.get(id);
  return {
    number: (id) => impliedInterval(column(id), at),
    term: (id) => {
      const own = column(id);
      return own?.kind === 'term' ? termAt(own, at) : null;
    },
    has: (id) => {
      const own = column(id);
      return own !== undefined && !isMissing(own, at) && stateAt(own, at) !== 'absent';
    },
    absent: (id) => {
      const own = column(id);
      return own !== undefined && stateAt(own, at) === 'absent';
    },
    recorded: (id) => lowered('certain', takeDoubt(column(id)?.raw[at] ?? '').steps),
    reach: (fibre, method) => {
      const [fibres, methods] = [
        register.vocabularies.get('fibre'),
        register.vocabularies.get('fibreMethod'),
      ];
      return fibres === undefined || methods === undefined ? null : reachOf(fibre, method, fibres, methods);
    },
    limits: limitsOf(register),
    raw: (id) => column(id)?.raw[at]?.trim() ?? '',
    within: (vocabulary, term, broader) => {
      const own = register.vocabularies.get(vocabulary);
      return term !== null && own !== undefined && isWithin(own, term, broader);
    },
  };
}

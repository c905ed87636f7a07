import type { Register } from '../attributes/definition.ts';
import { termAt } from './accessors.ts';
import { termLabel } from './groups.ts';
import { KIND, kindsBeside } from './kinds/kinds.ts';
import { atLevel } from './level/common-level.ts';
import { isMissing } from './missing.ts';
import type { FragmentTable } from './table.ts';

/**
 * Conditions under which finds were made, kept, recovered and recorded: a difference between sites, periods or types
 * may be one between these. Looked at wherever labels are compared.
 */
export const CONDITIONS = ['recorder', 'source', 'recovery', 'preservation', 'structure', 'period'] as const;

export type ConditionId = (typeof CONDITIONS)[number];

/** One condition of the records compared. */
export interface RecordsCondition {
  readonly id: ConditionId;
  readonly label: string;
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

/** A condition known of a smaller share than this says nothing of the others. */
const FEWEST_KNOWN = 0.5;

/**
 * The conditions of some records, without those that the question itself is about.
 *
 * @param rows records compared.
 * @param about attributes that the question is about: labels and what is compared.
 * @param across the attribute whose groups are compared, by which structure is counted at the level that all
 * recorded; null where the labels are no attribute. Structure is the kind of fabric with the facets that all recorded,
 * but for those that the question is about.
 */
export function conditionsOf(
  table: FragmentTable,
  rows: readonly number[],
  about: readonly string[],
  across: string | null,
  register: Register,
): readonly RecordsCondition[] {
  const used = aboutConditions(about, register);
  return CONDITIONS.filter((id) => !used.has(id)).map((id) => {
    const kind = id === 'structure' && register.attributes.get(KIND)?.composed === true;
    const beside = kind ? kindsBeside(table, about, register) : { table, register, of: [] };
    const column = beside.of.length > 1 ? KIND : id;
    const termOf = readerOf(beside.table, column, across, beside.register);
    const terms = rows.map(termOf);
    const kinds = [...new Set(terms)].filter((term) => term !== null).sort();
    const known = terms.filter((term) => term !== null).length;
    return {
      id,
      label: id === 'source' ? 'Source' : (register.attributes.get(column)?.label ?? LABELS[id]),
      state:
        known === 0
          ? 'unknown'
          : known < FEWEST_KNOWN * rows.length
            ? 'scarce'
            : kinds.length < 2
              ? 'one'
              : 'looked at',
      known,
      kinds,
      of: Int32Array.from(terms, (term) => (term === null ? -1 : kinds.indexOf(term))),
    };
  });
}

const LABELS: Readonly<Record<ConditionId, string>> = {
  recorder: 'Recorder',
  source: 'Source',
  recovery: 'Recovery',
  preservation: 'Preservation',
  structure: 'Structure',
  period: 'Period',
};

/** A phase is of one period and a recorder has tables of their own: what is the same thing explains nothing. */
const SAME_THING: Readonly<Record<string, readonly ConditionId[]>> = {
  recorder: ['recorder', 'source'],
  source: ['recorder', 'source'],
  phase: ['period'],
  date: ['period'],
  assemblage: ['period'],
};

function aboutConditions(about: readonly string[], register: Register): ReadonlySet<string> {
  return new Set(
    about.flatMap((id) => [
      id,
      ...(SAME_THING[id] ?? []),
      ...(register.attributes.get(id)?.block === 'structure' ? ['structure'] : []),
    ]),
  );
}

function readerOf(
  table: FragmentTable,
  id: ConditionId | typeof KIND,
  across: string | null,
  register: Register,
): (row: number) => string | null {
  if (id === 'source')
    return (row) => (table.sources.length < 1 ? null : (table.sources[table.origin[row].source] ?? null));
  const whole = table.columns.get(id);
  if (whole === undefined || whole.kind === 'numeric') return () => null;
  const { attribute } = whole;
  if (whole.kind === 'text') return (row) => (isMissing(whole, row) ? null : whole.raw[row].trim());
  const levelled = across === null ? table : atLevel(table, id, across, register).table;
  const column = levelled.columns.get(id);
  if (column?.kind !== 'term') return () => null;
  return (row) => {
    const term = termAt(column, row);
    return term === null ? null : termLabel(attribute, term, register);
  };
}

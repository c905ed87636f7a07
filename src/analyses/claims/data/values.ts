import type { Register } from '../../../attributes/definition.ts';
import { matchAttribute, matchTerm } from '../../../attributes/matching.ts';
import { isOpenEnded, pointOf, termAt } from '../../../fragments/accessors.ts';
import { isMissing } from '../../../fragments/missing.ts';
import { requireColumn } from '../../../fragments/require-column.ts';
import { selectRows } from '../../../fragments/select.ts';
import type { Condition } from '../../../fragments/select-condition.ts';
import type { Column, FragmentTable } from '../../../fragments/table.ts';
import type { Unavailable } from '../../contract.ts';
import { selectionText } from '../reading/select-text.ts';

/** Where a figure is recomputed: a table of records, and how it departs from the ordinary way, if it does. */
export interface View {
  readonly table: FragmentTable;
  readonly register: Register;
  /** What one record is called. */
  readonly unit: 'item' | 'fragment';
  /** Readings that are missing count as 0, records without a term as others. */
  readonly zeros?: boolean;
  /** A row that is left out. */
  readonly without?: number;
  /** A row that is taken in as if it met these conditions. */
  readonly also?: { readonly row: number; readonly of: string };
  /** An attribute whose terms count as broader ones. */
  readonly broader?: { readonly attribute: string; readonly of: ReadonlyMap<string, string> };
  /** An attribute that is counted by the wording of the source. */
  readonly worded?: string;
}

/** Attributes by id or exact name, terms by id or exact wording: as a paper would write them. */
function resolve(conditions: readonly Condition[], register: Register): readonly Condition[] {
  return conditions.map((condition) => {
    const attribute = idOf(condition.attribute, register);
    const vocabulary = register.vocabularies.get(register.attributes.get(attribute)?.vocabulary ?? '');
    const term = (text: string) => {
      if (vocabulary === undefined || vocabulary.terms.some(({ id }) => id === text)) return text;
      const match = matchTerm(text, vocabulary);
      return match.kind === 'exact' ? match.id : text;
    };
    return {
      ...condition,
      attribute,
      ...(condition.in === undefined ? {} : { in: condition.in.map(term) }),
      ...(condition.notIn === undefined ? {} : { notIn: condition.notIn.map(term) }),
    };
  });
}

export function idOf(text: string, register: Register): string {
  if (register.attributes.has(text)) return text;
  const match = matchAttribute(text, register);
  return match.kind === 'exact' ? match.id : text;
}

/** Rows that meet the conditions. @throws InputError for conditions that the data cannot answer. */
export function rowsOf(view: View, conditions: readonly Condition[]): readonly number[] {
  const met = selected(view, conditions);
  const rows =
    view.also !== undefined && JSON.stringify(conditions) === view.also.of ? [...met, view.also.row] : met;
  return view.without === undefined ? rows : rows.filter((row) => row !== view.without);
}

/** Claims ask for the same few selections again and again; tables never change. */
const selections = new WeakMap<FragmentTable, Map<string, readonly number[]>>();

function selected({ table, register }: View, conditions: readonly Condition[]): readonly number[] {
  const ofTable = selections.get(table) ?? new Map<string, readonly number[]>();
  selections.set(table, ofTable);
  const key = JSON.stringify(conditions);
  const rows =
    ofTable.get(key) ?? Array.from(selectRows(table, resolve(conditions, register), register).rows);
  ofTable.set(key, rows);
  return rows;
}

export interface Values {
  readonly points: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Selected records without a reading. */
  readonly missing: number;
  readonly openEnded: number;
}

/** Readings of a numeric attribute in some rows, one number a record. */
export function valuesOf(view: View, attribute: string, rows: readonly number[]): Values | Unavailable {
  const column = requireColumn(view.table, idOf(attribute, view.register), view.register);
  if (column.kind !== 'numeric') return { why: `"${column.attribute.label}" is no number` };
  const filled = rows.filter((row) => isRecorded(column, row));
  const missing = rows.length - filled.length;
  const zeros = view.zeros ? new Array<number>(missing).fill(0) : [];
  const take = (read: (row: number) => number) => Float64Array.from([...filled.map(read), ...zeros]);
  return {
    points: take((row) => pointOf(column, row)),
    low: take((row) => column.low[row]),
    high: take((row) => column.high[row]),
    missing,
    openEnded: filled.filter((row) => isOpenEnded(column, row)).length,
  };
}

/** Rows per cm and their spacing are one measurement in two units; a paper counts both. */
const ONE_MEASUREMENT: Readonly<Record<string, string>> = { rowSpacing: 'density2', density2: 'rowSpacing' };

/**
 * Whether a cell holds what somebody measured. A paper's figure rests on its readings, not on what we worked out
 * from other attributes; where a column holds nothing else, that is meant.
 */
function isRecorded(column: Column, row: number): boolean {
  return !isMissing(column, row) && (isMeasured(column, row) || !hasMeasured(column));
}

function isMeasured(column: Column, row: number): boolean {
  const from = 'derivedFrom' in column ? column.derivedFrom?.get(row) : undefined;
  return from === undefined || (from.length === 1 && from[0] === ONE_MEASUREMENT[column.attribute.id]);
}

const measured = new WeakMap<Column, boolean>();

function hasMeasured(column: Column): boolean {
  const before = measured.get(column);
  if (before !== undefined) return before;
  let found = false;
  for (let row = 0; row < column.raw.length && !found; row++)
    found = !isMissing(column, row) && isMeasured(column, row);
  measured.set(column, found);
  return found;
}

/** Rows that hold a value of the attribute. */
export function filledRows(view: View, attribute: string, rows: readonly number[]): readonly number[] {
  const column = requireColumn(view.table, idOf(attribute, view.register), view.register);
  return rows.filter((row) => isRecorded(column, row));
}

/** Term of each row; null where there is none. */
export function termsOf(
  view: View,
  attribute: string,
  rows: readonly number[],
): readonly (string | null)[] | Unavailable {
  const column = requireColumn(view.table, idOf(attribute, view.register), view.register);
  if (column.kind === 'numeric') return { why: `"${column.attribute.label}" is a number, not a kind` };
  const { id } = column.attribute;
  if (column.kind === 'term' && view.worded !== id) {
    const broader = view.broader?.attribute === id ? view.broader.of : null;
    return rows.map((row) => {
      const term = isRecorded(column, row) ? termAt(column, row) : null;
      return term === null ? null : (broader?.get(term) ?? term);
    });
  }
  return rows.map((row) => (column.raw[row].trim() === '' ? null : column.raw[row].trim()));
}

/** Records that hold a value of everything that is counted. */
export function known(counted: readonly Condition[]): readonly Condition[] {
  return [...new Set(counted.map(({ attribute }) => attribute))].map((attribute) => ({
    attribute,
    known: true,
  }));
}

const MOST_NAMED = 8;

export interface EmptySelection {
  readonly why: string;
  readonly mend: string;
  /** A wording that no vocabulary knows and no record has: a slip of spelling rather than a count of none. */
  readonly unknown: boolean;
}

/**
 * Why conditions select nothing: the first that no record meets by itself, with what occurs instead; null where
 * records are left.
 */
export function emptySelection(view: View, conditions: readonly Condition[]): EmptySelection | null {
  if (conditions.length === 0 || rowsOf(view, conditions).length > 0) return null;
  const alone = conditions.find((one) => rowsOf(view, [one]).length === 0);
  if (alone === undefined)
    return {
      why: 'no record meets all of these conditions together',
      mend: 'look up the conditions, or say which records were meant',
      unknown: false,
    };
  const rows = Array.from({ length: view.table.rows }, (_, row) => row);
  const terms = termsOf(view, alone.attribute, rows);
  const occurring = 'why' in terms ? [] : [...new Set(terms)].filter((term) => term !== null);
  const shown = occurring.slice(0, MOST_NAMED).join(', ');
  const more = occurring.length > MOST_NAMED ? ` and ${occurring.length - MOST_NAMED} more` : '';
  return {
    why: `no record meets "${selectionText([alone])}"`,
    mend: occurring.length === 0 ? 'look up the limits' : `of ${alone.attribute} there occur ${shown}${more}`,
    unknown:
      alone.in !== undefined &&
      view.register.attributes.get(idOf(alone.attribute, view.register))?.vocabulary === undefined,
  };
}

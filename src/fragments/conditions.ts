import type { Register } from '../attributes/definition.ts';
import { defaultRegister } from '../attributes/register.ts';
import { termAt } from './accessors.ts';
import { byKinds, byNumbers, FEWEST_KNOWN, type Looked } from './conditions-looked.ts';
import { termLabel } from './groups.ts';
import { KIND, kindsBeside } from './kinds/kinds.ts';
import { atLevel } from './level/common-level.ts';
import { isMissing } from './missing.ts';
import type { FragmentTable } from './table.ts';

/**
 * Conditions under which finds were made, kept, recovered and recorded, and how much of them was left: a difference
 * between sites, periods or types may be one between these. Looked at wherever labels are compared.
 */
export const CONDITIONS = [
  'recorder',
  'source',
  'recovery',
  'preservation',
  'structure',
  'period',
  'size',
] as const;

export type ConditionId = (typeof CONDITIONS)[number];

/** One condition of the records compared. */
export interface RecordsCondition extends Looked {
  /** One of `CONDITIONS`, or the id of an attribute of the study's own. */
  readonly id: string;
  readonly label: string;
  /** Whether it is an attribute of the study's own. */
  readonly own: boolean;
}

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
  const usual = CONDITIONS.filter((id) => !used.has(id)).map((id): RecordsCondition => {
    if (id === 'size') return sizeCondition(table, rows);
    const kind = id === 'structure' && register.attributes.get(KIND)?.composed === true;
    const beside = kind ? kindsBeside(table, about, register) : { table, register, of: [] };
    const column = beside.of.length > 1 ? KIND : id;
    const termOf = readerOf(beside.table, column, across, beside.register);
    const label = id === 'source' ? 'Source' : (register.attributes.get(column)?.label ?? LABELS[id]);
    return { id, label, own: false, ...byKinds(rows.map(termOf)) };
  });
  return [...usual, ...ownConditions(table, rows, about, register)];
}

/** Measures of how much of a fabric was left, the fullest first. */
const SIZES = ['area', 'weight', 'length', 'width'] as const;

function sizeCondition(table: FragmentTable, rows: readonly number[]): RecordsCondition {
  const measures = SIZES.flatMap((id) => {
    const column = table.columns.get(id);
    return column?.kind === 'numeric' ? [{ label: column.attribute.label, ...byNumbers(column, rows) }] : [];
  });
  const most = measures.reduce((best, { known }) => Math.max(best, known), 0);
  const measure =
    measures.find(({ known }) => known >= FEWEST_KNOWN * rows.length) ??
    measures.find(({ known }) => known === most);
  return { id: 'size', own: false, ...(measure ?? { label: LABELS.size, ...byKinds(rows.map(() => null)) }) };
}

/** An attribute of the study's own with fewer records to a kind names the records one by one. */
const FEWEST_A_KIND = 3;

/**
 * What the study itself has defined to say of where finds come from and of the pieces. A number is looked at only of the
 * pieces, and only where nothing of the pieces is compared: two measures of one thing stand for each other.
 */
function ownConditions(
  table: FragmentTable,
  rows: readonly number[],
  about: readonly string[],
  register: Register,
): RecordsCondition[] {
  const ofPieces = about.some((id) => register.attributes.get(id)?.block === 'find');
  return [...table.columns.values()].flatMap((column): RecordsCondition[] => {
    const { id, label, block, derived, composed } = column.attribute;
    if (defaultRegister().attributes.has(id) || about.includes(id) || derived || composed) return [];
    if (block !== 'context' && block !== 'find') return [];
    const named = { id, label, own: true };
    if (column.kind === 'numeric') {
      const found = block === 'find' && !ofPieces ? byNumbers(column, rows) : null;
      return found === null || found.known === 0 ? [] : [{ ...named, ...found }];
    }
    if (column.kind === 'text') return [];
    const found = byKinds(
      rows.map((row) => {
        const term = termAt(column, row);
        return term === null ? null : termLabel(column.attribute, term, register);
      }),
    );
    return found.known < FEWEST_A_KIND * found.kinds.length || found.known === 0
      ? []
      : [{ ...named, ...found }];
  });
}

const LABELS: Readonly<Record<ConditionId, string>> = {
  recorder: 'Recorder',
  source: 'Source',
  recovery: 'Recovery',
  preservation: 'Preservation',
  structure: 'Structure',
  period: 'Period',
  size: 'Size of the piece',
};

/** A phase is of one period and a recorder has tables of their own: what is the same thing explains nothing. */
const SAME_THING: Readonly<Record<string, readonly ConditionId[]>> = {
  recorder: ['recorder', 'source'],
  source: ['recorder', 'source'],
  phase: ['period'],
  date: ['period'],
  assemblage: ['period'],
  length: ['size'],
  width: ['size'],
  area: ['size'],
  weight: ['size'],
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
  id: string,
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

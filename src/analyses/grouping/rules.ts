import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { ancestors, isWithin } from '../../attributes/tree.ts';
import { pointOf } from '../../fragments/accessors.ts';
import { termLabel } from '../../fragments/groups.ts';
import type { FragmentTable, NumericColumn, TermColumn } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { printQuantity } from '../phrasing.ts';
import type { GroupRule } from './found.ts';

interface Condition {
  readonly attribute: string;
  readonly text: string;
  /** 1 where the record is known to fulfil it; a gap does not. */
  readonly holds: Uint8Array;
}

/** Cut points tried a numeric attribute, and conditions carried from one length to the next. */
const MOST_CUTS = 24;
const BEAM = 12;
const LONGEST = 3;
/** A longer rule must raise F1 by this much. */
const WORTH_A_CONDITION = 0.02;

/**
 * The shortest rule that separates each group: up to three conditions on the compared attributes, found by
 * beam search on F1 (harmonic mean of recall and precision); of two rules the shorter one wins unless the
 * longer is better by 0.02. Numbers are cut half-way between values, kinds may be any broader term. A gap
 * fulfils nothing. It describes these records and has been tried on no others.
 */
export function separatingRules(
  table: FragmentTable,
  attributes: readonly string[],
  rows: ArrayLike<number>,
  membership: ArrayLike<number>,
  groups: number,
  register: Register,
): GroupRule[] {
  const conditions = attributes.flatMap((id) => {
    const column = table.columns.get(id);
    if (column === undefined || column.kind === 'text') return [];
    return column.kind === 'numeric'
      ? numberConditions(column, rows)
      : termConditions(column, rows, register);
  });
  return Array.from({ length: groups }, (_, group) => bestRule(conditions, rows.length, membership, group));
}

interface Candidate {
  readonly parts: readonly Condition[];
  readonly holds: Uint8Array;
  readonly recall: number;
  readonly precision: number;
  readonly f1: number;
}

function bestRule(
  conditions: readonly Condition[],
  n: number,
  membership: ArrayLike<number>,
  group: number,
): GroupRule {
  let size = 0;
  for (let t = 0; t < n; t++) if (membership[t] === group) size++;
  const judge = (parts: readonly Condition[], holds: Uint8Array): Candidate => {
    let both = 0;
    let chosen = 0;
    for (let t = 0; t < n; t++) {
      if (holds[t] === 0) continue;
      chosen++;
      if (membership[t] === group) both++;
    }
    const precision = chosen === 0 ? 0 : both / chosen;
    return { parts, holds, recall: both / size, precision, f1: (2 * both) / (chosen + size) };
  };
  const everything = judge([], new Uint8Array(n).fill(1));
  let beam: readonly Candidate[] = [everything];
  let best = everything;
  for (let length = 1; length <= LONGEST; length++) {
    const longer = beam.flatMap((start) =>
      conditions
        .filter((condition) => !start.parts.includes(condition))
        .map((condition) =>
          judge(
            [...start.parts, condition],
            start.holds.map((held, t) => held & condition.holds[t]),
          ),
        ),
    );
    longer.sort((a, b) => b.f1 - a.f1);
    beam = longer.slice(0, BEAM);
    if (beam.length === 0) break;
    if (beam[0].f1 >= best.f1 + WORTH_A_CONDITION || best.parts.length === 0) best = beam[0];
  }
  return {
    text: best.parts.map((part) => part.text).join(' and '),
    conditions: best.parts.length,
    recall: best.recall,
    precision: best.precision,
  };
}

function numberConditions(column: NumericColumn, rows: ArrayLike<number>): Condition[] {
  const points = Float64Array.from(rows, (row) => pointOf(column, row));
  const sorted = sortedValues(points);
  const cuts = new Set<number>();
  const distinct = [...new Set(sorted)];
  if (distinct.length <= MOST_CUTS) {
    for (let i = 1; i < distinct.length; i++) cuts.add(between(distinct[i - 1], distinct[i]));
  } else {
    for (let i = 1; i <= MOST_CUTS; i++) {
      const near = quantileSorted(sorted, i / (MOST_CUTS + 1));
      const above = distinct.find((value) => value > near);
      const below = distinct.findLast((value) => value <= near);
      if (above !== undefined && below !== undefined) cuts.add(between(below, above));
    }
  }
  const { id, label, unit } = column.attribute;
  return [...cuts].flatMap((cut) => {
    const printed = printQuantity(cut, unit ?? '', 15);
    return [
      { attribute: id, text: `${label} above ${printed}`, holds: flags(points, (value) => value > cut) },
      { attribute: id, text: `${label} below ${printed}`, holds: flags(points, (value) => value < cut) },
    ];
  });
}

/** The number with fewest digits that lies between two values, near their middle: a cut as one would print it. */
function between(low: number, high: number): number {
  const middle = (low + high) / 2;
  for (let digits = 1; digits < 17; digits++) {
    const short = Number(middle.toPrecision(digits));
    if (short > low && short < high) return short;
  }
  return middle;
}

function termConditions(column: TermColumn, rows: ArrayLike<number>, register: Register): Condition[] {
  const { attribute, codes, levels } = column;
  const terms = Array.from(rows, (row) => (codes[row] < 0 ? null : levels[codes[row]]));
  const present = new Set(terms.filter((term) => term !== null));
  if (present.size < 2) return [];
  const conditions = kindTests(attribute, present, register);
  return conditions.map(({ text, fits }) => ({
    attribute: attribute.id,
    text,
    holds: Uint8Array.from(terms, (term) => (term !== null && fits(term) ? 1 : 0)),
  }));
}

interface KindTest {
  readonly text: string;
  readonly fits: (term: string) => boolean;
}

function kindTests(
  attribute: AttributeDefinition,
  present: ReadonlySet<string>,
  register: Register,
): KindTest[] {
  const { label, levels } = attribute;
  const name = (term: string) => termLabel(attribute, term, register);
  if (attribute.scale === 'ordinal' && levels !== undefined) {
    const rank = (term: string) => levels.indexOf(term);
    return levels.slice(1).flatMap((level, place) => [
      { text: `${label} ${name(level)} or higher`, fits: (term: string) => rank(term) > place },
      { text: `${label} ${name(levels[place])} or lower`, fits: (term: string) => rank(term) <= place },
    ]);
  }
  const vocabulary =
    attribute.vocabulary === undefined ? undefined : register.vocabularies.get(attribute.vocabulary);
  if (vocabulary === undefined) {
    return [...present].map((level) => ({ text: `${label} ${name(level)}`, fits: (term) => term === level }));
  }
  const broader = new Set([...present].flatMap((term) => [term, ...ancestors(vocabulary, term)]));
  return [...broader].map((wide) => ({
    text: `${label} ${name(wide)}`,
    fits: (term) => isWithin(vocabulary, term, wide),
  }));
}

function flags(points: Float64Array, holds: (value: number) => boolean): Uint8Array {
  return Uint8Array.from(points, (value) => (holds(value) ? 1 : 0));
}

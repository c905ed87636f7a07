import type { Register } from '../../attributes/definition.ts';
import { pointOf } from '../../fragments/accessors.ts';
import { termLabel } from '../../fragments/groups.ts';
import type { FragmentTable, NumericColumn, TermColumn } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { cliffsDelta } from '../../numerics/tests/mann-whitney.ts';
import type { Mark } from './found.ts';

/**
 * What sets a group apart: for each attribute its effect size against all other grouped records, strongest
 * first. Numbers by Cliff's delta of the readings' points, kinds by the term with the largest phi. These
 * describe; they are no tests, for the groups were made from the same attributes.
 *
 * @param rows row of the table for each grouped record; `membership` runs alongside
 */
export function marksOf(
  table: FragmentTable,
  attributes: readonly string[],
  rows: ArrayLike<number>,
  membership: ArrayLike<number>,
  group: number,
  register: Register,
): Mark[] {
  const inside: number[] = [];
  const outside: number[] = [];
  for (let t = 0; t < rows.length; t++) {
    if (membership[t] === group) inside.push(rows[t]);
    else if (membership[t] >= 0) outside.push(rows[t]);
  }
  const marks: Mark[] = [];
  for (const id of attributes) {
    const column = table.columns.get(id);
    if (column === undefined || column.kind === 'text') continue;
    const mark =
      column.kind === 'numeric'
        ? numberMark(column, inside, outside)
        : termMark(column, inside, outside, register);
    if (mark !== null) marks.push(mark);
  }
  return marks.sort((a, b) => Math.abs(b.effect) - Math.abs(a.effect));
}

function numberMark(
  column: NumericColumn,
  inside: readonly number[],
  outside: readonly number[],
): Mark | null {
  const first = sortedValues(inside.map((row) => pointOf(column, row)));
  const second = sortedValues(outside.map((row) => pointOf(column, row)));
  const effect = cliffsDelta(first, second);
  if (typeof effect !== 'number') return null;
  return {
    attribute: column.attribute.id,
    label: column.attribute.label,
    term: '',
    effect,
    inside: quantileSorted(first, 0.5),
    outside: quantileSorted(second, 0.5),
    insideN: first.length,
    outsideN: second.length,
    unit: column.attribute.unit ?? '',
  };
}

function termMark(
  column: TermColumn,
  inside: readonly number[],
  outside: readonly number[],
  register: Register,
): Mark | null {
  const first = inside.filter((row) => column.codes[row] >= 0);
  const second = outside.filter((row) => column.codes[row] >= 0);
  if (first.length === 0 || second.length === 0) return null;
  let best: Mark | null = null;
  for (const [code, level] of column.levels.entries()) {
    const a = first.filter((row) => column.codes[row] === code).length;
    const b = second.filter((row) => column.codes[row] === code).length;
    const effect = phi(a, first.length - a, b, second.length - b);
    if (effect === null || (best !== null && !tellsMore(effect, best.effect))) continue;
    best = {
      attribute: column.attribute.id,
      label: column.attribute.label,
      term: termLabel(column.attribute, level, register),
      effect,
      inside: a / first.length,
      outside: b / second.length,
      insideN: first.length,
      outsideN: second.length,
      unit: '',
    };
  }
  return best;
}

/** What a group has says more than what it lacks, where both set it apart as far. */
function tellsMore(effect: number, other: number): boolean {
  const [here, there] = [Math.abs(effect), Math.abs(other)];
  return here > there || (here === there && effect > other);
}

/** Correlation of two yes/no variables from their four counts; null where one of them never varies. */
function phi(a: number, b: number, c: number, d: number): number | null {
  const product = (a + b) * (c + d) * (a + c) * (b + d);
  return product > 0 ? (a * d - b * c) / Math.sqrt(product) : null;
}

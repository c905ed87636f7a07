import type { AttributeDefinition } from '../../attributes/definition.ts';
import { isOpenEnded, pointOf } from '../../fragments/accessors.ts';
import { gradeSpan } from '../../fragments/grades.ts';
import type { Grouping } from '../../fragments/groups.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { type BlockedSample, blockedSample } from '../../numerics/tests/blocked-sample.ts';

/** The values of one group, fragments of one item as one block. */
export interface ContrastGroup {
  readonly label: string;
  /** Rows with a value, in the order of the values. */
  readonly rows: readonly number[];
  /** Middle of each reading, an open-ended one at its known end. */
  readonly points: BlockedSample;
  /** Lower and upper ends of the readings. */
  readonly low: BlockedSample;
  readonly high: BlockedSample;
  readonly openEnded: number;
  readonly missing: number;
}

/** One attribute, its values laid out by groups. */
export interface AttributeSamples {
  readonly attribute: AttributeDefinition;
  /** Grades stand for their place in the order; differences and ratios of them say nothing. */
  readonly graded: boolean;
  /** Ratios matter, and all values allow them. */
  readonly logarithmic: boolean;
  /** All groups with a value. */
  readonly groups: readonly ContrastGroup[];
  /** Groups with values of two items or more: the ones that are tested. */
  readonly tested: readonly ContrastGroup[];
  /** Items with values in more than one group. */
  readonly straddling: number;
}

/** Fewest items that a group needs to be tested: of a single thing nothing can be said about spread. */
const FEWEST_ITEMS = 2;

/** Whether an attribute can be contrasted on its own: numbers and grades can, kinds cannot. */
export function canBeContrasted(column: Column): boolean {
  return column.kind === 'numeric' || column.attribute.levels !== undefined;
}

export function attributeSamples(
  records: FragmentTable,
  column: Column,
  grouping: Grouping,
): AttributeSamples {
  const { attribute } = column;
  const all = grouping.groups.map(({ labels, rows }) => groupOf(records, column, labels[0], rows));
  const groups = all.filter((group) => group.rows.length > 0);
  const graded = column.kind !== 'numeric';
  const seen = new Map<string, number>();
  for (const [place, group] of groups.entries()) {
    for (const item of new Set(group.rows.map((row) => records.item[row]))) {
      seen.set(item, seen.has(item) ? -1 : place);
    }
  }
  return {
    attribute,
    graded,
    logarithmic:
      !graded &&
      attribute.transform === 'log' &&
      groups.every((group) => group.points.values.every((value) => value > 0)),
    groups,
    tested: groups.filter((group) => group.points.count >= FEWEST_ITEMS),
    straddling: [...seen.values()].filter((place) => place === -1).length,
  };
}

function groupOf(
  records: FragmentTable,
  column: Column,
  label: string,
  rows: readonly number[],
): ContrastGroup {
  const read = readerOf(column);
  const filled = rows.filter((row) => !isMissing(column, row) && Number.isFinite(read(row).point));
  const items = filled.map((row) => records.item[row]);
  const sample = (which: 'point' | 'low' | 'high') =>
    blockedSample(
      filled.map((row) => read(row)[which]),
      items,
    );
  return {
    label,
    rows: filled,
    points: sample('point'),
    low: sample('low'),
    high: sample('high'),
    openEnded: column.kind === 'numeric' ? filled.filter((row) => isOpenEnded(column, row)).length : 0,
    missing: rows.length - filled.length,
  };
}

function readerOf(column: Column): (row: number) => { point: number; low: number; high: number } {
  if (column.kind === 'numeric') {
    return (row) => ({ point: pointOf(column, row), low: column.low[row], high: column.high[row] });
  }
  const levels = column.attribute.levels ?? [];
  return (row) => {
    const term = column.kind === 'term' ? column.levels[column.codes[row]] : undefined;
    const span = term === undefined ? null : gradeSpan(term, levels);
    const [low, high] = span === null ? [Number.NaN, Number.NaN] : [span[0] + 1, span[1] + 1];
    return { point: (low + high) / 2, low, high };
  };
}

/** Whether any reading is more than one number, so that its ends are worth trying. */
export function hasIntervals({ tested }: AttributeSamples): boolean {
  return tested.some((group) => group.low.values.some((low, i) => low !== group.high.values[i]));
}

import { isOpenEnded, pointOf } from '../../fragments/accessors.ts';
import { gradeSpan } from '../../fragments/grades.ts';
import type { Grouping } from '../../fragments/groups.ts';
import { isMissing, stateAt } from '../../fragments/missing.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { blockedSample } from '../../numerics/tests/blocked-sample.ts';
import type { AttributeSamples, ContrastGroup } from './found.ts';

/** Fewest items that a group needs to be quoted as evidence. */
const FEWEST_QUOTED = 5;

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
  fragmentsBehind: (rows: readonly number[]) => number,
): AttributeSamples {
  const { attribute } = column;
  const all = grouping.groups.map(({ labels, rows }) =>
    groupOf(records, column, labels[0], rows, fragmentsBehind),
  );
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
  fragmentsBehind: (rows: readonly number[]) => number,
): ContrastGroup {
  const read = readerOf(column);
  const filled = rows.filter((row) => !isMissing(column, row) && Number.isFinite(read(row).point));
  const items = filled.map((row) => records.item[row]);
  const sample = (which: 'point' | 'low' | 'high') =>
    blockedSample(
      filled.map((row) => read(row)[which]),
      items,
    );
  const points = sample('point');
  const sorted = sortedValues(points.values);
  return {
    label,
    rows: filled,
    fragments: fragmentsBehind(filled),
    points,
    low: sample('low'),
    high: sample('high'),
    quartiles: [quantileSorted(sorted, 0.25), quantileSorted(sorted, 0.5), quantileSorted(sorted, 0.75)],
    quotable: points.count >= FEWEST_QUOTED,
    openEnded: column.kind === 'numeric' ? filled.filter((row) => isOpenEnded(column, row)).length : 0,
    missing: rows.length - filled.length,
    unread: rows.filter((row) => stateAt(column, row) !== 'not-applicable').length - filled.length,
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

import { InputError } from '../../errors.ts';
import { isOpenEnded, pointOf, termAt } from '../../fragments/accessors.ts';
import { readFind } from '../../fragments/find-table.ts';
import { groupRows } from '../../fragments/groups.ts';
import { isMissing } from '../../fragments/missing.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import type { NumericColumn } from '../../fragments/table.ts';
import type { AnalysisInput } from '../contract.ts';
import { markPlaces } from '../shared/figure/marks.ts';
import type { End, RecordPoint, ThreadcountFound } from './found.ts';
import type { ThreadcountOptions } from './options.ts';

/** Records that have both measurements, with the rows that lack one. */
export interface Gathered {
  readonly x: NumericColumn;
  readonly y: NumericColumn;
  readonly points: readonly (RecordPoint & { readonly row: number })[];
  readonly labels: readonly string[];
  readonly marks: readonly (number | null)[];
  readonly lacking: readonly { readonly reason: string; readonly rows: readonly number[] }[];
}

/** Stands for records whose group is not recorded. */
export const NOT_RECORDED = 'not recorded';

/** @throws InputError for an attribute that no source records, or that is not a number. */
export function gatherPoints(
  input: AnalysisInput,
  { x: first, y: second, by }: ThreadcountOptions,
): Gathered {
  const { records, register } = input;
  const x = numberColumn(input, first, 'x');
  const y = numberColumn(input, second, 'y');
  const places = markPlaces(input.fragments, by, register, input.marks);
  const labelOf = new Map(
    groupRows(records, [by], register).groups.flatMap(({ labels, rows }) =>
      rows.map((row) => [row, labels[0]] as const),
    ),
  );
  const rows = Array.from({ length: records.rows }, (_, row) => row);
  const lackingX = rows.filter((row) => isMissing(x, row));
  const lackingY = rows.filter((row) => !isMissing(x, row) && isMissing(y, row));
  const both = rows.filter((row) => !isMissing(x, row) && !isMissing(y, row));
  const met = new Map<string, number>();
  for (const row of both) {
    const label = labelOf.get(row) ?? NOT_RECORDED;
    met.set(label, (met.get(label) ?? 0) + 1);
  }
  const labels = [...met.keys()].sort(
    (a, b) => (places.get(a) ?? places.size) - (places.get(b) ?? places.size),
  );
  return {
    x,
    y,
    points: both.map((row) => ({
      row,
      id: records.id[row],
      x: endOf(x, row),
      y: endOf(y, row),
      group: labels.indexOf(labelOf.get(row) ?? NOT_RECORDED),
    })),
    labels,
    marks: labels.map((label) => places.get(label) ?? null),
    lacking: [
      { reason: `${x.attribute.label} not recorded`, rows: lackingX },
      { reason: `${y.attribute.label} not recorded`, rows: lackingY },
    ].filter((one) => one.rows.length > 0),
  };
}

function numberColumn(input: AnalysisInput, id: string, path: string): NumericColumn {
  const column = requireColumn(input.records, id, input.register);
  if (column.kind === 'numeric') return column;
  throw new InputError(
    `"${column.attribute.label}" (${id}) is not a number`,
    { path },
    'name a measurement, such as density1, rowSpacing or diameter1',
  );
}

function endOf(column: NumericColumn, row: number): End {
  return {
    low: column.low[row],
    high: column.high[row],
    point: pointOf(column, row),
    openEnded: isOpenEnded(column, row),
  };
}

/** Records whose systems were looked at and could not be told apart; of measurements that both systems have. */
export function untoldSystems(
  input: AnalysisInput,
  { x, y }: ThreadcountOptions,
  rows: readonly number[],
): number {
  const paired = /1$/.test(x) && y === x.replace(/1$/, '2');
  if (!paired && !(/2$/.test(x) && y === x.replace(/2$/, '1'))) return 0;
  const column = input.records.columns.get('orientation');
  if (column?.kind !== 'term') return 0;
  return rows.filter((row) => termAt(column, row) === 'untold').length;
}

/** The find that is to be marked, read as a cell would be; null where it lacks one of the two. */
export function findToMark(
  { register }: AnalysisInput,
  { find, x, y }: ThreadcountOptions,
): Pick<ThreadcountFound, 'find' | 'findNotes'> {
  if (Object.keys(find).length === 0) return { find: null, findNotes: [] };
  const { table, notes } = readFind(find, register);
  const [a, b] = [x, y].map((id) => {
    const column = table.columns.get(id);
    return column?.kind === 'numeric' && !isMissing(column, 0) ? endOf(column, 0) : null;
  });
  if (a !== null && b !== null) return { find: { x: a, y: b }, findNotes: notes };
  const lacks = register.attributes.get(a === null ? x : y)?.label ?? x;
  return { find: null, findNotes: [...notes, `the find has no ${lacks.toLowerCase()} and is not marked`] };
}

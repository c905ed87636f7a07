import { PASSIVE_RECORD } from '../../../analyses/ordination/found.ts';
import type { AnalysisResult } from '../../../study/results/results.ts';
import type { RecordLabels } from '../use-labels.ts';
import type { MapPoint } from './kin-map.ts';

/** Where each record lies on the first two axes of an ordination. */
export interface Positions {
  readonly ids: readonly string[];
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Whether it was placed without a say in the axes. */
  readonly passive: readonly boolean[];
  readonly axes: readonly [string, string];
}

export function positionsOf(ordination: AnalysisResult | null): Positions | null {
  const table = ordination?.tables.coordinates;
  if (table === undefined) return null;
  const at = (name: string) => table.columns.findIndex((column) => column.id === name);
  const [id, first, second] = [at('id'), at('axis1'), at('axis2')];
  const role = at('role');
  if (id < 0 || first < 0 || second < 0) return null;
  const numbers = (column: number) =>
    table.rows.map((row) => (typeof row[column] === 'number' ? row[column] : Number.NaN));
  return {
    ids: table.rows.map((row) => String(row[id])),
    x: numbers(first),
    y: numbers(second),
    passive: table.rows.map((row) => row[role] === PASSIVE_RECORD),
    axes: [table.columns[first]?.label ?? 'axis 1', table.columns[second]?.label ?? 'axis 2'],
  };
}

/** Positions with what each point is, in words. */
export function mapPoints(
  positions: Positions,
  labels: RecordLabels | null,
  said: readonly string[],
  kindOf: (id: string, row: number | undefined) => string,
): MapPoint[] {
  const rows = new Map(labels?.ids.map((id, row) => [id, row]));
  return positions.ids.map((id, i) => {
    const row = rows.get(id);
    return {
      id,
      x: positions.x[i] ?? Number.NaN,
      y: positions.y[i] ?? Number.NaN,
      kind: kindOf(id, row),
      passive: positions.passive[i] ?? false,
      about: aboutRecord(labels, said, row),
    };
  });
}

/** What a record is, in the words of the attributes named; those that it lacks are left out. */
export function aboutRecord(
  labels: RecordLabels | null,
  said: readonly string[],
  row: number | undefined,
): readonly string[] {
  if (row === undefined) return [];
  return said.map((name) => labels?.labels[name]?.[row] ?? '').filter((text) => text !== '');
}

import { CELL_STATES } from '../../cells/reading.ts';
import { type Interval, NOTHING } from '../intervals.ts';
import type { Column } from '../table.ts';

const MEASURED = CELL_STATES.indexOf('measured');

/**
 * What a reading allows, its printed precision included: half a printed step to either side of a single
 * exact number, so that 2 rows counted over 5 cm are 0.3 to 0.5 per cm. A range, a reading that is said to
 * be approximate and an open end say themselves how wide they are and stay. Never below 0.
 */
export function impliedInterval(column: Column | undefined, row: number): Interval {
  if (column?.kind !== 'numeric') return NOTHING;
  const low = column.low[row];
  const high = column.high[row];
  const half = column.step[row] / 2;
  if (low !== high || !(half > 0) || column.state[row] !== MEASURED) return [low, high];
  return [Math.max(0, low - half), high + half];
}

/** The one number that a reading is of; NaN where it is a range, or where there is none. */
export function nominal(column: Column | undefined, row: number): number {
  if (column?.kind !== 'numeric') return Number.NaN;
  const centre = column.centre?.[row] ?? Number.NaN;
  if (!Number.isNaN(centre)) return centre;
  return column.low[row] === column.high[row] ? column.low[row] : Number.NaN;
}

import type { DerivedTerm } from './derived/fill.ts';
import { EITHER } from './grades.ts';
import { type Interval, isNothing } from './intervals.ts';

/** Where close, semi-open and open part. Hypotheses, not facts: settings of a study. */
export interface SpacingThresholds {
  /** Gap over row width up to which rows count as close. */
  readonly close: number;
  /** Gap over row width above which rows count as open. */
  readonly open: number;
  /** Row widths in mm that are taken as possible where none was recorded. */
  readonly possibleRowWidth: Interval;
}

/** Proposed defaults: common practice, no source. */
export const DEFAULT_THRESHOLDS: SpacingThresholds = { close: 0.1, open: 1, possibleRowWidth: [1, 10] };

/**
 * Close, semi-open or open; "semi-open or open" where the readings reach across a limit, null where they leave
 * all three open. From the gap ratio; else from the row spacing with every possible row width: rows 35 mm
 * apart are open whatever their width, rows 6 mm apart may be anything.
 */
export function spacingClassOf(
  gapRatio: Interval,
  rowSpacing: Interval,
  { close, open, possibleRowWidth }: SpacingThresholds,
): DerivedTerm | null {
  if (!isNothing(gapRatio)) return classify(gapRatio, close, open, ['gapRatio']);
  if (isNothing(rowSpacing)) return null;
  const [thin, thick] = possibleRowWidth;
  return classify([rowSpacing[0] / thick - 1, rowSpacing[1] / thin - 1], close, open, ['rowSpacing']);
}

const CLASSES = ['close', 'semi-open', 'open'] as const;

function classify(
  [low, high]: Interval,
  close: number,
  open: number,
  from: readonly string[],
): DerivedTerm | null {
  const at = (ratio: number) => (ratio <= close ? 0 : ratio <= open ? 1 : 2);
  const possible = CLASSES.slice(at(low), at(high) + 1);
  return possible.length === CLASSES.length ? null : { term: possible.join(EITHER), from };
}

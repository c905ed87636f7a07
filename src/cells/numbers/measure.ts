import type { Note } from '../reading.ts';

/** One number of a cell, in the unit that stands beside it. */
export interface Quantity {
  readonly value: number;
  readonly step: number;
  readonly unit?: string;
  readonly notes: readonly Note[];
}

/** One statement of a cell ("c. 3-4 mm", "min. 30"), still in its own unit. */
export interface Measure {
  readonly low: number;
  readonly high: number;
  /** The end that is open, where the cell says "under" or "at least". */
  readonly open?: 'low' | 'high';
  readonly step: number;
  readonly unit?: string;
  /** The recorder said "about". */
  readonly about: boolean;
  /** The recorder put a question mark. */
  readonly doubt: number;
  /** The statement is a mean beside others ("mean 9"). */
  readonly isMean: boolean;
  /** The statement names what was measured ("30 mm long"). */
  readonly labelled: boolean;
  /** A second statement of the same thing, from a bracket: "3 in (7.6 cm)". */
  readonly other?: Measure;
  readonly notes: readonly Note[];
}

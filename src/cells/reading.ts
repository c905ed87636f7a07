/** What one cell of a source was read as. */

/**
 * - `measured`: read as it stands (an interval or a censored reading is measured too).
 * - `approximate`: the recorder said "about"; the interval has been widened for it.
 * - `not-observed`: hidden, lost, illegible or not recorded.
 * - `not-applicable`: makes no sense for this structure.
 * - `absent`: looked for where it could be seen, and not there.
 */
export const CELL_STATES = ['measured', 'approximate', 'not-observed', 'not-applicable', 'absent'] as const;
export type CellState = (typeof CELL_STATES)[number];

/** How sure the recorder was of a term; "cf.", "prob." and "?" lower it one step. */
export const CERTAINTIES = ['certain', 'probable', 'possible', 'indeterminate'] as const;
export type Certainty = (typeof CERTAINTIES)[number];

/** A number as an interval `[low, high]`; `low === high` when exact, an end is ±Infinity when censored. */
export interface NumericReading {
  readonly kind: 'numeric';
  /** NaN unless the state is measured or approximate. */
  readonly low: number;
  readonly high: number;
  readonly state: CellState;
  /** Each reading of a cell that lists several ("34; 36; 35"), in the attribute's unit. */
  readonly readings?: readonly number[];
  /** Smallest step that the printed digits allow, in the attribute's unit: "3.5" -> 0.1. */
  readonly step?: number;
  readonly certainty?: Certainty;
  readonly notes: readonly Note[];
}

/** A kind, grade or yes/no. */
export interface TermReading {
  readonly kind: 'term';
  /** Id of the term or grade; `present`/`absent` for binary and presence scales; null when there is none. */
  readonly term: string | null;
  readonly state: CellState;
  readonly certainty: Certainty;
  readonly notes: readonly Note[];
}

export interface TextReading {
  readonly kind: 'text';
  readonly text: string;
  readonly state: CellState;
  readonly notes: readonly Note[];
}

export type Reading = NumericReading | TermReading | TextReading;

/**
 * What a person should know about how a cell was read. `read`: a rule changed the text into its
 * reading; `flagged`: read, but look again; `not-understood`: no reading, the raw text is kept.
 */
export interface Note {
  readonly level: 'read' | 'flagged' | 'not-understood';
  /** Short stable name of the rule, e.g. "circa", "count-to-spacing". */
  readonly rule: string;
  /** One sentence for the ledger. */
  readonly why: string;
}

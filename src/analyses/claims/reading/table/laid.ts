import type { HeadReading } from './heads.ts';
import type { LineRole } from './line-words.ts';

/** One column of numbers. */
export interface TableColumn {
  /** The head as it stands, with the head that spans it. */
  readonly head: string;
  /** The head without the one that spans it. */
  readonly own: string;
  /** The head that spans several columns, or what a head such as "Spacing, mean (SD)" is of; empty where neither is. */
  readonly group: string;
  readonly reading: HeadReading;
  readonly line: LineRole;
  /** The number of records that the head gives; null for none. */
  readonly size: number | null;
}

export interface TableRow {
  /** The label as it stands, with that of its section; made unique by a number where two are alike. */
  readonly label: string;
  /** The label without that of its section. */
  readonly own: string;
  readonly line: LineRole;
  /** What the whole row holds, where its label says so and no head does: p below the groups, "tabby (%)". */
  readonly holds: HeadReading | null;
  /** The section it stands in: a label alone above it, or the first of several labels; empty for none. */
  readonly section: string;
  /** The row of counts whose per cents this row holds. */
  readonly under: number | null;
  /** What the row holds, where rows hold several things: "% within row"; empty elsewhere. */
  readonly kind: string;
  /** The number of records that the label gives; null for none. */
  readonly size: number | null;
}

/** Cells with what each row and column is called and holds. */
export interface Layout {
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** One text a row and column. */
  readonly texts: readonly (readonly string[])[];
  readonly corner: string;
  /** The rows were columns in print. */
  readonly turned: boolean;
}

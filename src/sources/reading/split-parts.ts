/** One cell taken apart: a text a target ("" where there is none), and what was left over. */
export interface SplitParts {
  readonly parts: readonly string[];
  /** Text that no target took; it is kept in the ledger. */
  readonly rest: string;
  readonly why: string;
  readonly level: 'read' | 'flagged' | 'not-understood';
  /** The cell lists the sizes of several pieces. */
  readonly pieces?: boolean;
}

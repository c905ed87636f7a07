/** A remark on a whole row or header, for the ledger. */
export interface LayoutRemark {
  readonly row: number;
  readonly column: string;
  readonly raw: string;
  readonly readAs: string;
  readonly level: 'read' | 'flagged' | 'not-understood';
  readonly rule: string;
  readonly why: string;
}

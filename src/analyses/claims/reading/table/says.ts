/** What a printed table may say of itself beside its cells. */
export interface TableSays {
  /** Attribute whose terms label the rows; lets the cells be counted in the data. */
  readonly rows?: string | undefined;
  /** The same for the columns of a table of counts or percentages. */
  readonly columns?: string | undefined;
  /** Attribute that a table of means describes. */
  readonly attribute?: string | undefined;
  /** Grid of the single readings of a table of means: 1, 0.5, 0.1. */
  readonly step?: string | undefined;
  /** What columns hold, by their head, where that was confirmed or corrected. */
  readonly roles?: Readonly<Record<string, string>> | undefined;
}

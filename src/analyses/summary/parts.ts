/** Rows of one group, with the labels of its grouping attributes. */
export interface Part {
  readonly labels: readonly string[];
  readonly rows: readonly number[];
  /** Whether it takes all groups together. */
  readonly whole: boolean;
}

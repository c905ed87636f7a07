/**
 * A whole small table in the image of those that the field keeps: invented. The reading of every column was decided
 * before any was read: an attribute, null where Thrum has none for it, or several of which each would do.
 */
export interface FieldTable {
  readonly sort: string;
  readonly text: string;
  /** Rows that are finds. */
  readonly finds: number;
  readonly right: Readonly<Record<string, string | null | readonly (string | null)[]>>;
}

export const lines = (...rows: readonly string[]) => `${rows.join('\n')}\n`;

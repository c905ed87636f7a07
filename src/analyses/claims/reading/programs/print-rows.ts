/** What a statistics program printed of a fitted model, parted into what the readers of tables and reports know. */
export interface ModelPrint {
  /** The table of coefficients, or of comparisons, as it stands or with its heads in words. */
  readonly table: string;
  readonly caption: string;
  /** Its other lines, said again as a paper reports them. */
  readonly reports: readonly string[];
  /** Lines and values of which nothing is made. */
  readonly beside: readonly string[];
}

/** "1.5e-05", ".5", "< 2.2e-16", "NA": what stands in a cell of a program's table. */
export const VALUE = String.raw`(?:<\s?)?[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?|NA|NaN|nan|inf|-?Inf`;

/** A label and as many values as there are heads, or fewer where the last are empty; null for another line. */
export function rowOf(line: string, count: number): string[] | null {
  const bare = line.replace(/\s*(?:\*{1,3}|\.|(?<=\s)\+)?\s*$/, '');
  const match = new RegExp(
    String.raw`^\s*(?<label>\S.*?)\s+(?<values>(?:${VALUE})(?:\s+(?:${VALUE}))*)$`,
    'u',
  ).exec(bare)?.groups;
  if (match === undefined) return null;
  const values = match.values.match(new RegExp(VALUE, 'gu')) ?? [];
  if (values.length < count) return values.length >= 2 ? [match.label, ...values] : null;
  const more = values.length - count;
  // A label may end in a number: "phase 2".
  return [
    [match.label, ...values.slice(0, more)].join(' '),
    ...values.slice(more).map((one) => one.replace(/^(?:NA|NaN|nan)$/, '')),
  ];
}

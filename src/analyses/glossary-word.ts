/** A word of answers, screens and reports. */
export interface GlossaryWord {
  readonly word: string;
  readonly meaning: string;
  /** Where docs/ has more of it, and what: "drawn", "list". */
  readonly more?: readonly [what: string, where: string];
  /** The structure that is drawn beside it. */
  readonly drawn?: { readonly structure: string; readonly facets: Readonly<Record<string, string>> };
}

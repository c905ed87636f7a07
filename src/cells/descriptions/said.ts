/** What a description, or one of its alternatives, says of a facet. */
export interface Said {
  readonly value: string | null;
  readonly state: 'measured' | 'not-observed' | 'absent';
  /** Steps of doubt. */
  readonly doubt: number;
  /** The words that said it. */
  readonly text: string;
  /** Values that were named, where they are not one. */
  readonly several?: readonly string[];
}

/** Words that were not used, and why. */
export interface Rest {
  readonly text: string;
  readonly why: string;
  readonly rule: 'description-rest' | 'suggested-term' | 'ambiguous-word';
  /** Nothing is like the word. */
  readonly unknown?: true;
  /** What may be meant, as a word that would be understood in its place. */
  readonly meant?: string;
}

export const unused = (text: string, why: string): Rest => ({
  text,
  why: `"${text}" was not used: ${why}`,
  rule: 'description-rest',
});

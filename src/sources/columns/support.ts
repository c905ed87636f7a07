/** What the cells of a column say for and against an attribute, each in a few words. */
export interface Support {
  readonly speaksFor: readonly string[];
  readonly speaksAgainst: readonly string[];
  /** Its numbers lie beyond what is possible: a reason to doubt the cells, and of a lesser header its meaning. */
  readonly beyond?: string;
}

export const NEUTRAL: Support = { speaksFor: [], speaksAgainst: [] };
/** Fewer filled cells say nothing against. */
export const FEWEST = 3;
export const speaks = (text: string): Support => ({ speaksFor: [text], speaksAgainst: [] });
export const contradicts = (text: string): Support => ({ speaksFor: [], speaksAgainst: [text] });
export const beyond = (text: string): Support => ({ ...NEUTRAL, beyond: text });

/** The first number of a cell; null where it begins with a word or holds none. */
export function firstNumber(text: string): number | null {
  const found = /[-−–]?\d+(?:[.,]\d+)?|[½¼¾]/u.exec(text)?.[0];
  if (found === undefined || /^\p{L}{2,}/u.test(text)) return null;
  const value = Number(
    found
      .replace(',', '.')
      .replace(/[−–]/, '-')
      .replace('½', '0.5')
      .replace('¼', '0.25')
      .replace('¾', '0.75'),
  );
  return Number.isNaN(value) ? null : value;
}

/** The upper one of an even number of values. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1]!;
}

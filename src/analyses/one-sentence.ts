/** Making an answer fit into one sentence that can be read aloud. */

/** As many words as an answer may have. */
export const MOST_WORDS = 30;

/** As many as an analysis writes: three are left to say last that fragments were counted, where nobody has said what an object is. */
export const MOST_WRITTEN = MOST_WORDS - 3;

const wordsIn = (text: string) => text.split(/\s+/).length;

/**
 * The first part with as many of the others, in their order, as leave the sentence within its words; each part
 * brings its own comma. A full stop is set at the end.
 *
 * @param first ways to begin, the fullest first; the last is taken where none is short enough.
 * @param more of each part ways to say it, the fullest first; none for a part that is not to be said.
 */
export function oneSentence(first: readonly string[], ...more: readonly (readonly string[])[]): string {
  return withinWords(MOST_WRITTEN, first, more);
}

/** The same within as many words as are given. */
export function withinWords(
  most: number,
  first: readonly string[],
  more: readonly (readonly string[])[],
): string {
  let said = first.find((text) => wordsIn(text) <= most) ?? first[first.length - 1];
  for (const part of more) said += part.find((text) => wordsIn(`${said}${text}`) <= most) ?? '';
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

/** Making an answer fit into one sentence that can be read aloud. */

/** As many words as an answer may have. */
export const MOST_WORDS = 30;

const wordsIn = (text: string) => text.split(/\s+/).length;

/**
 * The first part with as many of the others, in their order, as leave the sentence within its words; each part
 * brings its own comma. A full stop is set at the end.
 *
 * @param first ways to begin, the fullest first; the last is taken where none is short enough.
 * @param more of each part ways to say it, the fullest first; none for a part that is not to be said.
 */
export function oneSentence(first: readonly string[], ...more: readonly (readonly string[])[]): string {
  let said = first.find((text) => wordsIn(text) <= MOST_WORDS) ?? first[first.length - 1];
  for (const part of more) said += part.find((text) => wordsIn(`${said}${text}`) <= MOST_WORDS) ?? '';
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

/** "A, B and C"; "A, B and 4 more" where there are more than `most`. */
export function nameSome(labels: readonly string[], most = 3): string {
  const named = labels.length <= most + 1 ? labels : labels.slice(0, most);
  const rest = labels.length - named.length;
  const parts = rest > 0 ? [...named, `${rest} more`] : named;
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1]}`;
}

const NUMBERS = ['none', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** Small whole numbers in words. */
export function numberWord(count: number): string {
  return NUMBERS[count] ?? String(count);
}

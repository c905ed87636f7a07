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

/**
 * The sentence with a last clause that has to be said. Where there is no room for it, first what stands in brackets is
 * left out, then one part after another from the end; who cannot be ruled out is not named before it is passed over.
 * Nothing of what is left is changed.
 *
 * @param clause ways to say it, the fullest first; each brings its own comma.
 */
export function endingWith(sentence: string, clause: readonly string[]): string {
  const whole = sentence.replace(/\.$/, '');
  const shorter = [whole, whole.replace(/ \([^()]*\)/g, '')];
  for (let last = shorter[1]; ; ) {
    const cut = Math.max(last.lastIndexOf('; '), last.lastIndexOf(', '));
    if (cut < 0) break;
    const left = last.slice(0, cut);
    if (RIVALS.test(last) && !RIVALS.test(left))
      for (const text of [shorter[1], last]) shorter.push(text.replace(RIVALS, ', but not for sure'));
    shorter.push(left);
    last = left;
  }
  const all = shorter.flatMap((text) => clause.map((end) => `${text}${end}.`));
  return all.find((text) => wordsIn(text) <= MOST_WORDS) ?? all[all.length - 1];
}

/** Who cannot be ruled out as the first. */
const RIVALS = /, though (?:(?!, though ).)+ cannot be ruled out/;

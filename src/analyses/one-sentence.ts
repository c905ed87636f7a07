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
 * left out, then one part after another from the end; who cannot be ruled out is not named before it is passed over, and
 * a part that says what the rest hangs on goes last of all. Nothing of what is left is changed: a bracket that belongs to
 * a name ("Skaith Hole (N)") stays with it.
 *
 * @param clause ways to say it, the fullest first; each brings its own comma.
 * @param instead what is said in its place before a part goes that the rest hangs on.
 * @param names labels that may stand in the sentence.
 */
export function endingWith(
  sentence: string,
  clause: readonly string[],
  instead: readonly string[] = [],
  names: readonly string[] = [],
): string {
  const whole = sentence.replace(/\.$/, '');
  const bare = withoutBrackets(whole, names);
  const sound = [whole, bare];
  const lame: string[] = [];
  for (let last = bare; ; ) {
    const cut = Math.max(last.lastIndexOf('; '), last.lastIndexOf(', '));
    if (cut < 0) break;
    const left = last.slice(0, cut);
    if (RIVALS.test(last) && !RIVALS.test(left))
      for (const text of [bare, last]) sound.push(text.replace(RIVALS, ', but not for sure'));
    (lame.length > 0 || CONDITION.test(last.slice(cut)) ? lame : sound).push(left);
    last = left;
  }
  const ending = (texts: readonly string[], ends: readonly string[]) =>
    texts.flatMap((text) => ends.map((end) => `${text}${end}.`));
  const all = [...ending(sound, clause), ...ending(sound, instead), ...ending(lame, clause)];
  return all.find((text) => wordsIn(text) <= MOST_WORDS) ?? all[all.length - 1];
}

/** The text without what stands in brackets, but for those with which a name ends. */
function withoutBrackets(text: string, names: readonly string[]): string {
  const ended = names.filter((name) => / \([^()]*\)$/.test(name));
  return text.replace(/ \([^()]*\)/g, (bracket, at: number) => {
    const upTo = text.slice(0, at + bracket.length).toLowerCase();
    return ended.some((name) => upTo.endsWith(name.toLowerCase())) ? bracket : '';
  });
}

/** Who cannot be ruled out as the first. */
const RIVALS = /, though (?:(?!, though ).)+ cannot be ruled out/;
/** Words of a part without which the rest would be another verdict. */
const CONDITION =
  /cannot be|could not|unless|as long as|\bonly\b|may be|hang|but (?:not|are)|though|as recorded|more closely/;

/**
 * Reduces a wording to what two recorders would agree on: case, accents, punctuation and the
 * letters ß æ ø å œ ł are levelled, so that "Fund-Nr." and "fund nr" are one wording.
 *
 * - "&" and "+" between words become "and" ("S+Z" is not "S/Z"); "#", "№" and "n°" become "no".
 * - Letters of other scripts are kept; a wording of signs alone ("||") folds to "".
 *
 * @example foldText('  Œillet, Größe (ø) ') // 'oeillet grosse o'
 */
export function foldText(text: string): string {
  if (PLAIN_WORDS.test(text)) return text.toLowerCase();
  return text
    .replace(/№|#|\bn[°º]/giu, ' no ')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[ßæøœłđðþı]/gu, (letter) => SPECIAL_LETTERS[letter] ?? letter)
    .replace(/(?<=[\p{L}\p{N}])\s*[&+]\s*(?=[\p{L}\p{N}])/gu, ' and ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** Most wordings need no more than their capitals levelled. */
const PLAIN_WORDS = /^[a-z\d]+(?: [a-z\d]+)*$/i;

const SPECIAL_LETTERS: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  ø: 'o',
  œ: 'oe',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
};

/**
 * The key under which a wording is looked up: folded, and written without spaces, so that
 * "Fund Nr", "Fundnr." and "FUND-NR" meet. Digits keep their distance ("2/1" is not "21").
 * A wording of signs alone is its own key.
 */
export function lookupKey(text: string): string {
  const folded = foldText(text);
  return folded === '' ? text.trim() : folded.replace(/(?<!\d) | (?!\d)/g, '');
}

/**
 * Parts words at a change of case and between letters and digits: "rowSpacing2" -> "row Spacing 2". The
 * signs for a diameter and for an empty set, often typed for Ø, become the letter, which folding keeps.
 */
export function splitWords(text: string): string {
  return text
    .replace(/[⌀∅]/gu, 'Ø')
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .replace(/(\p{L})(\p{N})/gu, '$1 $2')
    .replace(/(\p{N})(\p{L})/gu, '$1 $2');
}

import { foldText } from './folding.ts';

/** How alike two wordings are, and in what: used for suggestions only, never to take a reading. */
export interface Likeness {
  /** 0 to 1. */
  readonly score: number;
  /** Completes "… because it": "differs by 1 letter". */
  readonly reason: string;
}

/** Words that carry no distinction between one header or term and another. */
const SMALL_WORDS = new Set(
  (
    'the of in on for and a an to from with der die das den dem des und im am von zur zum mit fur je pro ' +
    'le la les l de du d des et en au aux par un une il lo gli i di del della delle dei nel nella per e ' +
    'el los las y con por og af i pa med til den det sp spp cf'
  ).split(' '),
);

/** Endings that the six languages add for number, gender, case or to make an adjective. */
const ENDINGS =
  /(?:bindiges|bindiger|bindige|bindig|bindung|iges|iger|ige|ig|ings?|ed|es|en|er|em|et|ene|ne|ees|ee|s|e|n|a|o|i|as|os)$/u;

/**
 * Compares a wording with a known one by the four ways in which specialists' wordings differ: order
 * and small words, inflection, slips of the pen (edit distance with transposition, one error in five
 * letters), and further words beside the known ones.
 *
 * @returns null where they are not alike. Symmetric in order, not in "further words".
 */
export function likeness(wording: Wording, known: Wording): Likeness | null {
  if (wording.content !== '' && wording.content === known.content) {
    return { score: 0.96, reason: 'has the same words in another order or with small words between them' };
  }
  if (wording.stems !== '' && wording.stems === known.stems) {
    return { score: 0.92, reason: 'is another inflection of the same word' };
  }
  const slips = slipsBetween(wording, known);
  if (slips !== null) {
    const longer = Math.max(wording.compact.length, known.compact.length);
    return {
      score: 0.95 * (1 - slips / longer),
      reason: `differs by ${slips} ${slips === 1 ? 'letter' : 'letters'}`,
    };
  }
  return sharedWords(wording, known);
}

/** A wording prepared once for many comparisons. */
export interface Wording {
  readonly compact: string;
  readonly words: readonly string[];
  /** Content words sorted and joined; "" where there are none. */
  readonly content: string;
  readonly stems: string;
  /** The stem of each word, in the order of the words. */
  readonly wordStems: readonly string[];
  /** One bit a letter that occurs (of five-bit classes): unlike sets cannot be one slip apart. */
  readonly letters: number;
}

export function prepareWording(text: string): Wording {
  const folded = foldText(text);
  const all = folded.split(' ').filter((word) => word !== '');
  const words = all.filter((word) => !SMALL_WORDS.has(word));
  const stems = words.map(stem);
  return {
    compact: all.join(''),
    words,
    content: [...words].sort().join(' '),
    stems: [...stems].sort().join(' '),
    wordStems: stems,
    letters: letterSet(all.join('')),
  };
}

function letterSet(text: string): number {
  let set = 0;
  for (let i = 0; i < text.length; i++) set |= 1 << (text.charCodeAt(i) & 31);
  return set;
}

function bits(set: number): number {
  let rest = set;
  let count = 0;
  for (; rest !== 0; rest &= rest - 1) count++;
  return count;
}

function stem(word: string): string {
  if (word.length < 5) return word;
  const shorter = word.replace(/ies$/u, 'y').replace(ENDINGS, '');
  return shorter.length >= 4 ? shorter.replace(/y$/u, '') : word;
}

/** Number of slips between two words, null where it is more than one in five letters (three at most). */
function slipsBetween(wording: Wording, known: Wording): number | null {
  const [a, b] = [wording.compact, known.compact];
  const allowed = Math.min(3, Math.floor(Math.min(a.length, b.length) / 5 + 0.25));
  if (allowed === 0 || Math.abs(a.length - b.length) > allowed) return null;
  // In a word of four letters another first letter is another word: "cord" is no slip for "bord".
  if (Math.min(a.length, b.length) < 5 && a[0] !== b[0]) return null;
  // A slip takes at most one letter out of the set and puts one in.
  if (bits(wording.letters ^ known.letters) > 2 * allowed) return null;
  if (/\d/u.test(a + b) && a.replace(/\D/gu, '') !== b.replace(/\D/gu, '')) return null;
  const distance = editDistance(a, b);
  return distance <= allowed ? distance : null;
}

/**
 * Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours
 * (Damerau 1964, Communications of the ACM 7:171-176; each stretch edited once).
 */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i++) {
    const current = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let best = Math.min(last[j]! + 1, current[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, beforeLast[j - 2]! + 1);
      }
      current.push(best);
    }
    beforeLast = last;
    last = current;
  }
  return last[b.length]!;
}

/** All content words of the known wording stand in the wording, beside others. */
function sharedWords(wording: Wording, known: Wording): Likeness | null {
  if (known.words.length === 0 || wording.words.length === 0) return null;
  const shared = known.words.filter((_, at) => wording.wordStems.includes(known.wordStems[at]!));
  if (shared.length === 0) return null;
  const length = (words: readonly string[]) => words.reduce((sum, word) => sum + word.length, 0);
  const sharedLength = length(shared);
  if (sharedLength < 4) return null;
  const score = (2 * sharedLength) / (length(wording.words) + length(known.words));
  const whole = shared.length === known.words.length;
  if (score < (whole ? 0.3 : 0.6)) return null;
  return { score: 0.9 * score + (whole ? 0.05 : 0), reason: `shares the words "${shared.join(' ')}"` };
}

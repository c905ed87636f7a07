import { foldText, lookupKey } from '../../attributes/folding.ts';
import { editDistance } from '../../attributes/likeness.ts';
import { naturalOrder } from '../../fragments/natural-order.ts';
import type { NameDecision } from './name-decision.ts';
import { inOneLanguage, shortInOneLanguage } from './words-of-time.ts';

/** Attributes whose labels are names: two spellings of one would be compared as two. */
export const NAMED = ['site', 'phase', 'period', 'region', 'recorder'] as const;

/** Two names of one attribute that may be one, and why. */
export interface NearNames {
  readonly attribute: string;
  /** The one to keep comes first: the whole one of an abbreviation, else the one that more records bear. */
  readonly names: readonly [string, string];
  readonly why: string;
  /**
   * `certain` where they differ in capitals alone; `likely` in the order, language or length of their words, in accents
   * or signs: compared as one until somebody says that they are two; `doubtful` by a slip of the pen, which may as well be
   * another name: compared as written.
   */
  readonly sure: 'certain' | 'likely' | 'doubtful';
}

/**
 * Names that may be one, of one attribute: the same words in another order or spelling, an abbreviation, a slip of a
 * letter or two, or the same word in another language. Names that differ in a number are never near.
 *
 * @param counts name -> records that bear it.
 * @param decided pairs that somebody has answered are left out.
 */
export function nearNames(
  attribute: string,
  counts: ReadonlyMap<string, number>,
  decided: readonly NameDecision[] = [],
): readonly NearNames[] {
  const answered = new Set(
    decided
      .filter((one) => one.attribute === attribute)
      .flatMap(({ name, also, not }) => [...also, ...not].map((other) => pairKey(name, other))),
  );
  const names = [...counts.keys()].sort(naturalOrder);
  const words = names.map((name) => foldText(name).split(' '));
  return names.flatMap((first, i) =>
    names.slice(i + 1).flatMap((second, after): NearNames[] => {
      const found = whyNear(first, second, words[i]!, words[i + 1 + after]!);
      if (found === null || answered.has(pairKey(first, second))) return [];
      const pair = [first, second].sort((a, b) =>
        found.why === ABBREVIATES ? b.length - a.length : (counts.get(b) ?? 0) - (counts.get(a) ?? 0),
      );
      return [{ attribute, names: [pair[0]!, pair[1]!], ...found }];
    }),
  );
}

/**
 * Each name in the spelling that most of the rows with a `certain` or `likely` spelling of it have.
 *
 * @param names of the rows, "" where a row has none.
 */
export function inOneSpelling(
  attribute: string,
  names: readonly string[],
  decided: readonly NameDecision[],
): readonly string[] {
  const counts = new Map<string, number>();
  for (const name of names) if (name !== '') counts.set(name, (counts.get(name) ?? 0) + 1);
  const kept = spellings(nearNames(attribute, counts, decided).filter(({ sure }) => sure !== 'doubtful'));
  return names.map(kept);
}

/** The spelling that each name has once near names are taken as one; names near to one name are all that one. */
export function spellings(pairs: readonly Pick<NearNames, 'names'>[]): (name: string) => string {
  const next = new Map<string, string>();
  const rootOf = (name: string): string => {
    const other = next.get(name);
    return other === undefined ? name : rootOf(other);
  };
  for (const { names } of pairs) {
    const [kept, other] = [rootOf(names[0]), rootOf(names[1])];
    if (kept !== other) next.set(other, kept);
  }
  return rootOf;
}

function pairKey(a: string, b: string): string {
  return JSON.stringify([lookupKey(a), lookupKey(b)].sort());
}

function whyNear(
  first: string,
  second: string,
  a: readonly string[],
  b: readonly string[],
): Pick<NearNames, 'why' | 'sure'> | null {
  const digits = (words: readonly string[]) => words.filter((word) => NUMBER.test(word)).join(' ');
  if (digits(a) !== digits(b)) return null;
  const likely = (why: string) => ({ why, sure: 'likely' as const });
  if (inCapitals(first) === inCapitals(second))
    return { why: 'they differ in capitals alone', sure: 'certain' };
  if (lookupKey(first) === lookupKey(second)) return likely('they differ in capitals, accents or signs');
  const sorted = (words: readonly string[]) => [...words].sort().join(' ');
  if (sorted(a) === sorted(b)) return likely('they are the same words in another order');
  if (sorted(a.map(inOneLanguage)) === sorted(b.map(inOneLanguage)))
    return likely('they may be the same word in two languages');
  const shortened = abbreviates(a, b) || abbreviates(b, a);
  const left = Math.abs(a.join('').length - b.join('').length);
  // "Galery" for "Gallery" leaves out a letter as well; who abbreviates leaves out more.
  if (shortened && left > 1) return likely(ABBREVIATES);
  const [short, long] = [a.join(''), b.join('')].sort((x, y) => x.length - y.length) as [string, string];
  const slips = short.length >= 10 ? 2 : short.length >= 5 ? 1 : 0;
  if (slips > 0 && short.charAt(0) === long.charAt(0) && editDistance(short, long) <= slips)
    return { why: 'they differ by a letter or two', sure: 'doubtful' };
  if (shortened) return likely(ABBREVIATES);
  if (sorted(a.map(shortInOneLanguage)) === sorted(b.map(shortInOneLanguage)))
    return likely('one may be short for the same word in another language');
  return null;
}

/** Words of three letters and more in small letters; "IIa" and "IIA", "Trench a" and "Trench A" may be two of a series. */
function inCapitals(name: string): string {
  return name
    .trim()
    .split(/\s+/)
    .map((word) => (/^\p{L}{3,}$/u.test(word) && !/^[ivx]+[a-z]?$/i.test(word) ? word.toLowerCase() : word))
    .join(' ');
}

const ABBREVIATES = 'one may abbreviate the other';

/** A number, a Roman numeral or a single letter: what tells names of a series apart. */
const NUMBER = /^(?:\d.*|[ivx]+|[a-z])$/;

/** Word by word one is the other or its short form, and at least one word is short. */
function abbreviates(short: readonly string[], long: readonly string[]): boolean {
  if (short.length !== long.length) return false;
  let cut = 0;
  for (const [place, word] of short.entries()) {
    const whole = long[place]!;
    if (word === whole) continue;
    if (!isShortFor(word, whole)) return false;
    cut++;
  }
  // A name of one word needs more than its first letters: "Hol" is not "Holm" and "Holmby" at once.
  return cut > 0 && (long.length > 1 ? cut < long.length : short[0]!.length >= 4);
}

/** "ldg" for "landing": its first letter, then letters of the word in their order. */
function isShortFor(short: string, whole: string): boolean {
  if (short.length < 2 || short.length >= whole.length || short.charAt(0) !== whole.charAt(0)) return false;
  let at = 0;
  for (const letter of whole) if (letter === short.charAt(at)) at++;
  return at === short.length;
}

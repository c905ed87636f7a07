import { foldText, lookupKey } from '../../attributes/folding.ts';
import { naturalOrder } from '../../fragments/natural-order.ts';
import type { NameDecision } from './name-decision.ts';
import { inOneLanguage } from './words-of-time.ts';

/**
 * A name made up of other names of the same attribute: "Harrow / Kelder" beside "Harrow" and "Kelder", "früh-spät", "E/L".
 * It says that the record is of one of them (or of both), and is no further site or period unless somebody says so.
 */
export interface CompoundName {
  readonly attribute: string;
  readonly name: string;
  /** The names that it may stand for, two or more. */
  readonly of: readonly string[];
  readonly records: number;
  /** Somebody has said that it is one of them. */
  readonly settled: boolean;
}

/**
 * The names that may be made up of others. One that somebody has called a name of its own ("not"), or another spelling of
 * a single one ("also"), is none.
 *
 * @param counts name -> records that bear it.
 */
export function compoundNames(
  attribute: string,
  counts: ReadonlyMap<string, number>,
  decided: readonly NameDecision[] = [],
): readonly CompoundName[] {
  const said = decided.filter((one) => one.attribute === attribute);
  const names = [...counts.keys()].sort(naturalOrder);
  const looked = names.map((name) => ({ name, words: wordsOf(name) }));
  return names.flatMap((name): CompoundName[] => {
    const own = said.find((one) => lookupKey(one.name) === lookupKey(name));
    const records = counts.get(name)!;
    if (own?.oneOf !== undefined && own.oneOf.length > 0)
      return [{ attribute, name, of: own.oneOf, records, settled: true }];
    if (own !== undefined && own.not.length > 0) return [];
    const of = madeOf(
      name,
      looked.filter((other) => other.name !== name),
    );
    return of === null ? [] : [{ attribute, name, of, records, settled: false }];
  });
}

interface Looked {
  readonly name: string;
  readonly words: readonly string[];
}

/** Signs and words of six languages that stand between names; a hyphen stands inside names as well. */
const BETWEEN =
  /\s*[/|+&;,]\s*|\s+[-–—]\s+|[–—]|\s+(?:or|and|to|oder|und|bzw\.?|bis|ou|et|à|o|e|a|y|u|eller|og|til)\s+/iu;
const HYPHEN = /(?<=\p{L}|\d)-(?=\p{L}|\d)/u;
const MOST_PARTS = 4;

function madeOf(name: string, others: readonly Looked[]): readonly string[] | null {
  for (const sign of [BETWEEN, HYPHEN]) {
    const parts = name.split(new RegExp(sign, sign.flags)).map((part) => part.trim());
    if (parts.length < 2 || parts.length > MOST_PARTS || parts.includes('')) continue;
    const met = parts.map((part) => namedBy(part, parts, others));
    if (met.some((names) => names.length === 0)) continue;
    const all = [...new Set(met.flat())];
    if (all.length > 1) return all;
  }
  return null;
}

/** The names that a part stands for: the same words, else words that it begins or that begin it, else its initials. */
function namedBy(part: string, parts: readonly string[], others: readonly Looked[]): readonly string[] {
  const own = wordsOf(part);
  // "Phase 1/2": the first part has words that the others leave out; "North and South Ness": the last has.
  const lead = wordsOf(parts[0]!).slice(0, -1);
  const same = others.filter(({ words }) => equal(words, own) || equal(words, [...lead, ...own]));
  if (same.length > 0) return same.map(({ name }) => name);
  const longer = others.filter(({ words }) => begins(words, own) || begins(own, words));
  if (longer.length === 1) return [longer[0]!.name];
  const initials = lookupKey(part);
  if (!/^\p{L}{1,3}$/u.test(initials)) return [];
  return others
    .filter(
      ({ name, words }) =>
        !isMade(name) && words.join('').startsWith(initials) && words.join('') !== initials,
    )
    .map(({ name }) => name);
}

const isMade = (name: string): boolean => BETWEEN.test(name) || HYPHEN.test(name);

const wordsOf = (name: string): readonly string[] => foldText(name).split(' ').map(inOneLanguage);
const equal = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((word, at) => word === b[at]);
const begins = (short: readonly string[], long: readonly string[]): boolean =>
  short.length < long.length && short.every((word, at) => word === long[at]);

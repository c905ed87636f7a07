import { z } from 'zod';
import { foldText, lookupKey } from '../../attributes/folding.ts';
import { editDistance } from '../../attributes/likeness.ts';
import { naturalOrder } from '../../fragments/natural-order.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';
import { assemblageName, nameIn } from '../reading/assemble.ts';
import { inOneLanguage, shortInOneLanguage } from './words-of-time.ts';

/**
 * Names of places, phases and people as a vocabulary of the study: "Drommavel ldg" and "Drommavel Landing", "früh"
 * and "Early" are asked about once, and the answer is kept with the study.
 */

export const nameDecision = z
  .strictObject({
    attribute: z
      .string()
      .min(1)
      .meta({ description: 'Attribute whose names these are', refersTo: 'attribute' }),
    name: z.string().min(1).meta({ description: 'The name that is used' }),
    also: z.array(z.string().min(1)).default([]).meta({ description: 'Other spellings of the same' }),
    not: z.array(z.string().min(1)).default([]).meta({ description: 'Names that look alike and are others' }),
  })
  .describe('One name of a place, phase, period, region or person, with its other spellings');

export type NameDecision = z.output<typeof nameDecision>;

/** Attributes whose labels are names: two spellings of one would be compared as two. */
export const NAMED = ['site', 'phase', 'period', 'region', 'recorder'] as const;

/** Two names of one attribute that may be one, and why. */
export interface NearNames {
  readonly attribute: string;
  /** The one that more records bear comes first. */
  readonly names: readonly [string, string];
  readonly why: string;
}

/** Puts the name of the study in place of its other spellings, with a line in the ledger for every cell. */
export function applyNames(
  columns: Map<string, Column>,
  decisions: readonly NameDecision[],
  origins: readonly number[],
  ledger: Ledger,
): void {
  for (const id of new Set(decisions.map(({ attribute }) => attribute))) {
    const column = columns.get(id);
    if (column === undefined || column.kind === 'numeric') continue;
    const nameOf = new Map(
      decisions
        .filter(({ attribute }) => attribute === id)
        .flatMap(({ name, also }) => also.map((spelling) => [lookupKey(spelling), name] as const)),
    );
    const changed = (name: string) => {
      const kept = nameOf.get(lookupKey(name));
      return kept === undefined || kept === name ? null : kept;
    };
    for (const [at, row] of origins.entries()) {
      const own = nameIn(column, at);
      const kept = own === '' ? null : changed(own);
      if (kept === null) continue;
      const why = `The study says that "${own}" is another spelling of "${kept}".`;
      const column_ = column.attribute.label;
      enter(ledger, { row, column: column_, raw: own, readAs: kept, level: 'read', rule: 'name', why });
    }
    columns.set(id, renamed(column, changed));
  }
}

/**
 * The table with near names taken as one, under the name that more records bear; a name that is near to several takes
 * them all together. Assemblages follow their site and phase.
 */
export function joinNear(table: FragmentTable, pairs: readonly NearNames[]): FragmentTable {
  const columns = new Map(table.columns);
  for (const id of new Set(pairs.map(({ attribute }) => attribute))) {
    const column = columns.get(id);
    if (column === undefined) continue;
    const nameOf = new Map<string, string>();
    const rootOf = (name: string): string => {
      const next = nameOf.get(name);
      return next === undefined ? name : rootOf(next);
    };
    for (const { attribute, names } of pairs) {
      if (attribute !== id) continue;
      const [kept, other] = names.map(rootOf);
      if (kept !== other) nameOf.set(other, kept);
    }
    columns.set(
      id,
      renamed(column, (name) => {
        const root = rootOf(name);
        return root === name ? null : root;
      }),
    );
  }
  if (pairs.every(({ attribute }) => attribute !== 'site' && attribute !== 'phase'))
    return { ...table, columns };
  const [site, phase] = [columns.get('site'), columns.get('phase')];
  const assemblage = table.assemblage.map((_, row) => assemblageName(nameIn(site, row), nameIn(phase, row)));
  return { ...table, columns, assemblage };
}

function renamed(column: Column, changed: (name: string) => string | null): Column {
  if (column.kind === 'numeric') return column;
  if (column.kind === 'text')
    return { ...column, raw: column.raw.map((text) => changed(text.trim()) ?? text) };
  const levels = [...new Set(column.levels.map((level) => changed(level) ?? level))];
  const place = column.levels.map((level) => levels.indexOf(changed(level) ?? level));
  return { ...column, levels, codes: column.codes.map((code) => (code < 0 ? code : place[code]!)) };
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
  return names.flatMap((first, i) =>
    names.slice(i + 1).flatMap((second): NearNames[] => {
      if (answered.has(pairKey(first, second))) return [];
      const why = whyNear(first, second);
      if (why === null) return [];
      const pair = [first, second].sort((a, b) => (counts.get(b) ?? 0) - (counts.get(a) ?? 0));
      return [{ attribute, names: [pair[0]!, pair[1]!], why }];
    }),
  );
}

function pairKey(a: string, b: string): string {
  return JSON.stringify([lookupKey(a), lookupKey(b)].sort());
}

function whyNear(first: string, second: string): string | null {
  const [a, b] = [foldText(first).split(' '), foldText(second).split(' ')];
  const digits = (words: readonly string[]) => words.filter((word) => NUMBER.test(word)).join(' ');
  if (digits(a) !== digits(b)) return null;
  if (lookupKey(first) === lookupKey(second)) return 'they differ in capitals, accents or signs';
  const sorted = (words: readonly string[]) => [...words].sort().join(' ');
  if (sorted(a) === sorted(b)) return 'they are the same words in another order';
  if (sorted(a.map(inOneLanguage)) === sorted(b.map(inOneLanguage)))
    return 'they may be the same word in two languages';
  const [short, long] = [a.join(''), b.join('')].sort((x, y) => x.length - y.length) as [string, string];
  const slips = short.length >= 10 ? 2 : short.length >= 5 ? 1 : 0;
  if (slips > 0 && short.charAt(0) === long.charAt(0) && editDistance(short, long) <= slips)
    return 'they differ by a letter or two';
  if (abbreviates(a, b) || abbreviates(b, a)) return 'one may abbreviate the other';
  if (sorted(a.map(shortInOneLanguage)) === sorted(b.map(shortInOneLanguage)))
    return 'one may be short for the same word in another language';
  return null;
}

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

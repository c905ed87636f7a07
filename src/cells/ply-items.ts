import { notUnderstood } from './notes.ts';
import type { Direction } from './ply-direction.ts';
import type { Note } from './reading.ts';
import { foldCell, plainSigns } from './text.ts';
import { STRENGTH } from './wording/twist-words.ts';

export type PlyItem =
  | { readonly kind: 'letter'; readonly twist: Direction; readonly capital: boolean }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'group'; readonly items: readonly PlyItem[] };

/** A notation taken apart: its symbols, and what words say about them. */
export interface PlyItems {
  readonly symbols: readonly PlyItem[];
  /** Letter that a word calls plied, and letter that a word calls spun, where both or one is named. */
  readonly outer: Direction | null;
  readonly inner: Direction | null;
  /** "2-ply". */
  readonly count: number | null;
}

const words = (text: string): RegExp => new RegExp(`^(?:${text.trim().replace(/\s+/gu, '|')})$`, 'u');

/** After their letter: "S-plied". */
const PLIED = words(
  'pl(?:y|ied|ies|yed|ying) gezwirnt\\p{L}* zwirn\\p{L}* verzwirnt\\p{L}* tvundet tvundne tvunnet tvunne tvinnet tvinnede slaet slaede doubled cabled fach facher? fadig\\p{L}*',
);
/** Before their letter: "retors S", "torsión S". */
const PLIED_BEFORE = words(
  'retors retor(?:se|ses)? retordue?s? cablee?s? ritort[oaie] torsion torsione torcid[oa]s? retorcid[oa]s? retorsion final zusammengedreht',
);
const SPUN = words(
  'spun spin gesponnen\\p{L}* spundet spundne spunnet spunne singles? einzelfaden einfach\\p{L}*',
);
const SPUN_BEFORE = words('filee?s? fils filat[oaie] hilad[oa]s? simples?');
const STRANDS = words(
  'strand(?:s|ed)? bouts? cabos? brins? cap[oi] hebras? trad trade[rn]? tradet yarns? threads? garne?n? garnern faden hilos? fili strange?n elementi? elements? ends',
);
const BETWEEN = words(
  'of from de aus di af av mit with and in the an? en un et y e og und to into als zu together by',
);
const NOISE = words(
  'twist(?:ed)? gedreht\\p{L}* drehung cord schnur direction right gezwirnter twine twined torsion',
);
/** The number of strands in one word with their plying: "zweifach", "totrådet". */
const FOLD = words(
  '(?:zwei|drei|vier|sechs)fach\\p{L}* (?:zwei|drei|vier)fadig\\p{L}* (?:to|tre|fire)trads? (?:to|tre|fire)trad\\p{L}*',
);
const NUMBERS: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  six: 6,
  eins: 1,
  zwei: 2,
  drei: 3,
  vier: 4,
  deux: 2,
  trois: 3,
  quatre: 4,
  due: 2,
  tre: 3,
  quattro: 4,
  dos: 2,
  tres: 3,
  cuatro: 4,
  to: 2,
  fire: 4,
  sechs: 6,
  double: 2,
};

type Part =
  | { kind: 'letters'; text: string }
  | { kind: 'number'; value: number }
  | { kind: 'fold'; value: number }
  | { kind: 'plied' | 'spun'; before: boolean }
  | { kind: 'open' | 'close' | 'strands' | 'slash' };

/** "S2z plied yarn": a notation that is whole, and the word for what it is. */
const WHOLE = /^([SZ]\d?\(?\d?[sz]\)?|\d[sz][SZ]|[sz]\d?[SZ])[ ,]+(\p{L}[\p{L} -]*)$/u;
const saysPly = (word: string): boolean =>
  !/^[szi]+$/iu.test(word) && [PLIED, STRANDS, NOISE, STRENGTH].some((words) => words.test(foldCell(word)));

/** Cuts a ply notation into symbols and words; a note where a word is not known. */
export function plyItems(text: string): PlyItems | Note {
  const whole = WHOLE.exec(plainSigns(text));
  if (whole !== null && whole[2]!.match(/[\p{L}\p{M}]+/gu)?.every(saysPly) === true)
    return plyItems(whole[1]!);
  const parts: Part[] = [];
  for (const [raw] of plainSigns(text)
    .slice(0, 120)
    .matchAll(/\d+|[\p{L}\p{M}]+|[^\s\p{L}\p{M}\d]/gu)) {
    const part = partOf(raw);
    if (part === 'unknown') {
      return notUnderstood(
        'ply-notation',
        `"${raw}" is not understood in a ply notation; the text is kept without a reading`,
      );
    }
    if (part?.kind === 'fold')
      parts.push({ kind: 'number', value: part.value }, { kind: 'plied', before: false });
    else if (part !== null) parts.push(part);
  }
  if (parts.some(({ kind }) => kind === 'slash') && !mixedSlash(parts)) {
    return notUnderstood(
      'two-systems',
      'a slash between two letters may part two systems, or singles and ply; split the column or settle it',
    );
  }
  return withRoles(parts.filter(({ kind }) => kind !== 'slash'));
}

function partOf(raw: string): Part | null | 'unknown' {
  if (/^\d+$/u.test(raw)) return { kind: 'number', value: Number(raw) };
  if (/^[szi]{1,4}$/iu.test(raw)) return { kind: 'letters', text: raw };
  if (raw === '(' || raw === '[') return { kind: 'open' };
  if (raw === ')' || raw === ']') return { kind: 'close' };
  if (raw === '/') return { kind: 'slash' };
  if (/^[-,.:;+x×*→>]$/u.test(raw)) return null;
  const folded = foldCell(raw);
  if (FOLD.test(folded)) {
    const [stem = ''] = /^(?:zwei|drei|vier|sechs|to|tre|fire)/u.exec(folded) ?? [];
    return { kind: 'fold', value: NUMBERS[stem]! };
  }
  const number = Object.hasOwn(NUMBERS, folded) ? NUMBERS[folded] : undefined;
  if (number !== undefined) return { kind: 'number', value: number };
  if (PLIED.test(folded) || PLIED_BEFORE.test(folded))
    return { kind: 'plied', before: PLIED_BEFORE.test(folded) };
  if (SPUN.test(folded) || SPUN_BEFORE.test(folded))
    return { kind: 'spun', before: SPUN_BEFORE.test(folded) };
  if (STRANDS.test(folded)) return { kind: 'strands' };
  return BETWEEN.test(folded) || NOISE.test(folded) ? null : 'unknown';
}

/** "z/S": one small and one capital letter, so ply and singles rather than two systems. */
function mixedSlash(parts: readonly Part[]): boolean {
  const letters = parts.flatMap((part) => (part.kind === 'letters' ? [...part.text] : []));
  return (
    letters.length === 2 &&
    letters.some((letter) => letter === letter.toLowerCase()) &&
    letters.some((letter) => letter !== letter.toLowerCase())
  );
}

/** Lets "z-spun", "S-plied", "torsión S" and "2-ply" say which letter or number they mean. */
function withRoles(parts: readonly Part[]): PlyItems | Note {
  let rest = [...parts];
  let outer: Direction | null = null;
  let inner: Direction | null = null;
  let count: number | null = null;
  const plied = parts.some(({ kind }) => kind === 'plied');
  const letterAt = (at: number): Direction | null => {
    const part = rest[at];
    return part?.kind === 'letters' && part.text.length === 1 ? (part.text.toUpperCase() as Direction) : null;
  };
  const lettersIn = () =>
    rest.reduce((sum, part) => sum + (part.kind === 'letters' ? part.text.length : 0), 0);
  for (let at = 0; at < rest.length; at += 1) {
    const part = rest[at];
    const role = part?.kind;
    // "2 fils z": beside a number the word for a spun thread counts them.
    const counted = part?.kind === 'spun' && part.before && rest[at - 1]?.kind === 'number';
    if (role === 'strands' || counted) {
      rest.splice(at, 1);
      at -= 1;
    }
    if (counted || (part?.kind !== 'plied' && part?.kind !== 'spun')) continue;
    const number = rest[at - 1];
    rest.splice(at, 1);
    at -= 1;
    if (number?.kind === 'number' && role === 'plied') {
      count = number.value;
      rest.splice(at, 1);
      at -= 1;
      continue;
    }
    const from =
      [at, at + 1].sort((a, b) => (part.before ? b - a : a - b)).find((place) => letterAt(place) !== null) ??
      -1;
    const letter = letterAt(from);
    if (letter === null || (role === 'plied' ? outer : inner) !== null) continue;
    if (lettersIn() === 1 && outer === null && inner === null && role === 'spun') inner = letter;
    else if (role === 'plied') outer = letter;
    else inner = letter;
    rest.splice(from, 1);
    if (from <= at) at -= 1;
  }
  if (plied && inner !== null && outer === null && lettersIn() === 1) {
    // "z-spun, 2-ply S": the word for the ply took the number, and the letter that is left is its own.
    const at = rest.findIndex(({ kind }) => kind === 'letters');
    outer = letterAt(at);
    rest.splice(at, 1);
  }
  if (plied && inner === null && outer === null && count !== null && lettersIn() === 1) {
    // "zweifach S": plied of so many, and nothing is said of the singles.
    const at = rest.findIndex(({ kind }) => kind === 'letters');
    const capital = (rest[at] as { text: string }).text;
    if (capital === capital.toUpperCase()) {
      outer = letterAt(at);
      rest.splice(at, 1);
    }
  }
  if (outer !== null && inner === null && lettersIn() > 0) {
    // "S-plied from 2 z": the letter that a word calls plied is the final one.
    const bare = rest[0]?.kind === 'open' && rest.at(-1)?.kind === 'close' ? rest.slice(1, -1) : rest;
    rest = [{ kind: 'letters', text: outer }, { kind: 'open' }, ...bare, { kind: 'close' }];
    outer = null;
  }
  if (outer !== null || inner !== null) {
    const number = rest.find((part) => part.kind === 'number');
    if (number?.kind === 'number') count ??= number.value;
    rest = rest.filter((part) => part.kind !== 'number');
    if (outer !== null && inner !== null && rest.length > 0) return misfit();
  }
  const symbols = nest(rest);
  if (symbols === null) return misfit();
  return { symbols, outer, inner, count };
}

const misfit = (): Note =>
  notUnderstood('ply-notation', 'the letters and brackets do not make a ply notation');

function nest(parts: readonly Part[]): readonly PlyItem[] | null {
  const levels: PlyItem[][] = [[]];
  for (const part of parts) {
    const level = levels.at(-1);
    if (level === undefined) return null;
    if (part.kind === 'open') levels.push([]);
    else if (part.kind === 'close') {
      const items = levels.pop();
      const outer = levels.at(-1);
      if (items === undefined || outer === undefined) return null;
      outer.push({ kind: 'group', items });
    } else if (part.kind === 'number') level.push({ kind: 'number', value: part.value });
    else if (part.kind === 'letters') {
      for (const letter of part.text) {
        level.push({
          kind: 'letter',
          twist: letter.toUpperCase() as Direction,
          capital: letter !== letter.toLowerCase(),
        });
      }
    }
  }
  return levels.length === 1 ? (levels[0] ?? null) : null;
}

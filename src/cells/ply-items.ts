import { notUnderstood } from './notes.ts';
import type { Direction } from './ply-direction.ts';
import type { Note } from './reading.ts';
import { foldCell, plainSigns } from './text.ts';

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

const words = (text: string): ReadonlySet<string> => new Set(text.split('|'));

/** After their letter: "S-plied". */
const PLIED = words(
  'plied|ply|plies|plyed|gezwirnt|zwirn|verzwirnt|gezwirntes|tvundet|tvinnet|slaet|doubled|fach|fadig',
);
/** Before their letter: "retors S", "torsión S". */
const PLIED_BEFORE = words('retors|retordu|retordue|ritorto|ritorta|torsion|torcido|retorcido|final');
const SPUN = words(
  'spun|spin|gesponnen|gesponnene|spundet|spundne|spunnet|single|singles|einzelfaden|einfach|einfacher',
);
const SPUN_BEFORE = words('file|filee|fils|filato|filati|hilado|hilada|hilados|simple|simples');
const STRANDS = words(
  'strand|strands|stranded|cabo|cabos|brin|brins|capo|capi|trad|trade|trader|yarn|yarns|threads|garne|faden',
);
const BETWEEN = words('of|from|de|aus|di|af|av|mit|with|and|in|the|a|en|un|et|y|e|og|und');
const NOISE = words(
  'twist|twisted|gedreht|gedrehte|drehung|torsione|cord|yarn|schnur|direction|right|gezwirnter|twine|twined',
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
  zweifach: 2,
  dreifach: 3,
  double: 2,
};

type Part =
  | { kind: 'letters'; text: string }
  | { kind: 'number'; value: number }
  | { kind: 'plied' | 'spun'; before: boolean }
  | { kind: 'open' | 'close' | 'strands' | 'slash' };

/** Cuts a ply notation into symbols and words; a note where a word is not known. */
export function plyItems(text: string): PlyItems | Note {
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
    if (part !== null) parts.push(part);
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
  const number = Object.hasOwn(NUMBERS, folded) ? NUMBERS[folded] : undefined;
  if (number !== undefined) return { kind: 'number', value: number };
  if (PLIED.has(folded) || PLIED_BEFORE.has(folded))
    return { kind: 'plied', before: PLIED_BEFORE.has(folded) };
  if (SPUN.has(folded) || SPUN_BEFORE.has(folded)) return { kind: 'spun', before: SPUN_BEFORE.has(folded) };
  if (STRANDS.has(folded)) return { kind: 'strands' };
  return BETWEEN.has(folded) || NOISE.has(folded) ? null : 'unknown';
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
  if (outer !== null && inner === null && lettersIn() > 0) {
    // "S-plied from 2 z": the letter that a word calls plied is the final one.
    rest = [{ kind: 'letters', text: outer }, { kind: 'open' }, ...rest, { kind: 'close' }];
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

import { flagged, notUnderstood, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import type { DateToken } from './words.ts';

/** Years in astronomical numbering. */
export interface YearSpan {
  readonly low: number;
  readonly high: number;
  readonly about: boolean;
  readonly notes: readonly Note[];
}

type SideEra = 'BC' | 'AD' | 'cal BP';

/** One side of a range as it is written. */
interface Side {
  number: number | undefined;
  ordinal?: boolean;
  spread: number | undefined;
  years: 10 | 100 | 1000 | undefined;
  /** "2nd half": the second of two parts. */
  part: { at: number; of: number } | undefined;
  era: SideEra | undefined;
}

/** Puts the parts of a date together; a not-understood note where they make none. */
export function readSpan(tokens: readonly DateToken[], era: SideEra | undefined): YearSpan | Note {
  const notes: Note[] = [];
  const about = tokens.some(({ kind }) => kind === 'about');
  const before = tokens.some(({ kind }) => kind === 'before');
  const after = tokens.some(({ kind }) => kind === 'after');
  const rest = tokens.filter(({ kind }) => !['about', 'before', 'after', 'between'].includes(kind));
  const groups = splitSides(rest);
  if (groups.length > 2 || (before && after) || ((before || after) && groups.length > 1)) return unclear();
  const sides = groups.map((group) => readSide(group, notes));
  const [first, second] = sides;
  if (first === undefined || first === null || second === null) return unclear();
  inherit(first, second);
  const unstated = sides.some((side) => side?.era === undefined);
  const spans = sides.map((side) =>
    side === null || side === undefined ? null : yearsOf({ ...side, era: side.era ?? era ?? 'AD' }),
  );
  const [start, end] = spans;
  if (start === null || start === undefined || end === null) return unclear();
  if (unstated && era === undefined) {
    if (end !== undefined && start[0] > end[0]) {
      return notUnderstood(
        'era-missing',
        'the years run downwards without BC or AD; state the era in the header or the profile',
      );
    }
    notes.push(flagged('era-unstated', 'no era is stated; read as AD'));
  }
  if (sides.some((side) => side?.number === 0 && (side.era ?? era) !== 'cal BP')) {
    notes.push(flagged('year-zero', 'there is no year 0 in BC/AD; check the numbering of the source'));
  }
  let low = start[0];
  let high = end === undefined ? start[1] : end[1];
  if (low > high) {
    [low, high] = [Math.min(start[0], end?.[0] ?? start[0]), Math.max(start[1], end?.[1] ?? start[1])];
    notes.push(flagged('descending', 'the span ends before it begins; its ends were exchanged'));
  }
  if (before) {
    notes.push(readAs('before', 'only the latest year is stated'));
    return { low: Number.NEGATIVE_INFINITY, high: start[0], about, notes };
  }
  if (after) {
    notes.push(readAs('after', 'only the earliest year is stated'));
    return { low: start[1], high: Number.POSITIVE_INFINITY, about, notes };
  }
  return { low, high, about, notes };
}

const unclear = (): Note =>
  notUnderstood('unknown-date', 'the parts do not make a date; the text is kept without a reading');

function splitSides(tokens: readonly DateToken[]): readonly (readonly DateToken[])[] {
  const groups: DateToken[][] = [[]];
  for (const token of tokens) {
    if (token.kind === 'to') groups.push([]);
    else groups.at(-1)?.push(token);
  }
  return groups;
}

const ORDER: Readonly<Record<string, number>> = { first: 1, second: 2, third: 3, fourth: 4 };
const THIRDS: Readonly<Record<string, readonly [at: number, name: string]>> = {
  early: [1, 'first'],
  mid: [2, 'middle'],
  late: [3, 'last'],
};

function readSide(tokens: readonly DateToken[], notes: Note[]): Side | null {
  const side: Side = {
    number: undefined,
    spread: undefined,
    years: undefined,
    part: undefined,
    era: undefined,
  };
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at];
    const next = tokens[at + 1];
    if (token === undefined) return null;
    const part = partAt(token, next);
    if (part !== null) {
      if (side.part !== undefined) return null;
      side.part = part;
      at += 1;
    } else if (token.kind === 'number' && tokens[at - 1]?.kind === 'plus-minus') {
      side.spread = token.value;
    } else if (token.kind === 'number' && side.number === undefined) {
      side.number = token.value;
      side.ordinal = token.ordinal;
    } else if (token.kind === 'place' && THIRDS[token.place] !== undefined && side.part === undefined) {
      const [third, name] = THIRDS[token.place] ?? [1, ''];
      side.part = { at: third, of: 3 };
      notes.push(flagged('part-of-span', `"${token.place}" read as the ${name} third`));
    } else if (token.kind === 'place' && ORDER[token.place] !== undefined && side.number === undefined) {
      side.number = ORDER[token.place];
    } else if (
      token.kind === 'fraction' &&
      token.of === 3 &&
      next?.kind === 'span' &&
      side.number === undefined
    ) {
      side.number = 3;
    } else if (token.kind === 'era' && side.era === undefined) {
      side.era = token.era;
    } else if (token.kind === 'span' && side.years === undefined) {
      side.years = token.years;
    } else if (!(token.kind === 'plus-minus' && side.number !== undefined)) return null;
  }
  if (side.spread !== undefined) {
    notes.push(flagged('plus-minus', '± read as half a range; it may be a standard deviation instead'));
  }
  return side.number === undefined ? null : side;
}

/** "2nd half", "last quarter", "third quarter", "first third". */
function partAt(token: DateToken, next: DateToken | undefined): { at: number; of: number } | null {
  if (next?.kind !== 'fraction') return null;
  const at =
    token.kind === 'number'
      ? token.value
      : token.kind === 'fraction' && token.of === 3
        ? 3
        : token.kind === 'place'
          ? token.place === 'last'
            ? next.of
            : ORDER[token.place]
          : undefined;
  return at === undefined || at < 1 || at > next.of ? null : { at, of: next.of };
}

/** "8th-7th c. BC", "800-550 BC", "AD 50-100": what one side says holds for the other. */
function inherit(first: Side, second: Side | undefined): void {
  if (second === undefined) return;
  first.era ??= second.era;
  second.era ??= first.era;
  if (first.years === undefined && second.years !== undefined && (first.number ?? 0) <= 100)
    first.years = second.years;
}

/** Both ends of one side in astronomical years. */
function yearsOf(side: Side & { era: SideEra }): [low: number, high: number] | null {
  const { number, years, part, era } = side;
  const spread = side.spread ?? 0;
  if (number === undefined || (part !== undefined && (years === undefined || years === 10))) return null;
  // "2nd–3rd": of what is not said.
  if (side.ordinal === true && years === undefined && number < 100) return null;
  if (years === undefined || years === 10) {
    const width = years === 10 ? 9 : 0;
    const one = toAstronomical(number, era);
    return era === 'AD' ? [one - spread, one + width + spread] : [one - width - spread, one + spread];
  }
  if (era === 'cal BP' || number < 1 || number > 1000 || side.spread !== undefined) return null;
  // The n-th century BC runs from 100 n down to 100 (n - 1) + 1 BC.
  const start = era === 'BC' ? 1 - years * number : years * (number - 1) + 1;
  if (part === undefined) return [start, start + years - 1];
  const cut = (at: number) => Math.ceil((years * at) / part.of);
  return [start + cut(part.at - 1), start + cut(part.at) - 1];
}

/** n BC = 1 - n, n cal BP = 1950 - n: no year 0 stands between 1 BC and AD 1. */
function toAstronomical(year: number, era: SideEra): number {
  return era === 'AD' ? year : (era === 'BC' ? 1 : 1950) - year;
}

import { least } from '../../numerics/foundation/lists.ts';

/** A part of the brief that can be set lower or higher; heights are CSS pixels. */
export interface Sized {
  readonly title: string;
  /** With the least that is of use. */
  readonly least: number;
  /** With all that it has to say. */
  readonly most: number;
  /** The part in this height, which lies between the two. */
  readonly at: (height: number) => string;
}

export interface Sheets {
  readonly html: readonly [string, string];
  /** What found no room, in its order. */
  readonly left: readonly Sized[];
}

/**
 * Parts over two sheets, in their order: as many as have room at their least; of the ways to part them the one that leaves
 * least of the paper empty; then each grows by the same share of what it could, until its sheet is full.
 */
export function overSheets(parts: readonly Sized[], rooms: readonly [number, number]): Sheets {
  const ways = waysOf(parts, rooms);
  const best = ways.reduce<Way | null>((a, b) => (a === null || better(b, a) ? b : a), null);
  if (best === null) return { html: ['', ''], left: parts };
  const [first, second] = best.sheets.map((sheet, at) => grown(sheet, rooms[at]).join('\n'));
  const kept = new Set(best.sheets.flat());
  return { html: [first, second], left: parts.filter((part) => !kept.has(part)) };
}

interface Way {
  readonly sheets: readonly [readonly Sized[], readonly Sized[]];
  readonly count: number;
  /** Pixels of both sheets that can be filled. */
  readonly filled: number;
  /** How evenly what is given over the least is shared: the lesser of the two sheets' shares. */
  readonly ease: number;
}

/** Every choice of parts, parted at every place, the fuller first sheets first, that fits at its least; of at most five these are few. */
function waysOf(parts: readonly Sized[], rooms: readonly [number, number]): readonly Way[] {
  return Array.from({ length: 2 ** parts.length }, (_, choice) =>
    parts.filter((_part, at) => Math.floor(choice / 2 ** at) % 2 === 1),
  ).flatMap((chosen) =>
    Array.from({ length: chosen.length + 1 }, (_, second) => {
      const at = chosen.length - second;
      return [chosen.slice(0, at), chosen.slice(at)] as const;
    })
      .filter((sheets) => sheets.every((sheet, at) => sum(sheet, 'least') <= rooms[at]))
      .map((sheets) => ({
        sheets,
        count: chosen.length,
        filled: sheets.reduce((all, sheet, at) => all + Math.min(rooms[at], sum(sheet, 'most')), 0),
        ease: least(sheets.map((sheet, at) => shareGiven(sheet, rooms[at]))),
      })),
  );
}

function better(a: Way, b: Way): boolean {
  if (a.count !== b.count) return a.count > b.count;
  if (Math.abs(a.filled - b.filled) > 1) return a.filled > b.filled;
  return a.ease > b.ease;
}

function sum(sheet: readonly Sized[], size: 'least' | 'most'): number {
  return sheet.reduce((all, part) => all + part[size], 0);
}

/** Of what the parts could grow, the share that the room allows. */
function shareGiven(sheet: readonly Sized[], room: number): number {
  const [least, most] = [sum(sheet, 'least'), sum(sheet, 'most')];
  return most <= least ? 1 : Math.max(0, Math.min(1, (room - least) / (most - least)));
}

function grown(sheet: readonly Sized[], room: number): readonly string[] {
  const share = shareGiven(sheet, room);
  return sheet.map(({ least, most, at }) => at(least + share * (most - least)));
}

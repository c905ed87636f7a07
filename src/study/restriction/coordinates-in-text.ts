import type { Column, TermColumn, TextColumn } from '../../fragments/table.ts';
import type { LedgerEntry } from '../../sources/source-reading.ts';
import { withUsedLevels } from './used-levels.ts';

/**
 * What is hardly anything but a coordinate: degrees with decimals or minutes, alone where three decimals or a sign say it,
 * as a pair from two decimals on; metres of a grid, named or as a pair; squares of a grid with their zone; codes that stand
 * for a place (with a plus sign, hashes, three words joined by points). Numbers of a catalogue stay, and so do pairs with a
 * unit of length.
 */
const PLACE = [
  String.raw`\d{1,3}[.,]\d{3,}`,
  String.raw`\d{1,3}[.,]\d+ ?(?:°|[NSEWO]\b)`,
  String.raw`\b(?:[Ll]at|[Ll]ong?|LAT|LONG?)(?:\.|itude|itud|itudine)?[:= ]+-?\d{1,3}[.,]\d+(?! ?(?:mm|cm|m)\b)`,
  String.raw`\b\d{1,2}\.\d{2} ?[,;/ ] ?-?\d{1,3}\.\d{2}\b(?! ?(?:mm|cm|m|g|kg)\b)`,
  String.raw`\d{1,3} ?° ?\d{1,2}(?:[.,]\d+)? ?['′’](?: ?\d{1,2}(?:[.,]\d+)? ?["″”])?`,
  String.raw`\b(?:[Ee]asting|EASTING|[Nn]orthing|NORTHING|[Ee]ast|[Nn]orth|[Ee]st|[Nn]ord|[Oo]st|[Rr]echtswert|[Hh]ochwert|RW|HW)[.:= ]*\d{4,8}(?:[.,]\d+)?\b`,
  String.raw`\b[XYxy] ?[:=] ?\d{4,8}(?:[.,]\d+)?\b`,
  String.raw`\b\d{1,2} ?[C-X] ?[A-Z]{2} ?\d{2,5} ?\d{2,5}\b`,
  String.raw`\b[23456789CFGHJMPQRVWX]{4,8}\+[23456789CFGHJMPQRVWX]{2,3}\b`,
  String.raw`\b[Gg]eohash[:= ]+[0-9a-z]{4,12}\b`,
  String.raw`\/{0,3}\p{Ll}{3,}\.\p{Ll}{3,}\.\p{Ll}{3,}`,
  String.raw`\b[ENRH] ?\d{6,7}\b|\b\d{6,7} ?[EN]\b|\b\d{6,7}[ ,;/]+\d{6,7}\b`,
];

/**
 * What may be one, or the number of a find: six or seven figures, with or without two letters of a square of a grid. In
 * running text they go, unless a word says that they number something.
 */
const PERHAPS = [
  String.raw`(?<!\b(?:[Nn]o|[Nn]r|[Nn]um|[Nn]úm|[Ii]nv|[Cc]at|[Kk]at)\.? ?|[Nn]° ?|№ ?)\b(?:[A-Z]{2} ?\d{3,5} ?\d{3,5}|\d{6,7})\b`,
];

const IN_NAMES = new RegExp(PLACE.join('|'), 'gu');
const IN_TEXT = new RegExp([...PLACE, ...PERHAPS].join('|'), 'gu');

/** Columns whose texts name a find, its place or what was printed of it: their numbers are no coordinates. */
const NAMING: ReadonlySet<string> = new Set([
  'fragment',
  'item',
  'catalogueNumber',
  'context',
  'site',
  'repository',
  'citation',
]);

/** A name or a number without what is hardly anything but a coordinate. */
export const maskInName = (text: string): string => text.replace(IN_NAMES, '(coarsened)');

/** A running text without what could be a coordinate; a number that is none goes with them. */
export const maskCoordinates = (text: string): string => text.replace(IN_TEXT, '(coarsened)');

/** @param numbers of finds, which are no coordinates. */
export function masked(entry: LedgerEntry, numbers: ReadonlySet<string>): LedgerEntry {
  const mask = numbers.has(entry.raw.trim()) ? maskInName : maskCoordinates;
  return { ...entry, raw: mask(entry.raw), readAs: mask(entry.readAs), why: mask(entry.why) };
}

/** What the finds of these rows are numbered by. */
export function numbersOf(
  columns: ReadonlyMap<string, Column>,
  rows: ReadonlyMap<number, unknown>,
): ReadonlySet<string> {
  const numbering = [...NAMING].flatMap((id) => columns.get(id) ?? []);
  return new Set(numbering.flatMap(({ raw }) => [...rows.keys()].map((row) => raw[row].trim())));
}

/** Texts of coarsened rows without coordinates, and wordings that count as kinds likewise. */
export function withoutCoordinates(
  column: TermColumn | TextColumn,
  rows: ReadonlyMap<number, unknown>,
): TermColumn | TextColumn {
  const mask = NAMING.has(column.attribute.id) ? maskInName : maskCoordinates;
  if (![...rows.keys()].some((row) => mask(column.raw[row]) !== column.raw[row])) return column;
  const raw = column.raw.map((text, row) => (rows.has(row) ? mask(text) : text));
  return column.kind === 'text' ? { ...column, raw } : { ...withoutExactLevels(column, rows, mask), raw };
}

/** Terms of a vocabulary hold no coordinates; wordings that are counted as they stand may. */
function withoutExactLevels(
  column: TermColumn,
  rows: ReadonlyMap<number, unknown>,
  mask: (text: string) => string,
): TermColumn {
  const levels = [...column.levels];
  const codes = column.codes.map((code, row) => {
    const level = code < 0 ? undefined : column.levels[code];
    if (level === undefined || !rows.has(row)) return code;
    const said = mask(level);
    if (said === level) return code;
    const place = levels.indexOf(said);
    return place >= 0 ? place : levels.push(said) - 1;
  });
  return withUsedLevels({ ...column, codes, levels });
}

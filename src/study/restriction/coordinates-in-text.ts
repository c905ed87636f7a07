import type { TermColumn, TextColumn } from '../../fragments/table.ts';
import type { LedgerEntry } from '../../sources/source-reading.ts';
import { withUsedLevels } from './used-levels.ts';

/**
 * What could be a coordinate in a text: degrees with decimals or minutes, alone where three decimals or a sign say it, as a
 * pair from two decimals on; metres of a grid, named or of six digits and more; squares of a grid in letters and figures;
 * and codes that stand for a place (ISO 6709 in words, letters and figures with a plus sign, hashes, three words joined by
 * points). Short numbers of a catalogue stay, and so do pairs with a unit of length; a long number that is none goes too.
 */
const SAID_EXACTLY = new RegExp(
  [
    String.raw`\d{1,3}[.,]\d{3,}`,
    String.raw`\d{1,3}[.,]\d+ ?(?:°|[NSEWO]\b)`,
    String.raw`\b(?:[Ll]at|[Ll]ong?|LAT|LONG?)(?:\.|itude|itud|itudine)?[:= ]+-?\d{1,3}[.,]\d+(?! ?(?:mm|cm|m)\b)`,
    String.raw`\b\d{1,2}\.\d{2} ?[,;/ ] ?-?\d{1,3}\.\d{2}\b(?! ?(?:mm|cm|m|g|kg)\b)`,
    String.raw`\d{1,3} ?° ?\d{1,2}(?:[.,]\d+)? ?['′’](?: ?\d{1,2}(?:[.,]\d+)? ?["″”])?`,
    String.raw`\b(?:[Ee]asting|EASTING|[Nn]orthing|NORTHING|[Ee]ast|[Nn]orth|[Ee]st|[Nn]ord|[Oo]st|[Rr]echtswert|[Hh]ochwert|RW|HW)[.:= ]*\d{4,8}(?:[.,]\d+)?\b`,
    String.raw`\b[XYxy] ?[:=] ?\d{4,8}(?:[.,]\d+)?\b`,
    String.raw`\b\d{1,2} ?[C-X] ?[A-Z]{2} ?\d{2,5} ?\d{2,5}\b`,
    String.raw`\b[A-Z]{2} ?\d{3,5} ?\d{3,5}\b`,
    String.raw`\b[23456789CFGHJMPQRVWX]{4,8}\+[23456789CFGHJMPQRVWX]{2,3}\b`,
    String.raw`\b[Gg]eohash[:= ]+[0-9a-z]{4,12}\b`,
    String.raw`\/{0,3}\p{Ll}{3,}\.\p{Ll}{3,}\.\p{Ll}{3,}`,
    String.raw`\b\d{6,7}\b`,
    String.raw`\b[ENRH] ?\d{6,7}\b|\b\d{6,7} ?[EN]\b|\b\d{6,7}[ ,;/]+\d{6,7}\b`,
  ].join('|'),
  'gu',
);

/** A text without what could be a coordinate; a number that is none goes with them. */
export const maskCoordinates = (text: string): string => text.replace(SAID_EXACTLY, '(coarsened)');

export const masked = (entry: LedgerEntry): LedgerEntry => ({
  ...entry,
  raw: maskCoordinates(entry.raw),
  readAs: maskCoordinates(entry.readAs),
  why: maskCoordinates(entry.why),
});

/** Texts of coarsened rows without coordinates, and wordings that count as kinds likewise. */
export function withoutCoordinates(
  column: TermColumn | TextColumn,
  rows: ReadonlyMap<number, unknown>,
): TermColumn | TextColumn {
  if (![...rows.keys()].some((row) => maskCoordinates(column.raw[row]) !== column.raw[row])) return column;
  const raw = column.raw.map((text, row) => (rows.has(row) ? maskCoordinates(text) : text));
  return column.kind === 'text' ? { ...column, raw } : { ...withoutExactLevels(column, rows), raw };
}

/** Terms of a vocabulary hold no coordinates; wordings that are counted as they stand may. */
function withoutExactLevels(column: TermColumn, rows: ReadonlyMap<number, unknown>): TermColumn {
  const levels = [...column.levels];
  const codes = column.codes.map((code, row) => {
    const level = code < 0 ? undefined : column.levels[code];
    if (level === undefined || !rows.has(row)) return code;
    const said = maskCoordinates(level);
    if (said === level) return code;
    const place = levels.indexOf(said);
    return place >= 0 ? place : levels.push(said) - 1;
  });
  return withUsedLevels({ ...column, codes, levels });
}

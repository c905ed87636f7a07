/** Folding of cell texts: one spelling for the many characters that typists and exports use for one sign. */

const SAME_SIGN: readonly (readonly [RegExp, string])[] = [
  [/[\u00a0\u2000-\u200a\u202f\u205f\u3000\t]/gu, ' '],
  [/[\u200b-\u200f\u2060\ufeff\u00ad]/gu, ''],
  [/[\u2010-\u2015\u2212\ufe58\ufe63\uff0d]/gu, '-'],
  [/[\u2018\u2019\u02bc\u2032\u00b4`]/gu, "'"],
  [/[\u201c\u201d\u201e\u2033\u00ab\u00bb]/gu, '"'],
  [/\u2044|\u2215/gu, '/'],
  [/\u223c|\u02dc|\uff5e/gu, '~'],
  [/\r\n?/gu, '\n'],
];

/** Trims, and gives every space, dash, quote, prime, slash and tilde its plain form; letters stay as they are. */
export function plainSigns(text: string): string {
  let plain = text;
  for (const [pattern, sign] of SAME_SIGN) plain = plain.replace(pattern, sign);
  plain = plain.replace(/[\uff01-\uff5d]/gu, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0));
  return plain.trim();
}

/** Plain signs, lower case, accents off, ß ae oe o spelled out: for comparing words of several languages. */
export function foldCell(text: string): string {
  return plainSigns(text)
    .normalize('NFD')
    .replace(/\p{Mn}+/gu, '')
    .toLowerCase()
    .replace(/ß/gu, 'ss')
    .replace(/æ/gu, 'ae')
    .replace(/œ/gu, 'oe')
    .replace(/ø/gu, 'o')
    .replace(/ı/gu, 'i')
    .replace(/ +/gu, ' ');
}

/** Looks a key up in a plain record without meeting what every object inherits ("constructor", "__proto__"). */
export function ownValue<Value>(
  record: Readonly<Record<string, Value>> | undefined,
  key: string,
): Value | undefined {
  return record !== undefined && Object.hasOwn(record, key) ? record[key] : undefined;
}

/** Longest alternative first, so that "at least" wins over "at". */
export function alternation(words: readonly string[]): string {
  return [...words]
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
    .map((word) => word.replace(/[.*+?^${}()|[\]\\/]/gu, '\\$&'))
    .join('|');
}

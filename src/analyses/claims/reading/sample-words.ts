import { twoEnds } from './cell-forms.ts';
import { type DecimalMark, NUMBER, printedValue } from './numbers.ts';
import type { Quantity } from './terms.ts';
import type { TextPart } from './text-part.ts';

/** Words that name a figure of a sample, in texts such as "M = 5.2, SD = 1.4, n = 20". */
const WORDS: readonly (readonly [pattern: string, quantity: Quantity])[] = [
  [String.raw`(?:arithmetic )?(?:[Mm]ean|[Aa]verage|[Mm]ittelwert|[Mm]oyenne|media|x̄|M)(?: value)?`, 'mean'],
  [String.raw`(?:[Mm]edian|Mdn|Md|Me)`, 'median'],
  [String.raw`(?:S\.?D\.?|s\.?\s?d\.?|std\.? ?dev\.?|standard deviation|St\.?\s?Dev\.?|σ|s)`, 'sd'],
  [String.raw`(?:S\.?E\.?M?\.?|s\.?\s?e\.?\s?m?\.?|standard error|std\.? ?error)`, 'se'],
  [String.raw`(?:I\.?Q\.?R\.?|interquartile range|quartiles)`, 'iqr'],
  [String.raw`(?:C\.?V\.?|coefficient of variation)`, 'cv'],
  [String.raw`(?:range|min\.?\s?[-–]\s?max\.?)`, 'range'],
  [String.raw`(?:min(?:imum)?\.?)`, 'min'],
  [String.raw`(?:max(?:imum)?\.?)`, 'max'],
  [String.raw`(?:[nN])`, 'n'],
];
const ENDS = String.raw`[\[(]?${NUMBER}\s*(?:-|–|—|to|bis|à|;|,\s)\s*${NUMBER}[\])]?`;
const NAMED = new RegExp(
  String.raw`(?<![\p{L}\d])(?:${WORDS.map(([pattern], i) => `(?<w${i}>${pattern})`).join('|')})(?:\s*[=:]\s*|\s+(?:of\s+|is\s+)?|(?=[\[(]))(?<value>${ENDS}|[+-]?${NUMBER}\s*%?)`,
  'gu',
);
const LEAD = new RegExp(
  String.raw`^(?<first>${NUMBER})\s*(?:(?:±|\+\s?\/?\s?-)\s*(?<second>${NUMBER})\s*(?:\(?(?<word>S\.?D\.?|S\.?E\.?M?\.?|s\.d\.|s\.e\.|σ)\)?)?)?`,
  'u',
);

/**
 * Figures of one sample that a text names by words: "mean 5.2 (SD 1.4; range 2–9), n = 20", "5.2 ± 0.3 SE",
 * "Mdn = 5 (IQR 4–7)". Null where the words do not account for all of its numbers.
 *
 * @param quantity what the first number is, where no word says so.
 */
export function sampleWords(text: string, quantity: Quantity, mark: DecimalMark): readonly TextPart[] | null {
  if (!SAMPLED.has(quantity)) return null;
  let rest = text.replaceAll(/\s*(?<=\d)\s?(?:mm|cm|kg|g)(?![\p{L}])/gu, '').replace(/^\((.*)\)$/, '$1');
  const parts: TextPart[] = [];
  const named: TextPart[] = [];
  for (const match of rest.matchAll(NAMED)) {
    const at = WORDS.findIndex((_, i) => match.groups?.[`w${i}`] !== undefined);
    const found = figureOf(match.groups?.value ?? '', WORDS[at][1], mark);
    if (found === null) return null;
    named.push(...found);
  }
  rest = rest.replaceAll(NAMED, ' ');
  const lead = LEAD.exec(rest.trim());
  if (lead !== null) {
    const { first, second, word } = lead.groups ?? {};
    const value = printedValue(first, quantity, mark);
    const spread = second === undefined ? null : printedValue(second, 'sd', mark);
    if (value === null) return null;
    parts.push({ quantity, values: [value] });
    if (spread !== null)
      parts.push({
        quantity: word === undefined || !/e/i.test(word) ? 'sd' : 'se',
        values: [spread],
        ...(word === undefined ? { vague: true as const } : {}),
      });
    rest = rest.trim().slice(lead[0].length);
  }
  if (named.length === 0 && parts[1]?.vague !== undefined) return null;
  if (named.length + parts.length === 0 || /\d/.test(rest)) return null;
  const all = [...parts, ...named];
  // What the row says that the text is comes first.
  return [
    ...all.filter((one) => one.quantity === quantity),
    ...all.filter((one) => one.quantity !== quantity),
  ];
}

const SAMPLED: ReadonlySet<Quantity> = new Set<Quantity>([
  'mean',
  'median',
  'sd',
  'se',
  'n',
  'min',
  'max',
  'range',
  'iqr',
]);

function figureOf(text: string, quantity: Quantity, mark: DecimalMark): readonly TextPart[] | null {
  const ends = quantity === 'iqr' || quantity === 'range' ? twoEnds(text, quantity, mark) : null;
  if (ends !== null) return ends;
  const value = printedValue(text.replaceAll(/[[\]()]/g, ''), quantity, mark);
  return value === null ? null : [{ quantity, values: [value] }];
}

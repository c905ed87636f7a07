import { twoEnds } from './cell-forms.ts';
import { type DecimalMark, NUMBER, printedValue } from './numbers.ts';
import { ENDS, SAMPLE_WORDS } from './sample-vocabulary.ts';
import type { Quantity } from './terms.ts';
import type { TextPart } from './text-part.ts';

const NAMED = new RegExp(
  String.raw`(?<![\p{L}\d])(?:${SAMPLE_WORDS.map(([pattern], i) => `(?<w${i}>${pattern})`).join('|')})(?:\s*[=:,]\s*|\s+(?:of\s+|is\s+|von\s+|de\s+|di\s+|af\s+)?|(?=[\[(]))(?<value>${ENDS}|[+-]?${NUMBER}\s*%?)`,
  'gu',
);
const LEAD = new RegExp(
  String.raw`^(?<first>${NUMBER})\s*(?:(?:±|\+\s?\/?\s?-)\s*(?<second>${NUMBER})\s*(?:\(?(?<word>S\.?D\.?|S\.?E\.?M?\.?|s\.d\.|s\.e\.|σ)\)?)?)?`,
  'u',
);
/** What a spread behind ± is, where words without a number say it: "2.4 ± 0.1 kg (mean ± s.e.m.)". */
const SPREAD_SAID: readonly (readonly [RegExp, 'sd' | 'se'])[] = [
  [
    /±\s*(?:1\s?)?(?:s\.?\s?e\.?\s?(?:m\.?)?|std\.? ?err\w*|standard error|Standardfehler|erreur[- ]type|EE)(?![\p{L}])/iu,
    'se',
  ],
  [
    /±\s*(?:1\s?)?(?:s\.?\s?d\.?|std\.? ?dev\w*|standard deviation|Standardabweichung|écart[- ]type|DS|DE|ET)(?![\p{L}])/iu,
    'sd',
  ],
];

/**
 * Figures of one sample that a text names by words: "mean 5.2 (SD 1.4; range 2–9), n = 20", "5.2 ± 0.3 SE",
 * "Mdn = 5 (IQR 4–7)", "moyenne 5,2 ± 1,4 cm (n = 20)". Null where the words do not account for all of its numbers.
 *
 * @param quantity what the first number is, where no word says so.
 */
export function sampleWords(text: string, quantity: Quantity, mark: DecimalMark): readonly TextPart[] | null {
  if (!SAMPLED.has(quantity)) return null;
  let rest = text.replace(/^\((.*)\)$/, '$1');
  const named: TextPart[] = [];
  for (const match of rest.matchAll(NAMED)) {
    const at = SAMPLE_WORDS.findIndex((_, i) => match.groups?.[`w${i}`] !== undefined);
    const found = figureOf(match.groups?.value ?? '', SAMPLE_WORDS[at][1], mark);
    if (found === null) return null;
    const level = /(\d{2}(?:[.,]\d)?)[-\s]?%/.exec(match.groups?.[`w${at}`] ?? '')?.[1];
    named.push(
      ...found.map((part) =>
        SAMPLE_WORDS[at][1] === 'interval' && level !== undefined
          ? { ...part, level: Number(level.replace(',', '.')) / 100 }
          : part,
      ),
    );
  }
  // A spread stands behind its mean: "moyenne 5,2 ± 1,4".
  const behind = new RegExp(String.raw`±\s*(?<spread>${NUMBER})`, 'u');
  rest = rest.replaceAll(NAMED, ' ');
  const said = SPREAD_SAID.find(([pattern]) => pattern.test(rest))?.[1];
  const parts: TextPart[] = [];
  const lead = LEAD.exec(rest.trim());
  if (lead !== null) {
    const { first, second, word } = lead.groups ?? {};
    const value = printedValue(first, quantity, mark);
    const spread = second === undefined ? null : printedValue(second, 'sd', mark);
    if (value === null) return null;
    parts.push({ quantity, values: [value] });
    if (spread !== null)
      parts.push(
        spreadPart(spread, said ?? (word === undefined ? undefined : /e/i.test(word) ? 'se' : 'sd')),
      );
    rest = rest.trim().slice(lead[0].length);
  } else if (named.some((part) => part.quantity === 'mean')) {
    const second = behind.exec(rest);
    const spread = second === null ? null : printedValue(second.groups?.spread ?? '', 'sd', mark);
    if (second !== null && spread !== null) {
      parts.push(spreadPart(spread, said));
      rest = rest.replace(second[0], ' ');
    }
  }
  // "5.2 ± 0.3" alone is read elsewhere.
  if (named.length === 0 && said === undefined && parts.some(({ vague }) => vague === true)) return null;
  if (named.length + parts.length === 0 || /\d/.test(rest.replaceAll(/(?<=\p{L})[²³]|cm2|m2/gu, '')))
    return null;
  const all = [...parts, ...named];
  // What the row says that the text is comes first.
  return [
    ...all.filter((one) => one.quantity === quantity),
    ...all.filter((one) => one.quantity !== quantity),
  ];
}

function spreadPart(value: TextPart['values'][number], said: 'sd' | 'se' | undefined): TextPart {
  return { quantity: said ?? 'sd', values: [value], ...(said === undefined ? { vague: true as const } : {}) };
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
  const ends =
    quantity === 'iqr' || quantity === 'range' || quantity === 'interval'
      ? twoEnds(text, quantity, mark)
      : null;
  if (ends !== null) return ends;
  if (quantity === 'interval') return null;
  const value = printedValue(text.replaceAll(/[[\]()]/g, ''), quantity, mark);
  return value === null ? null : [{ quantity, values: [value] }];
}

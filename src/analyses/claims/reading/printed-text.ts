import { countWithShare, degrees, middleWithEnds, spread, twoEnds } from './cell-forms.ts';
import { type DecimalMark, type PrintedValue, plainSigns, printedValue } from './numbers.ts';
import { sampleWords } from './sample-words.ts';
import { mannersIn, sidesIn } from './symbols.ts';
import type { Quantity } from './terms.ts';
import { readTestReport, starred } from './test-report.ts';
import type { TextPart } from './text-part.ts';
import { years } from './years.ts';

/** What was read of a printed text, and what of it was not used. */
export interface PrintedText {
  readonly parts: readonly TextPart[];
  readonly unused: readonly string[];
}

/** What is known of a text beside its words. */
export interface Surroundings {
  /** Decimal mark of the document. */
  readonly mark?: DecimalMark;
  /** What the second number of "3.5 (0.4)" is, where a head says so. */
  readonly second?: Quantity;
  /** What two ends behind a middle are, where a head says so. */
  readonly ends?: 'range' | 'interval' | 'iqr';
}

/**
 * Reads a printed text: its numbers to the printed digit, with what it says of them.
 * "3.5±0.4" is a mean and its spread, "12 (34 %)" a count and its share, "2.1-5.4" two ends,
 * "t(18) = 2.31, p = .033" a statistic, its degrees of freedom and p. docs/printed-figures.md lists the forms.
 *
 * @returns the numbers and what was not used; null where the text cannot be read as that quantity.
 */
export function readPrinted(
  text: string,
  quantity: Quantity,
  { mark = null, second, ends }: Surroundings = {},
): PrintedText | null {
  const plain = plainSigns(text);
  const dated = years(plain, quantity);
  if (dated !== null) return { parts: dated, unused: [] };
  const report = readTestReport(plain, quantity, mark);
  if (report !== null && report.parts.length > 0) return report;
  const { body, marks } = withoutMarks(plain, quantity);
  const parts =
    spread(body, quantity, mark, second) ??
    countWithShare(body, quantity, mark) ??
    twoEnds(body, quantity, mark) ??
    middleWithEnds(body, quantity, mark, ends) ??
    degrees(body, quantity, mark) ??
    sampleWords(body, quantity, mark) ??
    single(body, plain, quantity, mark);
  return parts === null ? null : { parts, unused: marks };
}

/** Marks of footnotes behind a number: "12.3*", "12.3†", "12.3ᵃ", "12.3 a". */
function withoutMarks(text: string, quantity: Quantity): { readonly body: string; readonly marks: string[] } {
  if (quantity === 'p') return { body: text, marks: [] };
  const match = /(?<=[\d)%])\s?(?:[*†‡§¶#]+|[ᵃᵇᶜᵈᵉᶠ]+|(?<=[\d)%])[a-e](?:,[a-e])*|\s[a-e])$/u.exec(text);
  if (match === null) return { body: text, marks: [] };
  return { body: text.slice(0, match.index).trim(), marks: [match[0].trim()] };
}

function single(
  text: string,
  whole: string,
  quantity: Quantity,
  mark: DecimalMark,
): readonly TextPart[] | null {
  if (quantity === 'p') return pAlone(text, mark);
  const value = printedValue(text, quantity, mark);
  if (value === null) return null;
  const shown: PrintedValue = { ...value, text: whole };
  return [{ quantity, values: [shown] }];
}

/** ".033", "p < .05", "n.s.", "0.03*", "**", "< .001 (two-tailed)", "0.012 (Holm)". */
function pAlone(text: string, mark: DecimalMark): readonly TextPart[] | null {
  if (/^(?:p\s*[=:]?\s*)?(?:n\.?\s?s\.?|not significant)$/i.test(text))
    return [
      {
        quantity: 'p',
        values: [{ text, relation: '>', number: { digits: 5n, decimals: 2 }, percent: false }],
      },
    ];
  if (/^\*{1,4}$/.test(text)) return [{ quantity: 'p', values: [starred(text.length)], stars: true }];
  const bare = text
    .replace(/\s*\*{1,4}$/, '')
    .replace(/(?<=\d)[a-e]$/, '')
    .replace(
      /\s*[([]?(?:[\w-]+[- ](?:sided|tailed)|bonferroni|holm|adjusted|adj\.?|exact|permuted|corrected|FDR|BH|Tukey)[)\]]?$/i,
      '',
    );
  const value = printedValue(bare.replace(/\s*[*†‡§ᵃᵇᶜ]+$/u, ''), 'p', mark);
  if (value === null) return null;
  const manners = mannersIn(text);
  const sided = sidesIn(text);
  return [
    {
      quantity: 'p',
      values: [{ ...value, text }],
      ...(manners.length > 0 ? { manners } : {}),
      ...(sided === null ? {} : { sided }),
    },
  ];
}

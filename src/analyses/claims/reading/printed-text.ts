import { countWithShare, degrees, middleWithEnds, spread, twoEnds } from './cell-forms.ts';
import { type DecimalMark, type PrintedValue, plainSigns, printedValue } from './numbers.ts';
import { type ProgramPrint, programPrint } from './programs/test-print.ts';
import { findInterval, intervalParts } from './report-intervals.ts';
import { starred } from './report-methods.ts';
import { sampleWords } from './sample-words.ts';
import { mannersIn, sidesIn } from './symbols.ts';
import { readHead } from './table/heads.ts';
import type { Quantity } from './terms.ts';
import { readTestReport } from './test-report.ts';
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
  readonly second?: Quantity | undefined;
  /** What two ends behind a middle are, where a head says so. */
  readonly ends?: 'range' | 'interval' | 'iqr' | undefined;
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
  const program = programPrint(plain);
  const report =
    program === null
      ? readTestReport(plain, quantity, mark)
      : readTestReport(program.report, quantity, '.', program.title);
  if (report !== null && report.parts.length > 0)
    return program === null
      ? report
      : { parts: [...report.parts, ...meanParts(program)], unused: [...report.unused, ...program.beside] };
  const { body, marks } = withoutMarks(program?.report.replace(/^CI /, '') ?? plain, quantity);
  const read = (of: string) =>
    cellParts(of, plain, quantity, { mark, second, ends }) ?? headedParts(of, plain, mark);
  const parts = shareWithInterval(body, quantity, mark, read) ?? read(body) ?? unitApart(body, read);
  if (parts === null) return null;
  const stars = quantity === 'estimate' ? marks.filter((mark) => /^\*+$/.test(mark)) : [];
  return {
    parts: [
      ...parts,
      ...stars.map((mark): TextPart => ({ quantity: 'p', values: [starred(mark.length)], stars: true })),
    ],
    unused: marks.filter((mark) => !stars.includes(mark)),
  };
}

function meanParts({ means }: ProgramPrint): readonly TextPart[] {
  return means.flatMap(({ group, value }): TextPart[] => {
    const read = printedValue(value, 'mean', '.');
    return read === null ? [] : [{ quantity: 'mean', values: [read], group }];
  });
}

/** "mean (SD), 2.4 (0.3)", "median [IQR]: 4 [2-9]": what the numbers are stands before them. */
function headedParts(body: string, whole: string, mark: DecimalMark): readonly TextPart[] | null {
  const match = /^(?<head>[^\d=]*?[^\d=\s,:;])\s*[,:]?\s+(?<figures>[-+]?[\d.,].*)$/u.exec(body)?.groups;
  const head = match === undefined ? undefined : readHead(match.head);
  if (match === undefined || head === undefined) return null;
  const unsaid = head.second === undefined && head.ends === undefined;
  if (unsaid && !/[([][^)\]]*\d[^)\]]*\d[)\]]/.test(match.figures)) return null;
  if (head.role !== 'mean' && head.role !== 'median') return null;
  const says = { mark, second: head.second, ends: head.ends };
  // What stands behind the first figures is named by its own words.
  const [first, ...more] = match.figures.split(/\s*;\s+(?![^[(]*[\])])/);
  const read = (of: string) => cellParts(of, whole, head.role as Quantity, says);
  const parts = read(first) ?? unitApart(first, read);
  const others = more.map((one) => sampleWords(one, 'mean', mark));
  return parts === null || others.includes(null) ? null : [...parts, ...others.flatMap((one) => one ?? [])];
}

/** "23/43 (53.5 %; 95 % CI 37.7–68.8)": a share as it stands without the interval that is named beside it. */
function shareWithInterval(
  body: string,
  quantity: Quantity,
  mark: DecimalMark,
  read: (text: string) => readonly TextPart[] | null,
): readonly TextPart[] | null {
  if (quantity !== 'share' && quantity !== 'count') return null;
  const interval = findInterval(body);
  if (interval === null) return null;
  const rest = body
    .replace(interval[0], '¦')
    // What stands between the share and its interval, the interval's sign of per cent, and a bracket left open.
    .replace(/\s*[,;:]?\s*¦\s*%?\s*/u, '')
    .replace(/\s*[[(]\s*[)\]]?$/u, '')
    .trim();
  const closed = /^[^)\]]*[([][^)\]]*$/u.test(rest) ? `${rest})` : rest;
  const parts = read(closed);
  return parts === null ? null : [...parts, ...intervalParts(interval, mark, parts)];
}

/** "2.4 (0.3) kg", "2.3 kg [2.1; 2.5]": a unit is passed over; the attribute says which one is meant. */
function unitApart(
  body: string,
  read: (text: string) => readonly TextPart[] | null,
): readonly TextPart[] | null {
  const without = body.replaceAll(
    /(?<=[\d)\]])\s?(?!(?:to|bis|von|of|and|und|et|og)(?![\p{L}]))(?:[°µ]?\p{L}{1,7}(?:[²³]|\/\p{L}{1,5})?(?=\s*[[(;,]|\s*$)|(?<=[)\]]\s?)%$)/gu,
    '',
  );
  return without === body ? null : read(without.trim());
}

function cellParts(
  body: string,
  plain: string,
  quantity: Quantity,
  { mark = null, second, ends }: Surroundings,
): readonly TextPart[] | null {
  return (
    spread(body, quantity, mark, second) ??
    countWithShare(body, quantity, mark) ??
    twoEnds(body, quantity, mark) ??
    middleWithEnds(body, quantity, mark, ends) ??
    degrees(body, quantity, mark) ??
    sampleWords(body, quantity, mark) ??
    single(body, plain, quantity, mark)
  );
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

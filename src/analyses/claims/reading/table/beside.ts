import type { PrintedFigure } from '../claim.ts';
import type { DecimalMark } from '../numbers.ts';
import { plainSigns } from '../numbers.ts';
import { readPrinted } from '../printed-text.ts';
import { readTestReport } from '../test-report.ts';
import type { TextPart } from '../text-part.ts';
import { figureBase } from './cells.ts';

/**
 * Figures of tests that stand above or below a table: "χ²(4, N = 60) = 9.49, p = .05". Each sentence is a report of
 * its own; words without a statistic are words.
 */
export function figuresBeside(
  name: string,
  texts: readonly string[],
  mark: DecimalMark,
): readonly PrintedFigure[] {
  return texts
    .flatMap((text) =>
      text.replace(/^(?:notes?|note)\s*[.:]\s*/i, '').split(/(?<=[^\d.]\.|\d\.)\s+(?=\p{Lu})/u),
    )
    .flatMap((sentence, i): PrintedFigure[] => {
      const report = readTestReport(plainSigns(sentence), 'statistic', mark);
      if (report === null || !report.parts.some(({ quantity }) => quantity === 'statistic')) return [];
      return figuresOf(report.parts, sentence, { set: name, line: `${name}: words ${i + 1}` });
    });
}

/** The figures of a program's output that stands where a table is expected. */
export function figuresOfOutput(name: string, text: string): readonly PrintedFigure[] {
  const parts = readPrinted(text, 'statistic')?.parts ?? [];
  return figuresOf(parts, text.replaceAll(/\s+/g, ' ').trim(), { set: name, line: name });
}

/** What of it nothing was made of. */
export function unreadOfOutput(name: string, text: string): readonly string[] {
  return (readPrinted(text, 'statistic')?.unused ?? []).map((word) => `${name}: “${word}”`);
}

function figuresOf(
  parts: readonly TextPart[],
  text: string,
  { set, line }: { readonly set: string; readonly line: string },
): PrintedFigure[] {
  const times = new Map<string, number>();
  return parts.map((part) => {
    const before = times.get(part.quantity) ?? 0;
    times.set(part.quantity, before + 1);
    return {
      ...figureBase(part, text, null),
      id: `${line} (${part.quantity}${before === 0 ? '' : ` ${before + 1}`})`,
      set,
      line,
      cell: null,
      quantity: part.quantity,
      perUnit: null,
      attributes: [],
      select: [],
      counted: [],
      selectText: part.group ?? '',
      values: part.values,
    };
  });
}

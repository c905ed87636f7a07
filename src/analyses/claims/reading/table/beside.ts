import type { PrintedFigure } from '../claim.ts';
import type { DecimalMark } from '../numbers.ts';
import { plainSigns } from '../numbers.ts';
import { readTestReport } from '../test-report.ts';
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
      const times = new Map<string, number>();
      return report.parts.map((part) => {
        const before = times.get(part.quantity) ?? 0;
        times.set(part.quantity, before + 1);
        return {
          ...figureBase(part, sentence, null),
          id: `${name}: words ${i + 1} (${part.quantity}${before === 0 ? '' : ` ${before + 1}`})`,
          set: name,
          line: `${name}: words ${i + 1}`,
          cell: null,
          quantity: part.quantity,
          perUnit: null,
          attributes: [],
          select: [],
          counted: [],
          selectText: '',
          values: part.values,
        };
      });
    });
}

import { BEFORE_LEVEL, INTERVAL_WORDS } from './interval-words.ts';
import { type DecimalMark, NUMBER, printedValue } from './numbers.ts';
import { isCorrelation, type TestMethod } from './terms.ts';
import type { TextPart } from './text-part.ts';

const INTERVAL = new RegExp(
  String.raw`(?:(?<![\d.])(?<level>[5-9]\d(?:[.,]\d(?!\d))?)[-\s]*%[-\s]*)?${INTERVAL_WORDS}(?:\s?_?\{?(?:${BEFORE_LEVEL})?(?<after>\d{2})(?:\s?%\}?|\}|(?=\s*(?:[=:[(]|,(?!\d)))))?\s*[=:,]?\s*[[(]?\s*(?<low>${NUMBER})(?:\s*(?:;|to|-|–|—|and|bis|und|à|et|y|a|til|\.\.\.?)\s*|\s*,\s+|,(?=[+-]?\d*\.\d))(?<high>${NUMBER})(?:\s*[\])])?`,
  'u',
);
/** "d = 0.80 [0.20, 1.40]": two numbers in brackets behind another are the ends of its interval. */
const ENDS_ALONE = new RegExp(
  String.raw`(?<=[=<>]\s?[-+]?[\d.,]+\s)(?:\[(?=[^\]]*\])|\((?=[^,)]*(?:–|—|;|to|bis|à|-)[^)]*\)))\s*(?<low>${NUMBER})(?:\s*(?:;|to|bis|à|–|—|-)\s*|\s*,\s+)(?<high>${NUMBER})\s*[\])]`,
  'u',
);

/** The interval that a report prints: named, or two numbers in brackets behind another. */
export function findInterval(text: string): RegExpExecArray | null {
  return INTERVAL.exec(text) ?? ENDS_ALONE.exec(text);
}

/** The coefficient or effect size whose ends an interval beside it gives; none where a difference stands there too. */
function intervalOf(parts: readonly TextPart[]): TestMethod | undefined {
  if (parts.some(({ quantity }) => quantity === 'difference')) return undefined;
  return (
    parts.find(({ quantity }) => quantity === 'effect') ??
    parts.find(({ quantity, method }) => quantity === 'correlation' || isCorrelation(method))
  )?.method;
}

/** Both ends, with the level and the coefficient that they are said to be of. */
export function intervalParts(
  match: RegExpExecArray,
  mark: DecimalMark,
  parts: readonly TextPart[],
): TextPart[] {
  const of = intervalOf(parts);
  const { level, after, low, high } = match.groups ?? {};
  const ends = [low, high].map((end) => printedValue(end, 'low', mark));
  if (ends[0] === null || ends[1] === null) return [];
  const said = level ?? after;
  const confidence = {
    ...(said === undefined ? {} : { level: Number(said.replace(',', '.')) / 100 }),
    ...(of === undefined ? {} : { method: of }),
  };
  return [
    { quantity: 'low', values: [ends[0]], ...confidence },
    { quantity: 'high', values: [ends[1]], ...confidence },
  ];
}

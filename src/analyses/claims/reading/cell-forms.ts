import { type DecimalMark, NUMBER, type PrintedValue, printedValue } from './numbers.ts';
import type { Quantity } from './terms.ts';
import type { TextPart } from './text-part.ts';

/** Forms of a printed cell that hold more than one number. Each returns null for a text of another form. */

const N = NUMBER;
const DASH = String.raw`\s*(?:-|–|—|−|to|bis|à|a|til|\.\.\.?|…|through)\s*`;

function part(quantity: Quantity, value: PrintedValue): TextPart {
  return { quantity, values: [value] };
}

/** What stays what it is before a second number in brackets; anything else with a spread is a mean. */
const KEPT: ReadonlySet<Quantity> = new Set<Quantity>([
  'difference',
  'median',
  'statistic',
  'correlation',
  'effect',
  'estimate',
]);

/**
 * "3.5±0.4", "3.5 (0.4)", "3.5 ± 0.4 (n = 12)": whether the second number is a deviation or an error the text
 * does not say, unless `second` does.
 */
export function spread(
  text: string,
  quantity: Quantity,
  mark: DecimalMark,
  second?: Quantity,
): readonly TextPart[] | null {
  const sign = new RegExp(
    `^(${N})\\s*(?:±|\\+\\s?/?\\s?-)\\s*(${N})\\s*(%?)(?:\\s*[a-zµ]{1,2})?(?:\\s*[([]\\s*(?:[nN]\\s*=\\s*)?(\\d{1,3}(?:[ .,'’]\\d{3})+|\\d+)\\s*[)\\]])?$`,
    'u',
  ).exec(text.replace(/^\((.*)\)$/, '$1'));
  const bracket =
    quantity === 'mean' || quantity === 'median' || second !== undefined
      ? new RegExp(`^(${N})\\s*[([]\\s?±?\\s?(${N})[)\\]]$`, 'u').exec(text)
      : null;
  const match = sign ?? bracket;
  if (match === null) return null;
  const mean = printedValue(match[1], 'mean', mark);
  const sd = printedValue(match[2], 'sd', mark);
  if (mean === null || sd === null) return null;
  const n = match[4] === undefined ? null : printedValue(match[4], 'n', mark);
  return [
    part(KEPT.has(quantity) ? quantity : 'mean', mean),
    second === undefined
      ? quantity === 'median'
        ? part('iqr', sd)
        : { ...part('sd', sd), vague: true }
      : part(second, sd),
    ...(n === null ? [] : [part('n', n)]),
  ];
}

/** "12 (34 %)", "12 (34)", "12/35 (34 %)", "12 of 35", "34 % (12)", "34 % (12/35)". */
export function countWithShare(
  text: string,
  quantity: Quantity,
  mark: DecimalMark,
): readonly TextPart[] | null {
  if (quantity !== 'count' && quantity !== 'share' && quantity !== 'total') return null;
  const whole = String.raw`\d{1,3}(?:[ ,.’']\d{3})+|\d+`;
  const per = String.raw`\s*(?:%|per\s?cent|pct\.?)`;
  const of = String.raw`\s*(?:\/|of|out of|von|sur|su|de|di|ud af|af|van)\s*(?:the |den |les |the total of )?`;
  const plain = text
    .replace(/^(?:il|el|la|le|les|the)\s+(?=\d)/iu, '')
    // "97 of 144 sherds (67 %)": what is counted is named.
    .replace(
      /(?<=\d|[)\]])\s+(?!(?:of|out|von|sur|su|de|di|ud|af|van|per|pct|p)(?![\p{L}]))\p{L}{3,}(?=\s*(?:[([]|$))/iu,
      '',
    );
  const behind = new RegExp(`^(${whole})\\s*[([]\\s*(${N})(${per})?\\s*[)\\]]${of}(${whole})$`, 'iu').exec(
    plain,
  );
  if (behind !== null) return assemble(behind[1], behind[4], `${behind[2]} %`, mark);
  const countFirst = new RegExp(
    `^(?:[nN]\\s*=\\s*)?(${whole})(?:${of}(${whole}))?(?:(?:\\s*[,;=]?\\s*[(\\[]\\s*|\\s*[;=]\\s*|\\s*,\\s+)(${N})(${per})?\\s*[)\\]]?)?$`,
    'iu',
  ).exec(plain);
  if (countFirst !== null) {
    const [, over, under, share, sign] = countFirst;
    const bracketed = /[([]/.test(text);
    if (share !== undefined && sign === undefined && !bracketed) return null;
    if (under === undefined && share === undefined) return null;
    return assemble(over, under, share === undefined ? undefined : `${share} %`, mark);
  }
  const shareFirst = new RegExp(
    `^(${N})(${per})?(?:\\s*[(\\[;]\\s*|\\s*,\\s+)(?:[nN]\\s*=\\s*)?(${whole})(?:${of}(${whole}))?\\s*[)\\]]?$`,
    'iu',
  ).exec(plain);
  if (shareFirst === null || (shareFirst[2] === undefined && quantity !== 'share')) return null;
  const parts = assemble(shareFirst[3], shareFirst[4], `${shareFirst[1]} %`, mark);
  if (parts === null || quantity === 'count') return parts;
  return [
    ...parts.filter(({ quantity: one }) => one === 'share'),
    ...parts.filter(({ quantity: one }) => one !== 'share'),
  ];
}

function assemble(
  over: string,
  under: string | undefined,
  share: string | undefined,
  mark: DecimalMark,
): readonly TextPart[] | null {
  const count = printedValue(over, 'count', mark);
  const n = under === undefined ? null : printedValue(under, 'n', mark);
  const percent = share === undefined ? null : printedValue(share, 'share', mark);
  if (count === null) return null;
  return [
    part('count', count),
    ...(percent === null ? [] : [part('share', percent)]),
    ...(n === null ? [] : [part('n', n)]),
  ];
}

/** "2.1-5.4", "3.1 to 4.2", "[3.1, 4.2]". */
export function twoEnds(text: string, quantity: Quantity, mark: DecimalMark): readonly TextPart[] | null {
  if (quantity !== 'range' && quantity !== 'interval' && quantity !== 'iqr') return null;
  const inner = text
    .replace(/^(?:c\.|ca\.?|from|von)\s*/i, '')
    .replace(/^(?:\d{2}(?:[.,]\d)?\s?%[-\s]*)?(?:CI|CrI|KI|IC)\s*[:=]?\s*/, '')
    .replace(/^(?:\d{2}\s?%\s*)?[[(]|[\])]$/g, '')
    .trim();
  const match = new RegExp(
    `^(${N})(?:\\s*(?:mm|cm|m|g|%))?(?:${DASH}|\\s*;\\s*|,\\s+)(${N})\\s*(%?)\\s*(?:mm|cm|m|µm|g|kg|°)?(?:\\s*\\(\\s*(${N})\\s*\\))?$`,
    'iu',
  ).exec(inner);
  const tight =
    match ??
    (mark === '.' && !/^[1-9]\d{0,2},\d{3}$/.test(inner)
      ? new RegExp(`^(${N}),(${N})\\s*(%?)$`, 'u').exec(inner)
      : null);
  if (tight === null) return null;
  const [low, high] = [tight[1], tight[2]].map((side) => printedValue(`${side}${tight[3]}`, quantity, mark));
  if (low === null || high === null) return null;
  const middle = tight[4] === undefined ? null : printedValue(tight[4], 'mean', mark);
  const names: readonly [Quantity, Quantity] =
    quantity === 'range' ? ['min', 'max'] : quantity === 'iqr' ? ['q1', 'q3'] : ['low', 'high'];
  return [
    part(names[0], low),
    part(names[1], high),
    ...(middle === null ? [] : [{ ...part('mean', middle), vague: true as const }]),
  ];
}

/** "5.2 [4.6, 5.7]", "4 (2–9)": a middle with two ends, of which the text does not say what they are. */
export function middleWithEnds(
  text: string,
  quantity: Quantity,
  mark: DecimalMark,
  ends?: 'range' | 'interval' | 'iqr',
): readonly TextPart[] | null {
  const match = new RegExp(`^(${N})(\\s?%)?\\s*[([](.+)[)\\]]$`, 'u').exec(text);
  if (match === null) return null;
  // "67.4 % (95 % CI 59.3–74.5 %, n = 144)".
  const size = /\s*[,;]\s*[nN]\s*=\s*(\d+)$/.exec(match[3]);
  const n = size === null ? null : printedValue(size[1], 'n', mark);
  const inside = match[3]
    .slice(0, size?.index)
    .replace(/^(\d{2}\s?%\s*)?(?:CI|IQR|range|KI)\s*[:=]?\s*/i, '');
  const said = /CI|KI/.test(match[3])
    ? 'interval'
    : /IQR/i.test(match[3])
      ? 'iqr'
      : /range/i.test(match[3])
        ? 'range'
        : ends;
  const two = twoEnds(inside, said ?? 'interval', mark);
  const middle = printedValue(`${match[1]}${match[2] ?? ''}`, quantity, mark);
  if (two === null || middle === null) return null;
  return [
    part(quantity, middle),
    ...two.map((one) => (said === undefined ? { ...one, vague: true as const } : one)),
    ...(n === null ? [] : [part('n', n)]),
  ];
}

/** "2, 27", "2; 27", "2 and 27" for F. */
export function degrees(text: string, quantity: Quantity, mark: DecimalMark): readonly TextPart[] | null {
  if (quantity !== 'df') return null;
  const inner = text.replace(/^(?:d\.?f\.?\s*=?\s*)?[([]?|[)\]]$/gi, '');
  const both = inner.split(/\s*;\s*|,\s+|\s+and\s+|\s*\/\s*/);
  const tight = both.length === 2 || mark !== '.' || !/^\d+,\d+$/.test(inner) ? both : inner.split(',');
  if (tight.length !== 2) return null;
  const values = tight.map((one) => printedValue(one, 'df', mark)).filter((one) => one !== null);
  return values.length === 2 ? [{ quantity: 'df', values }] : null;
}

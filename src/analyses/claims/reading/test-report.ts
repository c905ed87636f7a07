import { type DecimalMark, NUMBER, type PrintedValue, printedValue, relationOf } from './numbers.ts';
import { argumentParts, degreesApart } from './report-arguments.ts';
import { findInterval, intervalParts } from './report-intervals.ts';
import { methodOf, notSignificant, starred } from './report-methods.ts';
import { leftOver } from './report-words.ts';
import { COEFFICIENT, DIFFERENCE, type Meaning, mannersIn, SYMBOLS, sidesIn } from './symbols.ts';
import { isCorrelation, type Quantity } from './terms.ts';
import type { TextPart } from './text-part.ts';

/** What was read of a report, and the words and numbers of it that were not. */
export interface Report {
  readonly parts: readonly TextPart[];
  readonly unused: readonly string[];
}

const RELATION = String.raw`(?:<=|>=|=|<|>|≤|≥|≈|~|:)`;
const ARGUMENTS = String.raw`(?:\s?\([^)]*\)|\s?\[[^\]]*\]|_?\{[^}]*\}|_?\d+(?:[.,]\d+)?(?:\s?[,;/]\s?\d+(?:[.,]\d+)?)?)`;
const STARS = String.raw`(?:\s?\*{1,4}(?!\d))?`;
const ITEM = new RegExp(
  String.raw`(?<![A-Za-zα-ωΑ-Ω\d])(?:${SYMBOLS.map(([pattern], i) => `(?<s${i}>${pattern})`).join('|')})` +
    String.raw`(?<args>${ARGUMENTS})?\s*(?:(?<relation>${RELATION})\s*(?<second>[<>≤≥]\s*)?(?<value>${NUMBER}\s?%?|n\.?\s?s\.?)(?<stars>${STARS}))(?![A-Za-z\d])`,
  'gu',
);
/** "OR 2.4", "mean difference, 1.2": no sign stands between. */
const NAMED_EFFECT = new RegExp(
  String.raw`(?<![\p{L}])(OR|[Oo]dds ratio|[Cc]hi-[Ss]quared?|[Cc]ram[eé]rs?['’]?s?\s+V|${DIFFERENCE})(?:,|:)?\s+(?=[-+]?[\d.])`,
  'gu',
);
/** Errors are read beside a coefficient; elsewhere they are of a mean. */
const OF_A_MODEL = new RegExp(String.raw`(?<![\p{L}])${COEFFICIENT}\s?=`, 'u');
const NAMED_ERROR = /(?<![\p{L}.])(SE|S\.E\.|s\.e\.)(?:,|:)?\s+(?=[\d.])/gu;
/** "t-test", "F test": names of tests, no figures. */
const NAMED_TEST = /(?<![A-Za-z])[tFUHGzZ][- ](?:tests?|statistics?)(?=\s*:|\s+[A-Za-z(])/gu;
const NOT_SIGNIFICANT =
  /(?<![A-Za-z.])(?:[pP]\s*[=:]?\s*)?(?:n\.\s?s\.|ns|NS|n\.s|not significant)(?![A-Za-z])/u;

/** What an interval beside it is of, whatever the row of the claims file says. */
const HAS_INTERVAL: ReadonlySet<Quantity> = new Set<Quantity>(['estimate', 'effect', 'difference']);

interface Item {
  readonly symbol: Meaning;
  readonly arguments: string;
  readonly value: PrintedValue | null;
  readonly stars: number;
  readonly text: string;
}

/**
 * Reads a test report as people and programs print it: a statistic with its degrees of freedom, p, numbers of
 * records, effect sizes and interval in any order. Null where the text is no report; what was not used is told.
 *
 * @param quantity what the row of the claims file says the text is.
 * @param about words that name the test and hold no figure: the title of a program's output.
 */
export function readTestReport(
  text: string,
  quantity: Quantity,
  mark: DecimalMark,
  about = '',
): Report | null {
  const ofModel = OF_A_MODEL.test(text);
  let rest = text.replace(NAMED_EFFECT, '$1 = ');
  if (ofModel) rest = rest.replace(NAMED_ERROR, '$1 = ');
  const cut = (used: string) => {
    rest = rest.replace(used, ' ¦ ');
  };
  const interval = findInterval(text);
  if (interval !== null) cut(interval[0]);
  for (const named of text.match(NAMED_TEST) ?? []) cut(named);
  const letter = /(?<![A-Za-z])F\b|F(?=[\d(_[])/.test(rest) ? ('F' as const) : undefined;
  const apart = degreesApart(rest, letter, mark);
  if (apart !== null) cut(apart.used);
  const items: Item[] = [];
  for (const match of rest.matchAll(ITEM)) {
    const groups = match.groups ?? {};
    const at = SYMBOLS.findIndex((_, i) => groups[`s${i}`] !== undefined);
    const [, symbol] = SYMBOLS[at];
    if (symbol.quantity === 'se' && !ofModel) continue;
    const said = groups.value ?? '';
    const value = /^n/.test(said)
      ? notSignificant(match[0])
      : printedValue(said.trim(), symbol.quantity, mark);
    const relation = relationOf((groups.second ?? groups.relation ?? '=').trim());
    items.push({
      symbol,
      arguments: (groups.args ?? '')
        .trim()
        .replace(/^_?[([{]|[)\]}]$/g, '')
        .replace(/^_/, ''),
      value: value === null || /^n/.test(said) ? value : { ...value, relation, text: match[0].trim() },
      stars: (groups.stars ?? '').trim().length,
      text: match[0],
    });
  }
  for (const { text: used, value } of items) if (value !== null) cut(used);
  const statistics = items.filter(({ symbol, value }) => symbol.quantity === 'statistic' && value !== null);
  const [first, ...more] = statistics;
  const others = items.filter(({ symbol }) => symbol.quantity !== 'statistic');
  // Behind a difference alone, "ns" may as well be its unit.
  const difference = items.length > 0 && items.every(({ symbol }) => symbol.quantity === 'difference');
  const plainNs = difference ? null : NOT_SIGNIFICANT.exec(rest);
  // A single symbol only names what its row says already; under another quantity it is a label.
  if (items.length + (interval === null ? 0 : 1) === 0) return null;
  if (items.length === 1 && interval === null && plainNs === null && items[0].arguments === '') {
    const said = items[0].symbol.quantity;
    const test = quantity === 'statistic' || quantity === 'correlation';
    if (said !== quantity && !(test && (said === 'statistic' || said === 'p'))) return null;
  }
  if (
    items.length === 0 ||
    (items.length === 1 &&
      first === undefined &&
      interval !== null &&
      items[0].symbol.quantity !== quantity &&
      !HAS_INTERVAL.has(items[0].symbol.quantity))
  )
    return null;
  const words = `${text} ${about}`;
  const method = methodOf(first?.symbol, words);
  const another = mannersIn(words).filter((manner) => manner === 'another test');
  const named = method === undefined ? {} : { method };
  const parts: TextPart[] = [];
  if (first?.value != null) {
    const own = quantity === 'correlation' && isCorrelation(method) ? quantity : 'statistic';
    parts.push({ quantity: own, values: [first.value], ...named });
    parts.push(...argumentParts(first.arguments, method, mark));
  }
  // "U = 45, Z = -1.2", "χ²(4) = 9.9, V = .31": another statistic of the same test, or its effect.
  for (const { symbol, value } of more) if (value !== null) parts.push(secondStatistic(symbol, value));
  const degrees = others.filter(({ symbol }) => symbol.quantity === 'df').flatMap(({ value }) => value ?? []);
  if (degrees.length > 0) parts.push({ quantity: 'df', values: degrees.slice(0, 2), ...named });
  else if (apart !== null && !parts.some((part) => part.quantity === 'df'))
    parts.push({ ...apart.part, ...named });
  for (const { symbol, value, arguments: inner } of others) {
    if (value === null || symbol.quantity === 'df') continue;
    if (symbol.quantity === 'p') {
      const manners = mannersIn(`${inner} ${words}`);
      const sided = sidesIn(words);
      parts.push({
        quantity: 'p',
        values: [value],
        ...named,
        ...(manners.length > 0 ? { manners } : {}),
        ...(sided === null ? {} : { sided }),
      });
    } else
      parts.push({
        quantity: symbol.quantity,
        values: [value],
        ...(symbol.method === undefined ? {} : { method: symbol.method }),
      });
  }
  if (!parts.some((part) => part.quantity === 'p')) {
    const stars = items.find((item) => item.stars > 0)?.stars ?? 0;
    if (plainNs !== null) {
      parts.push({ quantity: 'p', values: [notSignificant(plainNs[0])], ...named });
      cut(plainNs[0]);
    } else if (stars > 0) parts.push({ quantity: 'p', values: [starred(stars)], ...named, stars: true });
  }
  if (interval !== null) parts.push(...intervalParts(interval, mark, parts));
  // The odds ratio of Fisher's test is the conditional one, with an interval of its own.
  const elsewhere = (part: TextPart) =>
    another.length > 0 ||
    parts.some((one) => one.quantity === 'estimate') ||
    (part.method === 'odds-ratio' && /fisher/i.test(words));
  return {
    parts: parts
      .filter((part, i) => keep(part, i, parts))
      .map((part) =>
        elsewhere(part)
          ? { ...part, manners: [...new Set([...(part.manners ?? []), 'another test' as const])] }
          : part,
      ),
    unused: leftOver(rest),
  };
}

/** The same quantity said twice in one text is kept once where it is the same print. */
function keep(part: TextPart, at: number, parts: readonly TextPart[]): boolean {
  return !parts
    .slice(0, at)
    .some(
      (other) =>
        other.quantity === part.quantity &&
        other.method === part.method &&
        part.quantity !== 'n' &&
        other.values.length === part.values.length &&
        other.values.every(
          (value, i) =>
            value.number.digits === part.values[i].number.digits &&
            value.number.decimals === part.values[i].number.decimals,
        ),
    );
}

function secondStatistic({ method }: Meaning, value: PrintedValue): TextPart {
  if (method === 'signed-rank') return { quantity: 'effect', values: [value], method: 'cramer-v' };
  if (method === 'r') return { quantity: 'effect', values: [value], method: 'r' };
  return { quantity: 'statistic', values: [value], ...(method === undefined ? {} : { method }) };
}

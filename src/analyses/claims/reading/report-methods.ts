import type { PrintedValue } from './numbers.ts';
import type { Meaning } from './symbols.ts';
import type { TestMethod } from './terms.ts';

/** The words around a symbol may say more: Kruskal and Wallis print a chi-squared, Wilcoxon's V is no Cramér's. */
export function methodOf(symbol: Meaning | undefined, text: string): TestMethod | undefined {
  const method = symbol?.method;
  if (symbol === undefined) return testNamed(text);
  if (method === 'chi-squared' && /kruskal/i.test(text)) return 'H';
  if (method === 'r' && /spearman/i.test(text)) return 'rho';
  if (method === 'r' && /kendall/i.test(text)) return 'tau';
  if (method === 'W' && /signed/i.test(text)) return 'signed-rank';
  if (method === 'chi-squared' && /\bG\b.?test|likelihood ratio/i.test(text)) return 'G';
  return method;
}

/** The test that words name where only its p is printed: "Kruskal-Wallis P < .001". */
function testNamed(text: string): TestMethod | undefined {
  return NAMES_OF_TESTS.find(([pattern]) => pattern.test(text))?.[1];
}

const NAMES_OF_TESTS: readonly (readonly [RegExp, TestMethod])[] = [
  [/kruskal/i, 'H'],
  [/mann.?whitney|rank.?sum/i, 'U'],
  [/signed.?rank/i, 'signed-rank'],
  [/fisher.{0,3}s?\s+exact/i, 'fisher'],
  [/spearman/i, 'rho'],
  [/kendall/i, 'tau'],
];

/** "n.s." is a p above 0.05. */
export function notSignificant(text: string): PrintedValue {
  return { text, relation: '>', number: { digits: 5n, decimals: 2 }, percent: false };
}

/** Stars stand for levels, which differ: one for 0.05 or 0.1, two for 0.01 or 0.05, three for 0.001 or 0.01. */
export function starred(stars: number): PrintedValue {
  const digits = stars === 1 ? 10n : stars === 2 ? 5n : 1n;
  return { text: '*'.repeat(stars), relation: '<', number: { digits, decimals: 2 }, percent: false };
}

import { exactly, overlap, type Range, scaled } from '../../../../numerics/printed/range.ts';
import { pRange } from '../../../../numerics/printed/test-p.ts';
import { triedText } from '../../conventions/register.ts';
import { numberPrinted, rangeOfFigure } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTest } from './test-groups.ts';

export interface Misfit {
  readonly test: PrintedTest;
  readonly p: PrintedFigure;
  readonly raw: Range;
  readonly turned: boolean;
  readonly one: boolean;
  readonly corrected: boolean;
  readonly working: string;
}

/** Below this share of the computed p, neither permutation nor exactness explains a print. */
const PERMUTED_FROM = 0.2;

/** A p that its statistic does not give: what else is ordinary, in the order in which it is said or likely. */
export function misfit({ test, p, raw, turned, one, corrected, working }: Misfit) {
  const printed = rangeOfFigure(p, 'any');
  const more = printed.high >= raw.low;
  const resolve = 'State the test, its sides, and whether p is adjusted or comes from permutations.';
  const said = (outcome: 'passes' | 'differs' | 'cannot be', text: string, explained?: string) => ({
    outcome,
    working: `${working}; printed: ${p.printed}. ${text}`,
    ...(explained === undefined ? {} : { explained }),
    ...(outcome === 'passes' ? {} : { resolve }),
  });
  const has = (manner: string) => p.manners.some((one1) => one1 === manner);
  if (has('adjusted'))
    return more
      ? said('passes', 'It is printed as adjusted for several tests, which makes p larger.')
      : said('differs', 'An adjusted p is never smaller than that.');
  if (has('permuted') || has('exact') || has('continuity'))
    return printed.high >= raw.low * PERMUTED_FROM && printed.low <= Math.min(1, raw.high * 5 + 0.05)
      ? said(
          'passes',
          'It is printed as exact, corrected or from permutations, which this does not recompute.',
        )
      : said('differs', 'An exact p or one from permutations is rarely so far off.');
  if (has('sphericity') && corrected) return said('passes', 'A correction for sphericity makes p larger.');
  if (turned)
    return said('differs', 'It fits the other number of sides.', one ? 'a two-sided p' : 'a one-sided p');
  const slip = [0.1, 10, 100, 0.01].filter(
    (by) => overlap(scaled(raw, by), printed) && p.values[0].relation === '=',
  );
  if (slip.length > 0)
    return said('differs', 'The digits fit with the decimal point elsewhere.', 'a decimal point misplaced');
  const times = multiple(raw, printed, test.family);
  if (times !== null)
    return said(
      'passes',
      `Adjusted for ${times} tests after Bonferroni it would print so; it does not say that it is.`,
    );
  if (corrected)
    return said(
      'differs',
      'A correction for sphericity could make p so large.',
      'a correction for sphericity',
    );
  if (more)
    return said(
      'differs',
      'Only an adjustment for several tests, permutations or another test would give more.',
    );
  if (printed.high >= raw.low * PERMUTED_FROM)
    return said('differs', 'Only permutations or an exact test would give so little.');
  return said(
    'cannot be',
    triedText(['rounding', 'sides', 'degrees', 'bothTails', 'adjusted', 'permuted', 'sphericity']),
  );
}

/** By how many tests p was multiplied, where as many are printed together. */
function multiple(raw: Range, printed: Range, family: number): number | null {
  for (let by = 2; by <= Math.min(family, 30); by++)
    if (overlap({ low: Math.min(1, raw.low * by), high: Math.min(1, raw.high * by) }, printed)) return by;
  return null;
}

/** Does p lie between that of the printed degrees of freedom and that of the strictest correction (Greenhouse & Geisser 1959)? */
export function sphericity({ statistic, df }: PrintedTest, p: PrintedFigure): boolean {
  if (df === undefined || df.values.length !== 2) return false;
  const [between, within] = df.values.map((value) => numberPrinted({ ...df, values: [value] }));
  if (between < 2) return false;
  const printed = rangeOfFigure(statistic, 'any');
  const loosest = pRange('F', printed, [exactly(between), exactly(within)]);
  const strictest = pRange('F', printed, [exactly(1), exactly(within / between)]);
  return overlap({ low: loosest.low, high: strictest.high }, rangeOfFigure(p, 'any'));
}

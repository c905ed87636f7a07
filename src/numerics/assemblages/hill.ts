import { exp, ln, pow } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { logChoose, rarefiedRichness } from './diversity.ts';

/**
 * How many kinds there are and how evenly they are spread, in the whole from which a sample was drawn: estimators
 * that make up for what a sample has not met. f1 and f2 are the kinds met once and twice.
 */

interface Frequencies {
  readonly present: readonly number[];
  readonly n: number;
  readonly once: number;
  readonly twice: number;
}

export function frequencies(counts: ArrayLike<number>): Frequencies {
  const present = Array.from(counts).filter((count) => count > 0);
  return {
    present,
    n: present.reduce((sum, count) => sum + count, 0),
    once: present.filter((count) => count === 1).length,
    twice: present.filter((count) => count === 2).length,
  };
}

/** Kinds that were not met: the bias-corrected part of Chao's estimate where no kind was met twice. */
export function unseenKinds({ n, once, twice }: Frequencies): number {
  const share = (n - 1) / n;
  return twice > 0 ? (share * once * once) / (2 * twice) : (share * once * (once - 1)) / 2;
}

/** Share of f1 by which unseen kinds are fewer than the kinds met once (A of Chao & Jost 2012). */
function decay({ n, once, twice }: Frequencies): number {
  if (twice > 0) return ((n - 1) * once) / ((n - 1) * once + 2 * twice);
  return once > 1 ? ((n - 1) * (once - 1)) / ((n - 1) * (once - 1) + 2) : once > 0 ? 0 : 1;
}

/**
 * Share of the whole that belongs to kinds that the sample has met (Chao & Jost 2012, Ecology 93:2533, equation 4a;
 * after Good 1953). 0 where every item is of a kind of its own and nothing more can be said.
 */
export function sampleCoverage(counts: ArrayLike<number>): number | Unavailable {
  const found = frequencies(counts);
  const { n, once } = found;
  if (n < 2) return { why: `needs 2 items, not ${n}` };
  if (once === 0) return 1;
  if (once === n) return 0;
  return 1 - (once / n) * decay(found);
}

/**
 * Shannon's entropy of the whole, in natural units (Chao, Wang & Jost 2013, Methods Ecol. Evol. 4:1091, equation 7b):
 * unlike the entropy of the sample it hardly depends on its size. Its exponential is the number of common kinds.
 */
export function shannonEstimate(counts: ArrayLike<number>): number | Unavailable {
  const found = frequencies(counts);
  const { present, n, once, twice } = found;
  if (n < 2) return { why: `needs 2 items, not ${n}` };
  const harmonic = new Float64Array(n);
  for (let k = 1; k < n; k++) harmonic[k] = harmonic[k - 1] + 1 / k;
  let entropy = 0;
  for (const count of present)
    if (count < n) entropy += (count / n) * (harmonic[n - 1] - harmonic[count - 1]);
  if (once === 0) return entropy;
  const a =
    twice > 0 ? (2 * twice) / ((n - 1) * once + 2 * twice) : once > 1 ? 2 / ((n - 1) * (once - 1) + 2) : 1;
  if (a >= 1) return entropy;
  let rest = -ln(a);
  let power = 1;
  for (let r = 1; r < n; r++) {
    power *= 1 - a;
    rest -= power / r;
  }
  // What is left of the series after n - 1 terms is too small for a difference of two near numbers.
  return entropy + (once / n) * pow(1 - a, 1 - n) * Math.max(0, rest);
}

/** Chance that two items drawn from the whole are of one kind, without bias (Simpson 1949, Nature 163:688). */
export function sameKind(counts: ArrayLike<number>): number | Unavailable {
  const { present, n } = frequencies(counts);
  if (n < 2) return { why: `needs 2 items, not ${n}` };
  return present.reduce((sum, count) => sum + (count * (count - 1)) / (n * (n - 1)), 0);
}

/** Hill numbers of order 1 and 2 of the whole: how many kinds are common, and how many are dominant. */
export function hillNumber(counts: ArrayLike<number>, order: 1 | 2): number | Unavailable {
  const value = order === 1 ? shannonEstimate(counts) : sameKind(counts);
  if (typeof value !== 'number') return value;
  if (order === 1) return exp(value);
  return value > 0 ? 1 / value : { why: 'no two items are of one kind' };
}

/** Expected coverage of a draw of m of the n items, without replacement (Chao & Jost 2012, equation 8). */
export function coverageAt(counts: ArrayLike<number>, m: number): number | Unavailable {
  const { present, n } = frequencies(counts);
  if (m >= n) return sampleCoverage(counts);
  const draws = logChoose(n - 1, m);
  let missed = 0;
  for (const count of present)
    if (n - count >= m) missed += (count / n) * exp(logChoose(n - count, m) - draws);
  return 1 - missed;
}

/**
 * Kinds expected in a sample of this coverage, larger or smaller than the one at hand: samples of equal coverage are
 * equally complete, which samples of equal size are not (Chao & Jost 2012). Between whole sizes by a straight line.
 *
 * @param coverage above 0, below 1 or equal to that of the sample.
 */
export function richnessAtCoverage(counts: ArrayLike<number>, coverage: number): number | Unavailable {
  const found = frequencies(counts);
  const { present, n, once } = found;
  const own = sampleCoverage(counts);
  if (typeof own !== 'number') return own;
  if (own === 0) return { why: 'every item is of a kind of its own' };
  if (coverage > own && once > 0) {
    const unseen = unseenKinds(found);
    const a = decay(found);
    if (!(unseen > 0) || !(a > 0 && a < 1) || coverage >= 1) return present.length + unseen;
    const more = ln((n * (1 - coverage)) / once) / ln(a) - 1;
    return present.length + unseen * (1 - pow(1 - once / (n * unseen + once), Math.max(0, more)));
  }
  // No sample is smaller than one item, which has one kind.
  let [low, high] = [1, n];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const at = coverageAt(counts, middle);
    if (typeof at === 'number' && at < coverage) low = middle;
    else high = middle;
  }
  const at = (m: number) => coverageAt(counts, m) as number;
  const kinds = (m: number) => rarefiedRichness(counts, m) as number;
  const part = at(high) > at(low) ? Math.min(1, Math.max(0, (coverage - at(low)) / (at(high) - at(low)))) : 1;
  return kinds(low) + part * (kinds(high) - kinds(low));
}

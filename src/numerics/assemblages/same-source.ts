import { exp } from '../foundation/elementary.ts';
import { logFactorial } from '../foundation/log-factorial.ts';
import type { Random } from '../foundation/random.ts';
import { chanceBeyond } from '../resampling/beyond-draws.ts';
import { dealtOut, MANY_THINGS } from '../resampling/drawn-counts.ts';
import { countRelabellings, shuffle } from '../resampling/permutation.ts';
import { addedUp, type Bundles, bundled, drawnCounts, type ItemKinds } from './draws.ts';
import { assemblageSimilarity, isDistance, type SimilarityCoefficient } from './similarity.ts';

export interface SameSource {
  readonly p: number;
  /** exact: over all ways to deal; fitted: none of the random ways reached it, and a gamma curve through them goes on. */
  readonly method: 'exact' | 'resampled' | 'fitted';
  /** Random ways tried; all, Infinity where they are too many to count, when exact. */
  readonly ways: number;
  /** Whether no p could be less by so many random ways: it may be far less. */
  readonly isLeast: boolean;
}

/** Random ways to deal the items of one pair: there are many pairs. */
const MOST_DEALT = 1999;
/** Through fewer no curve is drawn. */
const LEAST_FITTED = 999;
/**
 * Coefficients for which the curve was held against exact chances and errs to the safe side (`npm run simulate --
 * many-places`); of chi-square distance it can be 80 times too small, and coefficients of presence have none.
 */
const FITTED: ReadonlySet<SimilarityCoefficient> = new Set(['brainerd-robinson', 'morisita-horn']);

/**
 * Could both assemblages be draws from one source? p by dealing their items between them, the coefficient
 * as the statistic (after DeBoer, Kintigh & Rostoker 1996, Am. Antiquity 61:263). Exact where what the first may be dealt
 * is of few sorts, each weighed by its ways. One pair is one of many, so that p must not end where the random ways
 * end: where none of them is as unlike, a curve through them says how rare that is.
 */
export function sameSource(
  first: ItemKinds,
  second: ItemKinds,
  columns: number,
  coefficient: SimilarityCoefficient,
  { random, relabellings }: { readonly random: Random; readonly relabellings: number },
): SameSource {
  const both = [...first, ...second];
  const bundles = bundled(both);
  const whole = addedUp(bundles.kinds, bundles.items, columns);
  const sign = isDistance(coefficient) ? 1 : -1;
  const unlike = (one: Float64Array) => {
    const other = whole.map((count, column) => count - one[column]);
    return sign * assemblageSimilarity([one, other], coefficient).values[0];
  };
  const observed = unlike(drawnCounts(first, Int32Array.from(first.keys()), columns));
  // Deals that should tie with the observed one may differ in the last bits.
  const reaches = (value: number) => value >= observed - 1e-9 * Math.max(1, Math.abs(observed));
  const deals = Math.min(relabellings, MOST_DEALT);
  if (sortsDealt(bundles.items, first.length, deals) <= deals)
    return exactly(bundles, first.length, (times) => reaches(unlike(addedUp(bundles.kinds, times, columns))));
  const deal = dealer(both, bundles, first.length, columns, random);
  const values = Float64Array.from({ length: deals }, () => unlike(deal()));
  const reached = values.filter(reaches).length;
  const drawn = {
    p: (reached + 1) / (deals + 1),
    method: 'resampled',
    ways: deals,
    isLeast: reached === 0,
  } as const;
  const isFitted = reached === 0 && deals >= LEAST_FITTED && FITTED.has(coefficient);
  const beyond = isFitted ? chanceBeyond(observed, values) : null;
  if (beyond === null || beyond >= drawn.p) return drawn;
  const least = exp(-logWays(both.length, first.length));
  return { p: Math.max(beyond, least), method: 'fitted', ways: deals, isLeast: false };
}

/** Deals so many of the items and gives the counts of their kinds; of very many, by how many bring the same. */
function dealer(
  both: ItemKinds,
  { kinds, items }: Bundles,
  dealt: number,
  columns: number,
  random: Random,
): () => Float64Array {
  if (both.length > MANY_THINGS) return () => addedUp(kinds, dealtOut(items, dealt, random), columns);
  const labels = Int32Array.from(both, (_, item) => (item < dealt ? 0 : 1));
  return () => {
    shuffle(labels, random);
    const counts = new Float64Array(columns);
    both.forEach((item, place) => {
      if (labels[place] === 0)
        for (let column = 0; column < columns; column++) counts[column] += item[column];
    });
    return counts;
  };
}

/**
 * How many different numbers of each bundle may be dealt; more than `most` are not counted to the end. In a time that
 * grows with the items times the bundles, however many bring the same.
 */
function sortsDealt(items: Float64Array, dealt: number, most: number): number {
  let sorts = Float64Array.of(1);
  let left = items.reduce((sum, size) => sum + size, 0);
  for (const size of items) {
    left -= size;
    const next = new Float64Array(Math.min(dealt, sorts.length - 1 + size) + 1);
    // With `so` dealt, up to `size` of them of this bundle: the sums of so many neighbours.
    let reach = 0;
    for (let so = 0; so < next.length; so++) {
      reach += so < sorts.length ? sorts[so] : 0;
      reach -= so > size ? sorts[so - size - 1] : 0;
      // Where all that is left could not make up the whole, nothing was dealt so.
      next[so] = so + left >= dealt ? reach : 0;
    }
    sorts = next;
    if (sorts.some((count) => count > most)) return Infinity;
  }
  return sorts[dealt] ?? 0;
}

/** The chance of those deals, of all of them, that are as unlike as what was found. */
function exactly(
  { items }: Bundles,
  dealt: number,
  isAsUnlike: (times: Float64Array) => boolean,
): SameSource {
  const all = items.reduce((sum, size) => sum + size, 0);
  const ways = logWays(all, dealt);
  const times = new Float64Array(items.length);
  let p = 0;
  let isSure = true;
  const go = (bundle: number, wanted: number, left: number, logged: number): void => {
    if (bundle === items.length) {
      if (wanted > 0) return;
      if (isAsUnlike(times)) p += exp(logged - ways);
      else isSure = false;
      return;
    }
    const rest = left - items[bundle];
    for (let own = Math.max(0, wanted - rest); own <= Math.min(items[bundle], wanted); own++) {
      times[bundle] = own;
      go(bundle + 1, wanted - own, rest, logged + logWays(items[bundle], own));
    }
  };
  go(0, dealt, all, 0);
  return {
    p: isSure ? 1 : Math.min(1, p),
    method: 'exact',
    isLeast: false,
    ways: countRelabellings(Int32Array.from({ length: all }, (_, item) => (item < dealt ? 0 : 1))),
  };
}

const logWays = (of: number, dealt: number) =>
  logFactorial(of) - logFactorial(dealt) - logFactorial(of - dealt);

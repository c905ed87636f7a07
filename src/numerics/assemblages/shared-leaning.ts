import { type Condensed, condensedIndex } from '../dissimilarity/condensed.ts';
import type { Random } from '../foundation/random.ts';
import { drawsWithinReach } from '../resampling/within-reach.ts';
import type { ItemKinds } from './draws.ts';

/** Do two assemblages lean the same way from what all have in common, further than chance would? */
export interface SharedLeanings {
  /** Inner product of the two departures from the common shares, weighted by chi-square; positive: the same way. */
  readonly leaning: Condensed;
  /** One-sided p of each pair, the larger of the two that it has; NaN where a side is left out. */
  readonly p: Condensed;
  /** Deals that each p rests on at least. */
  readonly deals: number;
}

/**
 * For every pair the sum over kinds of (a - c)(b - c) / c, a and b their shares and c those of all together: the inner product
 * whose squares are the inertia of correspondence analysis (Greenacre 1984, Theory and Applications of Correspondence
 * Analysis, ch. 4). Its p: one of the two stays as it is, the items of all others are dealt anew, and the other gets as many as
 * it has; then the same the other way round, and the larger p counts, so that neither leaning may be chance. Likeness alone
 * would not do: samples of one source are alike without having anything of their own in common.
 *
 * @param items kinds of each item of each assemblage. @param taking assemblages that take part.
 */
export function sharedLeanings(
  items: readonly ItemKinds[],
  columns: number,
  taking: readonly boolean[],
  { random, deals }: { readonly random: Random; readonly deals: number },
): SharedLeanings {
  const n = items.length;
  const counts = items.map((list) => sumOf(list, columns));
  const all = sumOf(counts, columns);
  const whole = total(all);
  const common = all.map((count) => count / whole);
  const size = (n * (n - 1)) / 2;
  const leaning = new Float64Array(size);
  const p = new Float64Array(size).fill(Number.NaN);
  let fewest = deals;
  for (let fixed = 0; fixed < n; fixed++) {
    const own = total(counts[fixed]);
    if (own === 0) continue;
    const weights = common.map((share, kind) =>
      share === 0 ? 0 : (counts[fixed][kind] / own - share) / share,
    );
    const others = items.flatMap((list, place) =>
      place === fixed ? [] : list.map((item) => ({ place, item })),
    );
    const scores = Float64Array.from(others, ({ item }) => dot(item, weights));
    const sizes = Float64Array.from(others, ({ item }) => total(item));
    const places = Int32Array.from(others, ({ place }) => place);
    // Sum over kinds of common share times weight is 0, so that the mean score of the items is the inner product.
    const observed = meansBy(places, scores, sizes, n);
    for (let other = 0; other < n; other++)
      if (other !== fixed) leaning[condensedIndex(n, fixed, other)] = observed[other];
    if (!taking[fixed]) continue;
    const dealt = drawsWithinReach(deals, others.length);
    fewest = Math.min(fewest, dealt);
    const reached = reachedBy(
      scores,
      sizes,
      items.map((list, place) => ({ items: list.length, observed: observed[place] })),
      {
        random: random.stream(`fixed ${fixed}`),
        deals: dealt,
        taking: taking.map((takes, place) => takes && place !== fixed),
      },
    );
    for (let other = 0; other < n; other++) {
      if (other === fixed || !taking[other]) continue;
      const at = condensedIndex(n, fixed, other);
      const one = (reached[other] + 1) / (dealt + 1);
      p[at] = Number.isNaN(p[at]) ? one : Math.max(p[at], one);
    }
  }
  return { leaning: { n, values: leaning }, p: { n, values: p }, deals: fewest };
}

/** Deals that should tie may differ in their last bits. */
const TIE = 1e-12;

function sumOf(list: readonly Float64Array[], columns: number): Float64Array {
  const sum = new Float64Array(columns);
  for (const counts of list) for (let kind = 0; kind < columns; kind++) sum[kind] += counts[kind];
  return sum;
}

function total(counts: Float64Array): number {
  return counts.reduce((sum, count) => sum + count, 0);
}

function dot(item: Float64Array, weights: Float64Array): number {
  let sum = 0;
  for (let kind = 0; kind < item.length; kind++) sum += item[kind] * weights[kind];
  return sum;
}

/** Mean score of the records at each place. */
function meansBy(places: Int32Array, scores: Float64Array, sizes: Float64Array, n: number): Float64Array {
  const sums = new Float64Array(n);
  const records = new Float64Array(n);
  for (let i = 0; i < places.length; i++) {
    sums[places[i]] += scores[i];
    records[places[i]] += sizes[i];
  }
  return sums.map((sum, place) => (records[place] === 0 ? 0 : sum / records[place]));
}

/**
 * In how many deals each place gets a mean as large as its own. The first items of one random order are a deal to every
 * place alike, so that no order need be longer than the largest place.
 */
function reachedBy(
  scores: Float64Array,
  sizes: Float64Array,
  places: readonly { readonly items: number; readonly observed: number }[],
  {
    random,
    deals,
    taking,
  }: { readonly random: Random; readonly deals: number; readonly taking: readonly boolean[] },
): Int32Array {
  const reached = new Int32Array(places.length);
  const longest = places.reduce(
    (most, { items }, place) => (taking[place] ? Math.max(most, items) : most),
    0,
  );
  const order = Int32Array.from(scores, (_, place) => place);
  const means = new Float64Array(longest + 1);
  for (let deal = 0; deal < deals; deal++) {
    let sum = 0;
    let records = 0;
    for (let i = 0; i < longest; i++) {
      // Fisher-Yates, as far as is needed (Knuth 1997, The Art of Computer Programming 2, algorithm 3.4.2P).
      const other = i + random.integer(order.length - i);
      const drawn = order[other];
      order[other] = order[i];
      order[i] = drawn;
      sum += scores[drawn];
      records += sizes[drawn];
      means[i + 1] = sum / records;
    }
    for (let place = 0; place < places.length; place++)
      if (taking[place] && means[places[place].items] >= places[place].observed - TIE) reached[place]++;
  }
  return reached;
}

import { ln } from '../foundation/elementary.ts';

/**
 * The different readings of a distribution seen through intervals: which of its places each covers, first to last,
 * and how often it occurs.
 */
export interface Spans {
  readonly first: Int32Array;
  readonly last: Int32Array;
  readonly count: Float64Array;
  readonly n: number;
}

/** Chance of each reading under these shares of the places. */
export function chances(share: Float64Array, { first, last }: Spans): Float64Array {
  const below = cumulated(share);
  // What covers one place alone, as exact readings do, is not taken as a difference, where digits are lost.
  return Float64Array.from(first, (from, i) =>
    from === last[i] ? share[from] : below[last[i] + 1] - below[from],
  );
}

/** One self-consistent step (Turnbull 1976); `pull` is what each share is multiplied by, 1 where it rests. */
export function selfConsistent(
  share: Float64Array,
  spans: Spans,
): { readonly share: Float64Array; readonly pull: Float64Array } {
  const { first, last, count, n } = spans;
  const m = share.length;
  const opened = new Float64Array(m + 1);
  const pull = new Float64Array(m);
  for (const [i, chance] of chances(share, spans).entries()) {
    const weight = count[i] / chance / n;
    if (first[i] === last[i]) pull[first[i]] += weight;
    else {
      opened[first[i]] += weight;
      opened[last[i] + 1] -= weight;
    }
  }
  let open = 0;
  const next = new Float64Array(m);
  for (let j = 0; j < m; j++) {
    open += opened[j];
    pull[j] += open;
    next[j] = Math.max(0, share[j] * pull[j]);
  }
  return { share: summingToOne(next), pull };
}

/**
 * One step of the iterative convex minorant (Groeneboom & Wellner 1992; with the self-consistent step in turn it
 * finds the maximum, Wellner & Zhan 1997, J. Am. Stat. Assoc. 92:945): Newton's step for the heights of the curve,
 * each by itself, made to rise by weighted isotonic regression, and halved until the likelihood does not fall.
 */
export function convexMinorant(share: Float64Array, spans: Spans): Float64Array {
  const { first, last, count } = spans;
  const m = share.length;
  const height = cumulated(share);
  const slope = new Float64Array(m + 1);
  const bend = new Float64Array(m + 1);
  const before = chances(share, spans);
  for (let i = 0; i < before.length; i++) {
    const one = count[i] / before[i];
    const two = one / before[i];
    slope[last[i] + 1] += one;
    slope[first[i]] -= one;
    bend[last[i] + 1] += two;
    bend[first[i]] += two;
  }
  const wanted = new Float64Array(Math.max(0, m - 1));
  for (let j = 1; j < m; j++) wanted[j - 1] = height[j] + slope[j] / bend[j];
  const risen = rising(wanted, bend.subarray(1, m));
  const target = new Float64Array(m);
  let under = 0;
  for (let j = 0; j < m; j++) {
    const over = j === m - 1 ? 1 : Math.min(1, Math.max(under, risen[j]));
    target[j] = over - under;
    under = over;
  }
  const now = logLikelihood(before, count);
  for (let part = 1; part > 1e-6; part /= 2) {
    const tried = share.map((mass, j) => mass + part * (target[j] - mass));
    if (logLikelihood(chances(tried, spans), count) >= now) return summingToOne(tried);
  }
  return share;
}

/** Weighted isotonic regression by pooling neighbours (Barlow et al. 1972). Every weight is above nought. */
function rising(values: Float64Array, weights: Float64Array): Float64Array {
  const level = new Float64Array(values.length);
  const weight = new Float64Array(values.length);
  const end = new Int32Array(values.length);
  let blocks = 0;
  for (let j = 0; j < values.length; j++) {
    level[blocks] = values[j];
    weight[blocks] = weights[j];
    end[blocks] = j + 1;
    for (; blocks > 0 && level[blocks - 1] >= level[blocks]; blocks--) {
      const both = weight[blocks - 1] + weight[blocks];
      level[blocks - 1] = (weight[blocks - 1] * level[blocks - 1] + weight[blocks] * level[blocks]) / both;
      weight[blocks - 1] = both;
      end[blocks - 1] = end[blocks];
    }
    blocks++;
  }
  const risen = new Float64Array(values.length);
  for (let block = 0, j = 0; block < blocks; block++) for (; j < end[block]; j++) risen[j] = level[block];
  return risen;
}

function logLikelihood(chance: Float64Array, count: Float64Array): number {
  let sum = 0;
  let product = 1;
  for (let i = 0; i < chance.length; i++) {
    if (!(chance[i] > 0)) return Number.NEGATIVE_INFINITY;
    if (count[i] > 1) sum += count[i] * ln(chance[i]);
    else product *= chance[i];
    // Many factors to one logarithm.
    if (product < 1e-200) {
      sum += ln(product);
      product = 1;
    }
  }
  return sum + ln(product);
}

function cumulated(share: Float64Array): Float64Array {
  const below = new Float64Array(share.length + 1);
  for (let j = 0; j < share.length; j++) below[j + 1] = below[j] + share[j];
  return below;
}

function summingToOne(share: Float64Array): Float64Array {
  let total = 0;
  for (const mass of share) total += mass;
  return share.map((mass) => mass / total);
}

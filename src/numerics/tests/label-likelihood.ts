import { type Condensed, dissimilarityAt } from '../dissimilarity/condensed.ts';
import { exp, ln, pow } from '../foundation/elementary.ts';

/**
 * In which order a record's labels are likely: a kernel density of each label around the record, whatever the
 * dissimilarity. The kernel is Gaussian in the dissimilarity, its width a multiple of the distance to the record's
 * fifth nearest (Silverman 1986, Density Estimation, ch. 5.3: adaptive kernels); each density is shrunken towards that
 * of all records by one record's weight, so that a label of two records is not sure by them alone. Labels count as
 * equally likely beforehand: how many records a catalogue has of a label says nothing of where a new one comes from.
 *
 * Width and sharpness are chosen by leaving records out, and the same leaving out says how often the order is right;
 * the width by which a record is judged there is chosen without it. (Shares raised to a power and scaled to sum 1 are
 * "temperature scaling", Guo et al. 2017.) Method of our own making from these parts; both works from memory.
 */

/** Multiples of the distance to the fifth nearest that are tried; the least is all but a plain nearest neighbour. */
const WIDTHS = [0.15, 0.25, 0.5, 1] as const;
const REACH = 5;
/** Powers to which shares are raised, so that they are as sure as they are right. */
const SHARPNESS = [0.1, 0.25, 0.5, 0.75, 1, 1.5] as const;
/** Beyond so many widths a kernel adds nothing. */
const FAR = 8;

export interface Labelled {
  /** Label of each record, 0 …; and how many labels there are. */
  readonly label: ArrayLike<number>;
  readonly labels: number;
  /** Records of one kin (item, site) are left out together. */
  readonly kin: ArrayLike<number>;
}

/** How a left-out record fared: whether its own label came first, by the order and by the plain nearest neighbour. */
export interface LeftOut {
  readonly record: number;
  readonly right: boolean;
  readonly nearestRight: boolean;
}

export interface LabelLikelihood extends Labelled {
  readonly width: number;
  readonly sharpness: number;
  /** One for each record whose label others not of its kin carry as well. */
  readonly leftOut: readonly LeftOut[];
}

/** Chooses the width and the sharpness, and says how the order fares. */
export function fitLabelLikelihood(within: Condensed, labelled: Labelled): LabelLikelihood {
  const { label, kin } = labelled;
  const { n } = within;
  const judged = Array.from({ length: n }, (_, record) => {
    const away = new Float64Array(n).fill(Number.NaN);
    let fellows = 0;
    for (let other = 0; other < n; other++) {
      if (kin[other] === kin[record]) continue;
      away[other] = dissimilarityAt(within, record, other);
      if (label[other] === label[record] && away[other] >= 0) fellows++;
    }
    if (fellows === 0) return null;
    const shares = WIDTHS.map((width) => sharesAt(away, labelled, width));
    return {
      record,
      right: shares.map((one) => firstOf(one) === label[record]),
      logs: shares.map((one) => ln(Math.max(one[label[record]], 1e-9))),
      shares,
      nearestRight: nearestLabel(away, labelled) === label[record],
    };
  }).flatMap((one) => (one === null ? [] : [one]));
  const totals = WIDTHS.map((_, at) => ({
    right: judged.reduce((sum, one) => sum + Number(one.right[at]), 0),
    log: judged.reduce((sum, one) => sum + one.logs[at], 0),
  }));
  /** The best width, by the outcomes of all records but one. */
  const best = (but: (typeof judged)[number] | null) => {
    const score = totals.map(({ right, log }, at) => ({
      at,
      right: right - Number(but?.right[at] ?? 0),
      log: log - (but?.logs[at] ?? 0),
    }));
    return score.reduce((a, b) => (b.right > a.right || (b.right === a.right && b.log > a.log) ? b : a)).at;
  };
  const chosen = best(null);
  const own = judged.map(({ record, shares }) => ({ truth: label[record], shares: shares[chosen] }));
  return {
    ...labelled,
    width: WIDTHS[chosen],
    sharpness: sharpnessOf(own),
    leftOut: judged.map((one) => ({
      record: one.record,
      right: one.right[best(one)],
      nearestRight: one.nearestRight,
    })),
  };
}

/**
 * Share of each label in the likelihood of a record, summing to 1; NaN for a label of which nothing can be compared.
 *
 * @param away dissimilarity of the record to each that the likelihood was fitted on; NaN where unknown.
 */
export function labelShares(fit: LabelLikelihood, away: ArrayLike<number>): Float64Array {
  return sharpened(sharesAt(away, fit, fit.width), fit.sharpness);
}

function sharesAt(away: ArrayLike<number>, { label, labels }: Labelled, width: number): Float64Array {
  const h = Math.max(width * reachOf(away), 1e-9);
  const sums = new Float64Array(labels);
  const counts = new Float64Array(labels);
  for (let i = 0; i < away.length; i++) {
    if (!(away[i] >= 0)) continue;
    counts[label[i]]++;
    const z = away[i] / h;
    if (z < FAR) sums[label[i]] += exp((-z * z) / 2);
  }
  const all = counts.reduce((sum, count) => sum + count, 0);
  // Of all kernels something is left, be it little, so that no share is nought.
  const overall =
    Math.max(
      sums.reduce((sum, one) => sum + one, 0),
      1e-12,
    ) / Math.max(all, 1);
  const densities = sums.map((sum, at) =>
    counts[at] === 0 ? Number.NaN : (sum + overall) / (counts[at] + 1),
  );
  return scaled(densities);
}

/** Distance to the fifth nearest, or to the furthest where there are fewer. */
function reachOf(away: ArrayLike<number>): number {
  const near = new Float64Array(REACH).fill(Infinity);
  for (let i = 0; i < away.length; i++) {
    let place = REACH - 1;
    if (!(away[i] < near[place])) continue;
    for (; place > 0 && near[place - 1] > away[i]; place--) near[place] = near[place - 1];
    near[place] = away[i];
  }
  return near.reduce((most, d) => (d < Infinity ? d : most), 0);
}

/** Label of the nearest record; where several are equally near, the one that most of them carry. */
function nearestLabel(away: ArrayLike<number>, { label, labels }: Labelled): number {
  let least = Infinity;
  for (let i = 0; i < away.length; i++) if (away[i] < least) least = away[i];
  const votes = new Float64Array(labels);
  for (let i = 0; i < away.length; i++) if (away[i] <= least + 1e-12) votes[label[i]]++;
  return firstOf(votes);
}

function firstOf(values: ArrayLike<number>): number {
  let first = 0;
  for (let i = 1; i < values.length; i++)
    if (values[i] > values[first] || Number.isNaN(values[first])) first = i;
  return first;
}

function sharpened(shares: Float64Array, power: number): Float64Array {
  return scaled(shares.map((share) => (Number.isNaN(share) ? share : pow(share, power))));
}

function scaled(values: Float64Array): Float64Array {
  const sum = values.reduce((total, value) => (Number.isNaN(value) ? total : total + value), 0);
  return values.map((value) => value / sum);
}

function sharpnessOf(own: readonly { readonly truth: number; readonly shares: Float64Array }[]): number {
  const score = (power: number) =>
    own.reduce((sum, { truth, shares }) => sum + ln(Math.max(sharpened(shares, power)[truth], 1e-9)), 0);
  return SHARPNESS.map((power) => ({ power, score: score(power) })).reduce((a, b) =>
    b.score > a.score ? b : a,
  ).power;
}

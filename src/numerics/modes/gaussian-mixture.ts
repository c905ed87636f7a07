import { exp, ln } from '../elementary.ts';
import { quantileSorted } from '../quantile.ts';
import type { Random } from '../random.ts';
import type { Unavailable } from '../unavailable.ts';

export interface GaussianPart {
  readonly share: number;
  readonly mean: number;
  readonly sd: number;
}

export interface GaussianMixture {
  /** Ascending by mean. */
  readonly parts: readonly GaussianPart[];
  readonly logLikelihood: number;
  /** 2 log L - parameters ln n: larger is better. */
  readonly bic: number;
  readonly spread: 'equal' | 'own';
}

const LOG_TWO_PI = 1.8378770664093453;

/**
 * Fits a mixture of Gaussians to one variable by expectation-maximisation from several starts, the
 * best kept (Dempster, Laird & Rubin 1977; McLachlan & Peel 2000, section 3.2). A part may not shrink
 * onto repeated values: no sd falls below a hundredth of the whole sd.
 *
 * @param k parts, at least 1; needs 2 values a part.
 * @param spread `equal`: one sd for all parts; `own`: one each.
 */
export function gaussianMixture(
  values: ArrayLike<number>,
  k: number,
  spread: 'equal' | 'own' = 'own',
): GaussianMixture | Unavailable {
  const sorted = Float64Array.from(values).sort();
  const n = sorted.length;
  if (n < 2 * k) return { why: `${k} parts need at least ${2 * k} values, not ${n}` };
  const whole = spreadOf(sorted);
  if (whole === 0) return { why: 'all values are equal' };
  const floor = whole / 100;
  let best: GaussianMixture | undefined;
  for (const starts of startingParts(sorted, k)) {
    const fitted = climb(sorted, starts, spread, floor);
    if (best === undefined || fitted.logLikelihood > best.logLikelihood) best = fitted;
  }
  return best as GaussianMixture;
}

function spreadOf(values: Float64Array): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0) / values.length);
}

/** Cuts of the sorted values into k runs: by equal counts, by equal widths, and at the widest gaps. */
function startingParts(sorted: Float64Array, k: number): GaussianPart[][] {
  const n = sorted.length;
  const byCount = Array.from({ length: k - 1 }, (_, i) => quantileSorted(sorted, (i + 1) / k));
  const width = sorted[n - 1] - sorted[0];
  const byWidth = Array.from({ length: k - 1 }, (_, i) => sorted[0] + (width * (i + 1)) / k);
  const gaps = Array.from({ length: n - 1 }, (_, i) => i).sort(
    (a, b) => sorted[b + 1] - sorted[b] - (sorted[a + 1] - sorted[a]),
  );
  const byGap = gaps.slice(0, k - 1).map((i) => (sorted[i] + sorted[i + 1]) / 2);
  return [byCount, byWidth, byGap].map((cuts) => {
    const edges = [...cuts].sort((a, b) => a - b);
    const whole = spreadOf(sorted);
    return Array.from({ length: k }, (_, part) => {
      const low = part === 0 ? -Infinity : edges[part - 1];
      const high = part === k - 1 ? Infinity : edges[part];
      const own = sorted.filter((value) => value > low && value <= high);
      const mean =
        own.length === 0
          ? quantileSorted(sorted, (part + 0.5) / k)
          : own.reduce((sum, v) => sum + v, 0) / own.length;
      return {
        share: Math.max(1, own.length) / n,
        mean,
        sd: Math.max(whole / (2 * k), own.length > 1 ? spreadOf(own) : 0),
      };
    });
  });
}

function climb(
  values: Float64Array,
  starts: readonly GaussianPart[],
  spread: 'equal' | 'own',
  floor: number,
): GaussianMixture {
  const n = values.length;
  const k = starts.length;
  let parts = starts.map((part) => ({ ...part }));
  const member = new Float64Array(n * k);
  let logLikelihood = -Infinity;
  for (let round = 0; round < 2000; round++) {
    let next = 0;
    for (let i = 0; i < n; i++) {
      let top = -Infinity;
      for (let j = 0; j < k; j++) {
        const z = (values[i] - parts[j].mean) / parts[j].sd;
        const log = ln(parts[j].share) - ln(parts[j].sd) - (LOG_TWO_PI + z * z) / 2;
        member[i * k + j] = log;
        if (log > top) top = log;
      }
      let sum = 0;
      for (let j = 0; j < k; j++) {
        member[i * k + j] = exp(member[i * k + j] - top);
        sum += member[i * k + j];
      }
      for (let j = 0; j < k; j++) member[i * k + j] /= sum;
      next += top + ln(sum);
    }
    const gained = next - logLikelihood;
    logLikelihood = next;
    if (round > 0 && Math.abs(gained) < 1e-10 * Math.abs(next)) break;
    parts = maximise(values, member, k, spread, floor);
  }
  const parameters = k - 1 + k + (spread === 'equal' ? 1 : k);
  return {
    parts: parts.sort((a, b) => a.mean - b.mean),
    logLikelihood,
    bic: 2 * logLikelihood - parameters * ln(n),
    spread,
  };
}

function maximise(
  values: Float64Array,
  member: Float64Array,
  k: number,
  spread: 'equal' | 'own',
  floor: number,
): GaussianPart[] {
  const n = values.length;
  const weights = new Float64Array(k);
  const means = new Float64Array(k);
  const squares = new Float64Array(k);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < k; j++) {
      weights[j] += member[i * k + j];
      means[j] += member[i * k + j] * values[i];
    }
  for (let j = 0; j < k; j++) means[j] /= Math.max(weights[j], 1e-300);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < k; j++)
      squares[j] += member[i * k + j] * (values[i] - means[j]) * (values[i] - means[j]);
  const pooled = Math.sqrt(squares.reduce((sum, value) => sum + value, 0) / n);
  return Array.from({ length: k }, (_, j) => ({
    share: Math.max(weights[j] / n, 1e-12),
    mean: means[j],
    sd: Math.max(floor, spread === 'equal' ? pooled : Math.sqrt(squares[j] / Math.max(weights[j], 1e-300))),
  }));
}

/** Value between two neighbouring parts at which membership passes from one to the other. */
export function crossing(first: GaussianPart, second: GaussianPart): number {
  const log = ({ share, mean, sd }: GaussianPart, x: number) =>
    ln(share) - ln(sd) - ((x - mean) * (x - mean)) / (2 * sd * sd);
  let low = first.mean;
  let high = second.mean;
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (log(first, middle) > log(second, middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** A sample from the mixture, by Box & Muller's polar method in Marsaglia's form. */
export function sampleMixture({ parts }: GaussianMixture, n: number, random: Random): Float64Array {
  return Float64Array.from({ length: n }, () => {
    let pick = random.next();
    const part =
      parts.find(({ share }) => {
        pick -= share;
        return pick < 0;
      }) ?? parts[parts.length - 1];
    return part.mean + part.sd * standardNormal(random);
  });
}

export function standardNormal(random: Random): number {
  for (;;) {
    const a = 2 * random.next() - 1;
    const b = 2 * random.next() - 1;
    const square = a * a + b * b;
    if (square > 0 && square < 1) return a * Math.sqrt((-2 * ln(square)) / square);
  }
}

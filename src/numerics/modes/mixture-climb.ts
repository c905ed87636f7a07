import { exp, ln } from '../foundation/elementary.ts';
import type { GaussianPart } from './mixture-parts.ts';

/** Distinct values ascending, with how often each stands in the sample. */
export interface Tally {
  readonly values: Float64Array;
  readonly counts: Float64Array;
  readonly n: number;
}

export function tally(sorted: Float64Array): Tally {
  const values = new Float64Array(sorted.length);
  const counts = new Float64Array(sorted.length);
  let kinds = 0;
  for (let i = 0; i < sorted.length; i++) {
    if (kinds > 0 && values[kinds - 1] === sorted[i]) counts[kinds - 1]++;
    else {
      values[kinds] = sorted[i];
      counts[kinds++] = 1;
    }
  }
  return { values: values.subarray(0, kinds), counts: counts.subarray(0, kinds), n: sorted.length };
}

export interface ClimbRules {
  readonly spread: 'equal' | 'own';
  /** No sd falls below this. */
  readonly floor: number;
  /** The climb ends when a round gains less than this share of the log-likelihood. */
  readonly tolerance: number;
}

export interface Climbed {
  readonly parts: GaussianPart[];
  readonly logLikelihood: number;
}

const LOG_TWO_PI = 1.8378770664093453;
const ROUNDS = 2000;
const LARGE = 1e250;

/** Expectation-maximisation from one start until it gains no more (Dempster, Laird & Rubin 1977). */
export function climb(data: Tally, starts: readonly GaussianPart[], rules: ClimbRules): Climbed {
  let parts = starts.map((part) => ({ ...part }));
  const member = new Float64Array(data.values.length * starts.length);
  let logLikelihood = -Infinity;
  for (let round = 0; round < ROUNDS; round++) {
    const next = expect(data, parts, member);
    const gained = next - logLikelihood;
    logLikelihood = next;
    if (round > 0 && Math.abs(gained) < rules.tolerance * Math.abs(next)) break;
    parts = maximise(data, member, parts.length, rules);
  }
  return { parts: parts.sort((a, b) => a.mean - b.mean), logLikelihood };
}

/** Fills in the memberships, weighed by the counts; returns the log-likelihood. */
function expect({ values, counts }: Tally, parts: readonly GaussianPart[], member: Float64Array): number {
  const k = parts.length;
  // What does not hang on the value is worked out once a round: logarithms are dear.
  const constant = Float64Array.from(parts, ({ share, sd }) => ln(share) - ln(sd) - LOG_TWO_PI / 2);
  const mean = Float64Array.from(parts, (part) => part.mean);
  const precision = Float64Array.from(parts, ({ sd }) => 1 / (2 * sd * sd));
  let total = 0;
  // Logarithms of sums between 1 and k are taken of many at once, as that of their product.
  let product = 1;
  for (let i = 0; i < values.length; i++) {
    const at = i * k;
    let top = -Infinity;
    for (let j = 0; j < k; j++) {
      const off = values[i] - mean[j];
      const log = constant[j] - off * off * precision[j];
      member[at + j] = log;
      if (log > top) top = log;
    }
    let sum = 0;
    for (let j = 0; j < k; j++) {
      const below = member[at + j] - top;
      const share = below === 0 ? 1 : below < -745 ? 0 : exp(below);
      member[at + j] = share;
      sum += share;
    }
    for (let j = 0; j < k; j++) member[at + j] *= counts[i] / sum;
    total += counts[i] * top;
    if (counts[i] === 1) product *= sum;
    else if (sum !== 1) total += counts[i] * ln(sum);
    if (product > LARGE) {
      total += ln(product);
      product = 1;
    }
  }
  return total + ln(product);
}

function maximise(
  { values, n }: Tally,
  member: Float64Array,
  k: number,
  { spread, floor }: ClimbRules,
): GaussianPart[] {
  const weights = new Float64Array(k);
  const means = new Float64Array(k);
  const squares = new Float64Array(k);
  for (let i = 0; i < values.length; i++)
    for (let j = 0; j < k; j++) {
      weights[j] += member[i * k + j];
      means[j] += member[i * k + j] * values[i];
    }
  for (let j = 0; j < k; j++) means[j] /= Math.max(weights[j], 1e-300);
  for (let i = 0; i < values.length; i++)
    for (let j = 0; j < k; j++) {
      const off = values[i] - means[j];
      squares[j] += member[i * k + j] * off * off;
    }
  const pooled = Math.sqrt(squares.reduce((sum, value) => sum + value, 0) / n);
  return Array.from({ length: k }, (_, j) => ({
    share: Math.max(weights[j] / n, 1e-12),
    mean: means[j],
    sd: Math.max(floor, spread === 'equal' ? pooled : Math.sqrt(squares[j] / Math.max(weights[j], 1e-300))),
  }));
}

import { ln, pow } from '../foundation/elementary.ts';
import { logFactorial } from '../foundation/log-factorial.ts';
import type { Random } from '../foundation/random.ts';

/**
 * Draws of very many things of a few kinds, by their counts: the same chances as drawing the things one after the other,
 * in a time that does not grow with them.
 */

/** So many things that drawing their counts is worth while; fewer are drawn one by one. */
export const MANY_THINGS = 5000;

/** How many of each kind come when `draws` are drawn with replacement: multinomial. Shares do as well as counts. */
export function drawnAgain(counts: ArrayLike<number>, draws: number, random: Random): Float64Array {
  return inTurn(counts, draws, (own, left, wanted) => binomial(wanted, own / left, random));
}

/** How many of each kind come when `draws` of them are dealt: multivariate hypergeometric. */
export function dealtOut(counts: ArrayLike<number>, draws: number, random: Random): Float64Array {
  return inTurn(counts, draws, (own, left, wanted) => hypergeometric(own, left - own, wanted, random));
}

/** Kind by kind: how many come of one is drawn from what the earlier ones have left. */
function inTurn(
  counts: ArrayLike<number>,
  draws: number,
  one: (own: number, left: number, wanted: number) => number,
): Float64Array {
  const drawn = new Float64Array(counts.length);
  let left = 0;
  let last = -1;
  for (let kind = 0; kind < counts.length; kind++) {
    left += counts[kind];
    if (counts[kind] > 0) last = kind;
  }
  let wanted = draws;
  for (let kind = 0; kind <= last && wanted > 0; kind++) {
    if (counts[kind] === 0) continue;
    // Shares need not add up to the last digit: what is wanted after all others is of the last.
    drawn[kind] = kind === last ? wanted : one(counts[kind], left, wanted);
    left -= counts[kind];
    wanted -= drawn[kind];
  }
  return drawn;
}

/** Below so many expected, one is counted after the other. */
const FEW = 10;

/**
 * Of `n` trials how many come off, each with chance p: by transformed rejection with squeeze (Hörmann 1993, J. Stat.
 * Comput. Simul. 46:101, algorithm BTRS), few expected ones by inversion.
 */
export function binomial(n: number, p: number, random: Random): number {
  if (p > 0.5) return n - binomial(n, 1 - p, random);
  if (n * p < FEW) return fewOf(n, p, random);
  const q = 1 - p;
  const sd = Math.sqrt(n * p * q);
  const b = 1.15 + 2.53 * sd;
  const a = -0.0873 + 0.0248 * b + 0.01 * p;
  const centre = n * p + 0.5;
  const inner = 0.92 - 4.2 / b;
  const alpha = (2.83 + 5.1 / b) * sd;
  const odds = ln(p / q);
  const mode = Math.floor((n + 1) * p);
  const top = logFactorial(mode) + logFactorial(n - mode);
  for (;;) {
    const u = random.next() - 0.5;
    const v = random.next();
    const edge = 0.5 - Math.abs(u);
    const k = Math.floor(((2 * a) / edge + b) * u + centre);
    if (edge >= 0.07 && v <= inner) return k;
    if (!(k >= 0 && k <= n)) continue;
    const height = ln((v * alpha) / (a / (edge * edge) + b));
    if (height <= top - logFactorial(k) - logFactorial(n - k) + (k - mode) * odds) return k;
  }
}

function fewOf(n: number, p: number, random: Random): number {
  const q = 1 - p;
  let chance = pow(q, n);
  let left = random.next();
  let k = 0;
  while (left > chance && k < n) {
    left -= chance;
    k++;
    chance *= ((n - k + 1) * p) / (k * q);
  }
  return k;
}

/** The constants of the table mountain: 2 sqrt(2 / e) and 3 - 2 sqrt(3 / e). */
const WIDTH = 1.7155277699214135;
const ROOM = 0.8989161620588988;

/**
 * How many marked ones come when `draws` of `marked` and `others` together are drawn without replacement: by ratio of
 * uniforms (Stadlober 1990, J. Comput. Appl. Math. 31:181, algorithm HRUA), few draws one after the other.
 */
export function hypergeometric(marked: number, others: number, draws: number, random: Random): number {
  const all = marked + others;
  const m = Math.min(draws, all - draws);
  const fewer = Math.min(marked, others);
  const more = all - fewer;
  const drawn = m <= FEW ? oneByOne(fewer, all, m, random) : byRatio(fewer, more, m, random);
  const ofMarked = marked <= others ? drawn : m - drawn;
  return m === draws ? ofMarked : marked - ofMarked;
}

function oneByOne(marked: number, all: number, draws: number, random: Random): number {
  let drawn = 0;
  for (let i = 0; i < draws; i++) if (random.integer(all - i) < marked - drawn) drawn++;
  return drawn;
}

function byRatio(fewer: number, more: number, m: number, random: Random): number {
  const all = fewer + more;
  const share = fewer / all;
  const mean = m * share + 0.5;
  const sd = Math.sqrt(((all - m) * m * share * (1 - share)) / (all - 1) + 0.5);
  const width = WIDTH * sd + ROOM;
  const mode = Math.floor(((m + 1) * (fewer + 1)) / (all + 2));
  const weight = (k: number) =>
    logFactorial(k) + logFactorial(fewer - k) + logFactorial(m - k) + logFactorial(more - m + k);
  const top = weight(mode);
  const end = Math.min(Math.min(m, fewer) + 1, Math.floor(mean + 16 * sd));
  for (;;) {
    const x = random.next();
    const at = mean + (width * (random.next() - 0.5)) / x;
    if (!(at >= 0 && at < end)) continue;
    const k = Math.floor(at);
    const height = top - weight(k);
    if (x * (4 - x) - 3 <= height) return k;
    if (x * (x - height) >= 1) continue;
    if (2 * ln(x) <= height) return k;
  }
}

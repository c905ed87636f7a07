import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * The dip: the largest distance between the empirical distribution and the nearest one that has a
 * single mode. From 1/(2n), a single mode, to 1/4, two far heaps.
 * Source: Hartigan & Hartigan 1985, Ann. Stat. 13:70; algorithm: Hartigan 1985, Appl. Stat. 34:320, by
 * greatest convex minorant and least concave majorant, drawn together until nothing is gained.
 *
 * @param sorted ascending, at least one value.
 */
export function dip(sorted: ArrayLike<number>): number {
  const n = sorted.length;
  if (n < 2 || sorted[0] === sorted[n - 1]) return 1 / (2 * n);
  const minorant = minorantTouches(sorted);
  const majorant = majorantTouches(sorted);
  let low = 0;
  let high = n - 1;
  let best = 1;
  for (;;) {
    const convex = chain(high, minorant, (at) => at > low);
    const concave = chain(low, majorant, (at) => at < high);
    const widest = widestGap(sorted, convex, concave);
    if (widest.gap < best) break;
    const below = largestStep(sorted, convex, widest.convex, 'minorant');
    const above = largestStep(sorted, concave, widest.concave, 'majorant');
    best = Math.max(best, below, above);
    const nextLow = convex[widest.convex];
    const nextHigh = concave[widest.concave];
    if (nextLow === low && nextHigh === high) break;
    low = nextLow;
    high = nextHigh;
  }
  return best / (2 * n);
}

/** For each point the earlier one that the convex minorant of all points up to it touches last. */
function minorantTouches(x: ArrayLike<number>): Int32Array {
  const touches = new Int32Array(x.length);
  for (let j = 1; j < x.length; j++) {
    touches[j] = j - 1;
    for (;;) {
      const a = touches[j];
      const b = touches[a];
      if (a === 0 || (x[j] - x[a]) * (a - b) < (x[a] - x[b]) * (j - a)) break;
      touches[j] = b;
    }
  }
  return touches;
}

/** For each point the later one that the concave majorant of all points from it touches first. */
function majorantTouches(x: ArrayLike<number>): Int32Array {
  const last = x.length - 1;
  const touches = new Int32Array(x.length);
  touches[last] = last;
  for (let k = last - 1; k >= 0; k--) {
    touches[k] = k + 1;
    for (;;) {
      const a = touches[k];
      const b = touches[a];
      if (a === last || (x[k] - x[a]) * (a - b) < (x[a] - x[b]) * (k - a)) break;
      touches[k] = b;
    }
  }
  return touches;
}

function chain(from: number, touches: Int32Array, goOn: (at: number) => boolean): number[] {
  const points = [from];
  while (goOn(points[points.length - 1])) points.push(touches[points[points.length - 1]]);
  return points;
}

/** Where minorant and majorant lie furthest apart, as places in their two chains. */
function widestGap(x: ArrayLike<number>, convex: readonly number[], concave: readonly number[]) {
  let down = convex.length - 2;
  let up = 1;
  const found = { gap: 0, convex: convex.length - 1, concave: concave.length - 1 };
  if (convex.length === 2 && concave.length === 2) return { ...found, gap: 1 };
  do {
    const onConvex = convex[down];
    const onConcave = concave[up];
    if (onConvex > onConcave) {
      const before = convex[down + 1];
      const slope = (onConvex - before) / (x[onConvex] - x[before]);
      const gap = onConcave - before + 1 - (x[onConcave] - x[before]) * slope;
      up++;
      if (gap >= found.gap) Object.assign(found, { gap, convex: down + 1, concave: up - 1 });
    } else {
      const before = concave[up - 1];
      const slope = (onConcave - before) / (x[onConcave] - x[before]);
      const gap = (x[onConvex] - x[before]) * slope - (onConvex - before - 1);
      down--;
      if (gap >= found.gap) Object.assign(found, { gap, convex: down + 1, concave: up });
    }
    down = Math.max(0, down);
    up = Math.min(concave.length - 1, up);
  } while (convex[down] !== concave[up]);
  return found;
}

/** Largest distance between the steps of the data and the straight pieces of one chain. */
function largestStep(
  x: ArrayLike<number>,
  points: readonly number[],
  from: number,
  side: 'minorant' | 'majorant',
): number {
  let largest = 0;
  for (let piece = from; piece < points.length - 1; piece++) {
    const start = Math.min(points[piece], points[piece + 1]);
    const end = Math.max(points[piece], points[piece + 1]);
    let step = 1;
    if (end - start > 1 && x[end] !== x[start]) {
      const slope = (end - start) / (x[end] - x[start]);
      for (let at = start; at <= end; at++) {
        const line = (x[at] - x[start]) * slope;
        step = Math.max(step, side === 'minorant' ? at - start + 1 - line : line - (at - start - 1));
      }
    }
    largest = Math.max(largest, step);
  }
  return largest;
}

export interface DipTest {
  readonly statistic: number;
  readonly p: number;
  readonly n: number;
  readonly resamples: number;
}

/**
 * Are there more modes than one? p against uniform samples of the same size, the least favourable
 * distribution with a single mode: (b + 1) / (m + 1). Needs 4 values.
 */
export function dipTest(values: ArrayLike<number>, random: Random, resamples = 1999): DipTest | Unavailable {
  const n = values.length;
  if (n < 4) return { why: `a test for several modes needs 4 values, not ${n}` };
  const statistic = dip(Float64Array.from(values).sort());
  const uniform = new Float64Array(n);
  let reached = 0;
  for (let i = 0; i < resamples; i++) {
    for (let j = 0; j < n; j++) uniform[j] = random.next();
    if (dip(uniform.sort()) >= statistic) reached++;
  }
  return { statistic, p: (reached + 1) / (resamples + 1), n, resamples };
}

import { studentQuantileUpper } from '../foundation/distributions.ts';
import { pow } from '../foundation/elementary.ts';
import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { drawnAgain, MANY_THINGS } from '../resampling/drawn-counts.ts';
import { drawnCounts, type ItemKinds } from './draws.ts';
import { frequencies, sampleCoverage, unseenKinds } from './hill.ts';

export interface DiversityLimits {
  readonly low: number;
  readonly high: number;
  readonly standardError: number;
}

/** As many items, each of a kind not met, are taken to have been passed over at least. */
const PASSED_OVER = 2;

/**
 * The shares of kinds in the whole that a sample comes from, unseen ones included (Chao, Wang & Jost 2013, appendix
 * S2): those of met kinds a little less than in the sample, what is left spread evenly over the kinds not met. A
 * sample drawn from the sample itself would never meet anything new and vary too little. At least two items of two
 * kinds not met are added, as if passed over: without them small samples that met no kind once vary too little too
 * (found by simulation, tests/simulations/diversity-limits.ts).
 */
export function estimatedShares(counts: ArrayLike<number>): Float64Array {
  const found = frequencies(counts);
  const { present, n } = found;
  const coverage = sampleCoverage(counts);
  const most = 1 - PASSED_OVER / (n + PASSED_OVER);
  const met = Math.min(typeof coverage === 'number' && coverage > 0 ? coverage : 1, most);
  const unseen = Math.max(PASSED_OVER, Math.ceil(unseenKinds(found)));
  const shrink = present.map((count) => (count / n) * pow(1 - count / n, n));
  const sum = shrink.reduce((total, value) => total + value, 0);
  const factor = sum > 0 ? (1 - met) / sum : 0;
  return Float64Array.from([
    ...present.map((count) => (count / n) * (1 - factor * pow(1 - count / n, n))),
    ...Array.from({ length: unseen }, () => (1 - met) / unseen),
  ]);
}

/**
 * Limits of several measures of diversity at once: each estimate plus and minus Student's quantile times the standard
 * deviation of the measure in samples drawn from `estimatedShares`. Where items bring several records, these are
 * not independent: the items are drawn as wholes besides, and the larger deviation counts.
 *
 * @param measures of counts; NaN where one has no value.
 * @param bounds least and greatest possible value of each.
 */
export function diversityLimits(
  counts: ArrayLike<number>,
  items: ItemKinds,
  measures: readonly ((counts: ArrayLike<number>) => number)[],
  bounds: readonly (readonly [number, number])[],
  {
    random,
    resamples,
    confidence,
  }: { readonly random: Random; readonly resamples: number; readonly confidence: number },
): readonly (DiversityLimits | Unavailable)[] {
  const { n } = frequencies(counts);
  if (items.length < 3) return measures.map(() => ({ why: `limits need 3 items, not ${items.length}` }));
  const shares = estimatedShares(counts);
  const edges = Float64Array.from(shares);
  for (let i = 1; i < edges.length; i++) edges[i] += edges[i - 1];
  const again = () => {
    if (n > MANY_THINGS) return drawnAgain(shares, n, random);
    const drawn = new Float64Array(shares.length);
    for (let i = 0; i < n; i++) drawn[placeOf(edges, random.next() * edges[edges.length - 1])]++;
    return drawn;
  };
  const deviations = deviationsOf(measures, resamples, again);
  const columns = counts.length;
  const choice = new Int32Array(items.length);
  const clustered =
    items.length === n
      ? null
      : deviationsOf(measures, resamples, () => {
          for (let i = 0; i < choice.length; i++) choice[i] = random.integer(choice.length);
          return drawnCounts(items, choice, columns);
        });
  const factor = studentQuantileUpper((1 - confidence) / 2, items.length - 1);
  return measures.map((measure, which) => {
    const value = measure(counts);
    if (Number.isNaN(value)) return { why: 'the measure itself has no value' };
    const standardError = Math.max(deviations[which], clustered?.[which] ?? 0);
    if (!(standardError > 1e-12)) return { why: 'every draw gives the same value' };
    const [least, most] = bounds[which];
    return {
      low: Math.max(least, value - factor * standardError),
      high: Math.min(most, value + factor * standardError),
      standardError,
    };
  });
}

function placeOf(edges: Float64Array, at: number): number {
  let place = 0;
  while (place < edges.length - 1 && edges[place] <= at) place++;
  return place;
}

function deviationsOf(
  measures: readonly ((counts: ArrayLike<number>) => number)[],
  resamples: number,
  draw: () => Float64Array,
): number[] {
  const values = measures.map(() => [] as number[]);
  for (let i = 0; i < resamples; i++) {
    const drawn = draw();
    measures.forEach((measure, which) => {
      const value = measure(drawn);
      if (Number.isFinite(value)) values[which].push(value);
    });
  }
  return values.map((own) => {
    if (own.length < 2) return 0;
    const mean = own.reduce((sum, value) => sum + value, 0) / own.length;
    return Math.sqrt(own.reduce((sum, value) => sum + (value - mean) * (value - mean), 0) / (own.length - 1));
  });
}

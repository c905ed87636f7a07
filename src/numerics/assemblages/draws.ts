import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { bootstrapInterval, centredInterval, type ResampledInterval } from '../resampling/bootstrap.ts';
import { drawnAgain, MANY_THINGS } from '../resampling/drawn-counts.ts';
import { assemblageSimilarity, isDistance, mostAlike, type SimilarityCoefficient } from './similarity.ts';

/** Counts of the kinds that each item of an assemblage brings: what is drawn again. */
export type ItemKinds = readonly Float64Array[];

/** Counts of the chosen items together; a choice may repeat. */
export function drawnCounts(items: ItemKinds, choice: ArrayLike<number>, columns: number): Float64Array {
  const counts = new Float64Array(columns);
  for (let i = 0; i < choice.length; i++) {
    const item = items[choice[i]];
    for (let column = 0; column < columns; column++) counts[column] += item[column];
  }
  return counts;
}

/** Items of few kinds by what they bring: how many bring the very same counts. */
export interface Bundles {
  readonly kinds: readonly Float64Array[];
  readonly items: Float64Array;
}

export function bundled(items: ItemKinds): Bundles {
  const places = new Map<string, number>();
  const kinds: Float64Array[] = [];
  const sizes: number[] = [];
  for (const item of items) {
    const key = item.join();
    const place = places.get(key) ?? kinds.length;
    if (place === kinds.length) {
      places.set(key, place);
      kinds.push(item);
      sizes.push(0);
    }
    sizes[place]++;
  }
  return { kinds, items: Float64Array.from(sizes) };
}

export function addedUp(kinds: readonly Float64Array[], times: Float64Array, columns: number): Float64Array {
  const counts = new Float64Array(columns);
  for (let kind = 0; kind < kinds.length; kind++)
    for (let column = 0; column < columns; column++) counts[column] += times[kind] * kinds[kind][column];
  return counts;
}

/**
 * Draws the items of an assemblage again, as many as there are, and gives the counts of their kinds; very many of them
 * by how many bring the same, which has the same chances.
 */
export function itemDrawer(items: ItemKinds, columns: number, random: Random): () => Float64Array {
  if (items.length > MANY_THINGS) {
    const { kinds, items: sizes } = bundled(items);
    return () => addedUp(kinds, drawnAgain(sizes, items.length, random), columns);
  }
  const choice = new Int32Array(items.length);
  return () => {
    for (let i = 0; i < choice.length; i++) choice[i] = random.integer(choice.length);
    return drawnCounts(items, choice, columns);
  };
}

export interface LikenessDraws {
  readonly coefficient: SimilarityCoefficient;
  readonly resamples: number;
  readonly confidence: number;
  readonly random: Random;
}

/**
 * How alike two assemblages are when their items are drawn again; the others stay as they are.
 *
 * @param rest counts of all other assemblages together: the chi-square distance weighs by them.
 */
export function likenessInterval(
  first: ItemKinds,
  second: ItemKinds,
  rest: Float64Array,
  { coefficient, resamples, confidence, random }: LikenessDraws,
): ResampledInterval | Unavailable {
  const columns = rest.length;
  const rows = coefficient === 'chi-square' && rest.some((count) => count > 0) ? [rest] : [];
  const likeness = (one: Float64Array, other: Float64Array) =>
    assemblageSimilarity([one, other, ...rows], coefficient).values[0];
  const many = first.length + second.length > MANY_THINGS;
  const interval = many
    ? manyInterval([first, second], columns, likeness, { resamples, confidence, random })
    : bootstrapInterval(
        [first.length, second.length],
        ([one, other]) => likeness(drawnCounts(first, one, columns), drawnCounts(second, other, columns)),
        { random, resamples, level: confidence, method: 'centred' },
      );
  if ('why' in interval) return interval;
  return {
    ...interval,
    low: Math.max(0, interval.low),
    high: Math.min(isDistance(coefficient) ? Infinity : mostAlike(coefficient), interval.high),
  };
}

/** The centred limits of very many items, by their counts. */
function manyInterval(
  both: readonly [ItemKinds, ItemKinds],
  columns: number,
  likeness: (one: Float64Array, other: Float64Array) => number,
  { resamples, confidence, random }: Omit<LikenessDraws, 'coefficient'>,
): ResampledInterval | Unavailable {
  const [one, other] = both.map((items) => itemDrawer(items, columns, random));
  const [first, second] = both.map((items) => drawnCounts(items, Int32Array.from(items.keys()), columns));
  const observed = likeness(first, second);
  if (Number.isNaN(observed)) return { why: 'the statistic itself has no value' };
  const values = Float64Array.from({ length: resamples }, () => likeness(one(), other()));
  return centredInterval(observed, values, confidence);
}

import { type Condensed, dissimilarityAt, takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import { addTo } from '../../numerics/foundation/lists.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { medoids } from '../../numerics/grouping/medoids.ts';
import { predictionStrength } from '../../numerics/grouping/prediction-strength.ts';
import { silhouette } from '../../numerics/grouping/silhouette.ts';
import { permanova } from '../../numerics/tests/permanova.ts';
import type { Unavailable } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import type { Divided, FinerCoarser, Merged } from './apart-found.ts';

/** Prediction strength that speaks for a division (Tibshirani & Walther 2005, J. Comput. Graph. Stat. 14:511). */
const STRONG = 0.8;
const FEWEST = 10;
const SPLITS = 20;

interface Asking {
  readonly relabellings: number;
  readonly confidence: number;
  readonly random: Random;
}

/** @param items item of each record; records of one item stay in one half. */
export function finerOrCoarser(
  matrix: Condensed,
  labels: Int32Array,
  items: Int32Array,
  asking: Asking,
): FinerCoarser {
  const members = new Map<number, number[]>();
  for (const [place, type] of labels.entries()) addTo(members, type, place);
  return {
    merged: mergeNearest(matrix, members, { ...asking, random: asking.random.stream('merged') }),
    divided: divideWidest(matrix, members, items, asking.random.stream('divided')),
  };
}

type Members = ReadonlyMap<number, readonly number[]>;

function meanBetween(matrix: Condensed, a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (const i of a) for (const j of b) sum += dissimilarityAt(matrix, i, j);
  return sum / (a.length * b.length);
}

function mergeNearest(
  matrix: Condensed,
  members: Members,
  { relabellings, confidence, random }: Asking,
): Merged | Unavailable {
  const types = [...members.keys()].sort((a, b) => a - b);
  const pairs = types.flatMap((first, place) =>
    types.slice(place + 1).map((second) => ({
      first,
      second,
      apart: meanBetween(matrix, members.get(first)!, members.get(second)!),
    })),
  );
  if (pairs.length === 0) return { why: 'only one type has records to compare' };
  const { first, second } = pairs.reduce((best, pair) => (pair.apart < best.apart ? pair : best));
  const a = members.get(first)!;
  const b = members.get(second)!;
  const difference = permanova(takeRecords(matrix, [...a, ...b]), [...a.map(() => 0), ...b.map(() => 1)], {
    random,
    relabellings,
  });
  const told = toldAt('why' in difference ? difference : difference.p, confidence);
  return { first, second, difference, told };
}

function divideWidest(
  matrix: Condensed,
  members: Members,
  items: Int32Array,
  random: Random,
): Divided | Unavailable {
  const large = [...members].filter(([, places]) => places.length >= FEWEST);
  if (large.length === 0) return { why: `no type has ${FEWEST} records that could be divided` };
  const widest = large
    .map(([type, places]) => ({ type, places, width: meanBetween(matrix, places, places) }))
    .reduce((best, one) => (one.width > best.width ? one : best));
  const own = takeRecords(matrix, widest.places);
  const ownItems = denseItems(widest.places.map((place) => items[place]));
  const { membership } = medoids(own, 2);
  const second = membership.filter((group) => group === 1).length;
  const [strength] = predictionStrength({
    matrix: own,
    items: ownItems,
    counts: [2],
    regroup: (rows, k) => medoids(takeRecords(own, rows), k).membership,
    classify: 'medoid',
    splits: SPLITS,
    random,
  });
  if (Number.isNaN(strength)) return { why: 'too few items to be divided in halves' };
  return {
    type: widest.type,
    sizes: [membership.length - second, second],
    strength,
    silhouette: silhouette(own, membership)?.mean ?? 0,
    mayBeTwo: strength >= STRONG,
  };
}

/** Items numbered anew from 0. */
export function denseItems(items: ArrayLike<number | string>): Int32Array {
  const places = new Map<number | string, number>();
  return Int32Array.from({ length: items.length }, (_, i) => {
    const known = places.get(items[i]) ?? places.size;
    places.set(items[i], known);
    return known;
  });
}

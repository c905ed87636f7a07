import { quantileSorted } from '../describing/quantile.ts';

/**
 * Rank statistics of samples whose blocks (items with all their fragments) are drawn again thousands of times.
 * The values are put in order once; a draw then only counts how often each one comes. Every answer equals, bit for
 * bit, that of the plain function on the values drawn.
 */

/** The members of each block of each sample: what is drawn from. */
export type Blocks = readonly Float64Array[];

/** The blocks drawn, by their places; one may come several times. */
export type Draw = ArrayLike<number>;

interface Ordered {
  /** Distinct values, ascending. */
  readonly values: Float64Array;
  /** For each block, the places of its members among them. */
  readonly places: readonly Int32Array[];
}

function order(samples: readonly Blocks[]): {
  readonly values: Float64Array;
  readonly places: readonly (readonly Int32Array[])[];
} {
  const values = Float64Array.from(
    new Set(samples.flatMap((blocks) => blocks.flatMap((block) => [...block]))),
  ).sort();
  const placeOf = new Map(Array.from(values, (value, place) => [value, place] as const));
  return {
    values,
    places: samples.map((blocks) =>
      blocks.map((block) => Int32Array.from(block, (value) => placeOf.get(value) ?? 0)),
    ),
  };
}

/** How often each value comes in a draw, into `counts`; returns how many values came. */
function countInto(counts: Int32Array, places: readonly Int32Array[], draw: Draw): number {
  counts.fill(0);
  let size = 0;
  for (let i = 0; i < draw.length; i++) {
    const block = places[draw[i]];
    size += block.length;
    for (let j = 0; j < block.length; j++) counts[block[j]]++;
  }
  return size;
}

/** The same where a draw says how often each kind of block comes (`kindsOfBlocks`). */
function countTimes(counts: Int32Array, places: readonly Int32Array[], times: Draw): number {
  counts.fill(0);
  let size = 0;
  for (let kind = 0; kind < places.length; kind++) {
    const block = places[kind];
    size += block.length * times[kind];
    for (let j = 0; j < block.length; j++) counts[block[j]] += times[kind];
  }
  return size;
}

/** What a draw says: which blocks come, one after the other, or how often each of them comes. */
export type Drawn = 'blocks' | 'times';
const COUNT = { blocks: countInto, times: countTimes } as const;

/** Sums of mid-ranks of each sample in a pool of all (see midranks). */
function rankSumsOf(samples: readonly Blocks[], drawn: Drawn) {
  const count = COUNT[drawn];
  const { values, places } = order(samples);
  const counts = samples.map(() => new Int32Array(values.length));
  const sums = new Float64Array(samples.length);
  const sizes = new Int32Array(samples.length);
  return (draws: readonly Draw[]) => {
    for (let s = 0; s < samples.length; s++) sizes[s] = count(counts[s], places[s], draws[s]);
    sums.fill(0);
    let before = 0;
    for (let place = 0; place < values.length; place++) {
      let tied = 0;
      for (let s = 0; s < counts.length; s++) tied += counts[s][place];
      if (tied === 0) continue;
      const rank = before + (tied + 1) / 2;
      for (let s = 0; s < counts.length; s++) sums[s] += counts[s][place] * rank;
      before += tied;
    }
    return { sizes, sums };
  };
}

/** Cliff's delta of two samples as drawn (see cliffsDelta). */
export function drawnDelta(
  first: Blocks,
  second: Blocks,
  drawn: Drawn = 'blocks',
): (draws: readonly Draw[]) => number {
  const ranks = rankSumsOf([first, second], drawn);
  return (draws) => {
    const { sizes, sums } = ranks(draws);
    const [n1, n2] = sizes;
    return (2 * (sums[0] - (n1 * (n1 + 1)) / 2)) / (n1 * n2) - 1;
  };
}

/** The median of the values drawn, type 7. */
export function drawnMedian(sample: Blocks, drawn: Drawn = 'blocks'): (draw: Draw) => number {
  const { values, places } = order([sample]);
  const counts = new Int32Array(values.length);
  return (draw) => middleOf(values, counts, COUNT[drawn](counts, places[0], draw));
}

/** The median of values that come `counts` times, `size` in all. */
function middleOf(values: Float64Array, counts: ArrayLike<number>, size: number): number {
  const upper = size >> 1;
  const wanted = size % 2 === 1 ? upper : upper - 1;
  let reached = 0;
  for (let place = 0; place < values.length; place++) {
    reached += counts[place];
    if (reached <= wanted) continue;
    const low = values[place];
    if (size % 2 === 1 || reached > upper) return low;
    let next = place + 1;
    while (counts[next] === 0) next++;
    return quantileSorted(Float64Array.of(low, values[next]), 0.5);
  }
  return Number.NaN;
}

/** More pairs of distinct values than this are not put in order beforehand. */
const MOST_PAIRS = 1_000_000;

/**
 * The median of all differences between the values of two samples as drawn (see medianDifference); null where
 * they are too many to be put in order.
 */
export function drawnMedianDifference(
  first: Blocks,
  second: Blocks,
  drawn: Drawn = 'blocks',
): ((draws: readonly Draw[]) => number) | null {
  const count = COUNT[drawn];
  const [a, b] = [first, second].map((blocks): Ordered => {
    const { values, places } = order([blocks]);
    return { values, places: places[0] };
  });
  const pairs = a.values.length * b.values.length;
  if (pairs > MOST_PAIRS) return null;
  const unordered = new Float64Array(pairs);
  for (let i = 0; i < a.values.length; i++)
    for (let j = 0; j < b.values.length; j++) unordered[i * b.values.length + j] = a.values[i] - b.values[j];
  const byValue = Uint32Array.from(unordered.keys()).sort((x, y) => unordered[x] - unordered[y]);
  const differences = Float64Array.from(byValue, (pair) => unordered[pair]);
  const ofFirst = Uint32Array.from(byValue, (pair) => Math.floor(pair / b.values.length));
  const ofSecond = Uint32Array.from(byValue, (pair) => pair % b.values.length);
  const counts = [new Int32Array(a.values.length), new Int32Array(b.values.length)];
  return (draws) => {
    const size = count(counts[0], a.places, draws[0]) * count(counts[1], b.places, draws[1]);
    const [one, other] = counts;
    const upper = Math.floor(size / 2);
    const odd = size % 2 === 1;
    let reached = 0;
    let low = Number.NaN;
    for (let pair = 0; pair < pairs; pair++) {
      reached += one[ofFirst[pair]] * other[ofSecond[pair]];
      if (Number.isNaN(low) && reached >= upper && !odd) low = differences[pair];
      if (reached > upper) return odd ? differences[pair] : (low + differences[pair]) / 2;
    }
    return Number.NaN;
  };
}

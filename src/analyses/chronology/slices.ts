import { InputError } from '../../errors.ts';
import { type CountRange, centralCounts, chanceSums } from '../../numerics/assemblages/chance-sums.ts';
import { overlapShares } from '../../numerics/assemblages/time-overlap.ts';
import { greatest, least } from '../../numerics/foundation/lists.ts';
import { printCount } from '../phrasing.ts';
import { roundStep } from '../years.ts';
import type { Entry } from './entries.ts';
import type { SliceCount } from './found.ts';
import { type ChronologyOptions, MOST_SLICES } from './options.ts';

/** As many slices as are read beside each other. */
const USUAL = 12;
/** A share that differs from 1 by rounding alone is whole. */
const WHOLE = 1 - 1e-9;

/**
 * First years of the slices and the year after the last: whole multiples of the width from AD 1 on and back, so that
 * a hundred years are a century.
 *
 * @throws InputError where they are none or too many.
 */
export function sliceEdges(entries: readonly Entry[], options: ChronologyOptions): number[] {
  if (entries.length === 0) return [];
  const from = options.from ?? least(entries.map(({ low }) => low));
  const to = options.to ?? greatest(entries.map(({ high }) => high));
  if (to < from)
    throw new InputError(
      `slices from ${from} to ${to} run backwards`,
      { path: options.from === undefined ? 'to' : 'from' },
      options.from === undefined || options.to === undefined
        ? `the dates go from ${least(entries.map(({ low }) => low))} to ${greatest(entries.map(({ high }) => high))}: give an astronomical year among them`
        : 'give the earlier astronomical year under "from"',
    );
  const width = options.slice ?? roundStep((to - from) / (USUAL - 2));
  const first = Math.floor((from - 1) / width);
  // A span without length lies in the slice that begins with it.
  const last = Math.max(first + 1, Math.ceil((to - 1) / width) + (endsOnEdge(entries, to, width) ? 1 : 0));
  if (last - first > MOST_SLICES)
    throw new InputError(
      `there would be ${last - first} slices of ${printCount(width, 'year')}`,
      { path: 'slice' },
      `ask for 1 to ${MOST_SLICES} slices`,
    );
  return Array.from({ length: last - first + 1 }, (_, slice) => 1 + (first + slice) * width);
}

function endsOnEdge(entries: readonly Entry[], to: number, width: number): boolean {
  return (to - 1) % width === 0 && entries.some(({ low, high }) => low === to && high === to);
}

export function sharesOf({ low, high }: Entry, edges: readonly number[]): Float64Array {
  return overlapShares(low, high, edges);
}

/** Counts of some finds in every slice, with what is not known about their dates carried through. */
export function sliceCounts(
  entries: readonly Entry[],
  shares: ReadonlyMap<Entry, Float64Array>,
  slices: number,
  confidence: number,
): SliceCount[] {
  const apart = joined(entries, ({ item, low, high }) => `${low} ${high} ${item}`);
  const together = joined(entries, ({ place, low, high }) => `${low} ${high} ${place ?? ''}`);
  const shareOf = (entry: Entry, slice: number) => shares.get(entry)?.[slice] ?? 0;
  return Array.from({ length: slices }, (_, slice): SliceCount => {
    const own = entries.map((entry) => shareOf(entry, slice));
    const range = (sets: readonly Joined[]) => {
      const met = sets.filter(({ one }) => shareOf(one, slice) > 0);
      return centralCounts(
        chanceSums(
          met.map(({ size }) => size),
          met.map(({ one }) => shareOf(one, slice)),
        ),
        confidence,
      );
    };
    const expected = own.reduce((sum, share) => sum + share, 0);
    return {
      expected,
      apart: holding(range(apart), expected),
      together: range(together),
      sure: own.filter((share) => share >= WHOLE).length,
      possible: own.filter((share) => share > 0).length,
    };
  });
}

/** Rounding of a sum of shares. */
const ROUNDING = 1e-9;

/**
 * The range, widened to the whole numbers around a mean that lies beside it: of rare chances or nearly sure ones the
 * count that is as good as certain is a whole number, its mean is not. It then holds the count more often than asked.
 */
function holding({ low, high }: CountRange, mean: number): CountRange {
  return {
    low: Math.min(low, Math.floor(mean + ROUNDING)),
    high: Math.max(high, Math.ceil(mean - ROUNDING)),
  };
}

interface Joined {
  readonly one: Entry;
  readonly size: number;
}

/** Finds that share one date, whatever it is. */
function joined(entries: readonly Entry[], key: (entry: Entry) => string): Joined[] {
  const sets = new Map<string, { one: Entry; size: number }>();
  for (const entry of entries) {
    const name = key(entry);
    const set = sets.get(name);
    if (set === undefined) sets.set(name, { one: entry, size: 1 });
    else set.size++;
  }
  return [...sets.values()];
}

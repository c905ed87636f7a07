import type { Grouping } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import {
  dissimilarities,
  dissimilaritiesTo,
  pickRecords,
} from '../../numerics/dissimilarity/dissimilarity.ts';
import { prepareComparison } from '../../numerics/dissimilarity/prepare.ts';
import { type DissimilaritySpec, valueAt } from '../../numerics/dissimilarity/variables.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { sampleRows } from '../../numerics/grouping/sampled-medoids.ts';
import { bootstrapInterval } from '../../numerics/resampling/bootstrap.ts';
import type { Unavailable } from '../contract.ts';
import type { AtHome, Elsewhere, Unlike } from './found.ts';
import type { StandingOptions } from './options.ts';

/** The site's items that are compared, and the dissimilarities of each to all items. */
export interface OwnDistances {
  readonly own: readonly number[];
  readonly distances: readonly Float64Array[];
}

/** Items of an assemblage that means and intervals rest on at most; more are drawn by the seed. */
const MOST_ITEMS = 200;

/** Items of the site that are set against every item of the table at most. */
const MOST_OWN = 300;

/** The rows of the site's items, or of very many those that are drawn by the seed, ascending. */
export function ownItems(rows: readonly number[], random: Random): readonly number[] {
  if (rows.length <= MOST_OWN) return rows;
  return Array.from(sampleRows(rows.length, MOST_OWN, random), (place) => rows[place]);
}

/** Dissimilarities of each item of the site to every item of the table. */
export function siteDistances(spec: DissimilaritySpec, rows: readonly number[]): readonly Float64Array[] {
  const prepared = prepareComparison(spec);
  return rows.map((row) =>
    dissimilaritiesTo(
      prepared,
      spec.variables.map((variable) => valueAt(variable, row)),
    ),
  );
}

/**
 * Mean dissimilarity among the site's items, and from them to those of each other assemblage, nearest first.
 *
 * @param own rows of the items that `distances` are from.
 */
export function unlikeOthers(
  spec: DissimilaritySpec,
  { own, distances }: OwnDistances,
  groups: Grouping['groups'],
  site: number,
  options: StandingOptions,
  random: Random,
): { within: number | Unavailable; unlike: Unlike[] } {
  const within = meanOf(distances, (place) => own.slice(place + 1));
  const ownPlaces = drawSome(
    own.map((_, place) => place),
    random.stream('own'),
  );
  const unlike = groups.flatMap(({ labels, rows }, group): Unlike[] => {
    if (group === site) return [];
    const some = drawSome(rows, random.stream(`items ${labels[0]}`));
    const among = dissimilarities(pickRecords(spec, some)).values;
    const amongThem = meanOf([among], () => among.keys());
    const between = meanOf(distances, () => rows);
    const interval = bootstrapInterval(
      [ownPlaces.length, some.length],
      ([ours, theirs]) => {
        let sum = 0;
        let known = 0;
        for (const one of ours) {
          const line = distances[ownPlaces[one]];
          for (const other of theirs) {
            const value = line[some[other]];
            if (Number.isNaN(value)) continue;
            sum += value;
            known++;
          }
        }
        return known === 0 ? Number.NaN : sum / known;
      },
      {
        random: random.stream(`interval ${labels[0]}`),
        resamples: Math.min(options.resamples, MOST_RESAMPLES),
        level: options.confidence,
        method: 'centred',
      },
    );
    const excess =
      typeof between !== 'number'
        ? between
        : typeof within !== 'number'
          ? within
          : typeof amongThem !== 'number'
            ? amongThem
            : between - (within + amongThem) / 2;
    return [{ label: labels[0], items: rows.length, between, interval, within: amongThem, excess }];
  });
  const size = ({ between }: Unlike) => (typeof between === 'number' ? between : Infinity);
  return { within, unlike: unlike.sort((a, b) => (size(a) === size(b) ? 0 : size(a) - size(b))) };
}

/** A mean of many pairs is drawn soon enough. */
const MOST_RESAMPLES = 499;

function drawSome(rows: readonly number[], random: Random): readonly number[] {
  if (rows.length <= MOST_ITEMS) return rows;
  const left = [...rows];
  return Array.from({ length: MOST_ITEMS }, () => left.splice(random.integer(left.length), 1)[0]).sort(
    (a, b) => a - b,
  );
}

/** Mean of what the lines hold at some places of each, as far as it is known. */
function meanOf(
  lines: readonly Float64Array[],
  placesOf: (line: number) => Iterable<number>,
): number | Unavailable {
  let sum = 0;
  let known = 0;
  for (const [at, line] of lines.entries())
    for (const place of placesOf(at)) {
      if (Number.isNaN(line[place])) continue;
      sum += line[place];
      known++;
    }
  return known === 0 ? { why: 'no two items can be compared' } : sum / known;
}

/**
 * Which items of the site are nearest to items of others. The nearest of an item are its `nearest` nearest,
 * with all that lie as near as the last of them; it is at home elsewhere when more than half are of other
 * assemblages. `expected` is the share that labels dealt at random would give.
 */
export function atHomeElsewhere(
  items: FragmentTable,
  { own, distances }: OwnDistances,
  groups: Grouping['groups'],
  site: number,
  nearest: number,
): AtHome | Unavailable {
  const groupOf = new Map(groups.flatMap(({ rows }, group) => rows.map((row) => [row, group] as const)));
  const rows = Int32Array.from(groupOf.keys());
  const others = rows.length - groups[site].rows.length;
  const elsewhere: Elsewhere[] = [];
  let judged = 0;
  let shares = 0;
  own.forEach((row, place) => {
    const line = distances[place];
    const last = nearestOf(line, rows, row, nearest)[nearest - 1] + TIE;
    if (!Number.isFinite(last)) return;
    judged++;
    const near = Array.from(
      rows.filter((other) => other !== row && line[other] <= last).sort((a, b) => line[a] - line[b] || a - b),
    );
    const strangers = near.filter((other) => groupOf.get(other) !== site);
    const share = strangers.length / near.length;
    shares += share;
    if (share <= 0.5) return;
    const tally = groups.map((_, group) => strangers.filter((other) => groupOf.get(other) === group).length);
    const home = tally.reduce((best, count, at) => (count > tally[best] ? at : best), 0);
    elsewhere.push({
      id: items.id[row],
      home: groups[home].labels[0],
      share,
      nearest: items.id[strangers[0]],
      nearestAt: groups[groupOf.get(strangers[0]) ?? home].labels[0],
      distance: line[strangers[0]],
    });
  });
  if (judged === 0) return { why: `no item of the site can be compared with ${nearest} others` };
  return {
    judged,
    elsewhere: elsewhere.sort((a, b) => b.share - a.share || a.distance - b.distance),
    share: shares / judged,
    expected: others / (groupOf.size - 1),
  };
}

/** The `count` smallest known distances to other rows, ascending; infinite where there are no more. */
function nearestOf(line: Float64Array, rows: Int32Array, own: number, count: number): Float64Array {
  const held = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  for (const row of rows) {
    const distance = line[row];
    if (row === own || !(distance < held[count - 1])) continue;
    let at = count - 1;
    for (; at > 0 && held[at - 1] > distance; at--) held[at] = held[at - 1];
    held[at] = distance;
  }
  return held;
}

/** Dissimilarities that should tie may differ in their last bits. */
const TIE = 1e-12;

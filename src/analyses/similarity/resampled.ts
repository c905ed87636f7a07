import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { assemblageSimilarity, isDistance } from '../../numerics/assemblage-similarity.ts';
import { bootstrapInterval, type ResampledInterval } from '../../numerics/bootstrap.ts';
import { chaoInterval } from '../../numerics/chao.ts';
import { diversity, rarefiedRichness } from '../../numerics/diversity.ts';
import { type PermutationTest, permutationTest } from '../../numerics/permutation.ts';
import type { Random } from '../../numerics/random.ts';
import type { Unavailable } from '../contract.ts';
import type { SimilarityOptions } from './options.ts';

/** Counts of the kinds that each item brings, for every assemblage: what is drawn again. */
export type ItemCounts = readonly (readonly Float64Array[])[];

/** Items of each assemblage; an item found in two of them counts in each with its fragments there. */
export function itemCounts(table: CrossedTable): ItemCounts {
  return table.rows.map((_, row) => {
    const items = new Map<string, Float64Array>();
    for (const entry of table.entries) {
      if (entry.row !== row) continue;
      const counts = items.get(entry.item) ?? new Float64Array(table.columns.length);
      counts[entry.column]++;
      items.set(entry.item, counts);
    }
    return [...items.values()];
  });
}

function drawn(items: readonly Float64Array[], choice: ArrayLike<number>, columns: number): Float64Array {
  const counts = new Float64Array(columns);
  for (let i = 0; i < choice.length; i++) {
    const item = items[choice[i]];
    for (let column = 0; column < columns; column++) counts[column] += item[column];
  }
  return counts;
}

/** How alike two assemblages are when their items are drawn again; the others stay as they are. */
export function pairInterval(
  table: CrossedTable,
  items: ItemCounts,
  first: number,
  second: number,
  options: SimilarityOptions,
  random: Random,
): ResampledInterval | Unavailable {
  const columns = table.columns.length;
  // The chi-square distance weighs by the kinds of all assemblages; the others enter as one row.
  const rest = Float64Array.from(table.columns, (_, column) =>
    table.counts.reduce((sum, line, row) => (row === first || row === second ? sum : sum + line[column]), 0),
  );
  const rows = options.coefficient === 'chi-square' && rest.some((count) => count > 0) ? [rest] : [];
  const interval = bootstrapInterval(
    [items[first].length, items[second].length],
    ([one, other]) =>
      assemblageSimilarity(
        [drawn(items[first], one, columns), drawn(items[second], other, columns), ...rows],
        options.coefficient,
      ).values[0],
    { random, resamples: options.resamples, level: options.confidence, method: 'centred' },
  );
  if ('why' in interval) return interval;
  const most = isDistance(options.coefficient)
    ? Infinity
    : options.coefficient === 'brainerd-robinson'
      ? 200
      : 1;
  return { ...interval, low: Math.max(0, interval.low), high: Math.min(most, interval.high) };
}

/**
 * Could both assemblages be draws from one source? p by dealing their items between them, the coefficient
 * as the statistic (after DeBoer, Kintigh & Rostoker 1996, Am. Antiquity 61:263).
 */
export function sameSource(
  table: CrossedTable,
  items: ItemCounts,
  first: number,
  second: number,
  options: SimilarityOptions,
  random: Random,
): PermutationTest {
  const columns = table.columns.length;
  const both = [...items[first], ...items[second]];
  const labels = both.map((_, item) => (item < items[first].length ? 0 : 1));
  const sign = isDistance(options.coefficient) ? 1 : -1;
  return permutationTest(
    labels,
    (dealt) => {
      const counts = [new Float64Array(columns), new Float64Array(columns)];
      both.forEach((item, place) => {
        const into = counts[dealt[place]];
        for (let column = 0; column < columns; column++) into[column] += item[column];
      });
      return sign * assemblageSimilarity(counts, options.coefficient).values[0];
    },
    { random, relabellings: Math.min(options.relabellings, MOST_DEALT), exactLimit: MOST_DEALT },
  );
}

/** Ways to deal the items of one pair: there are many pairs. */
const MOST_DEALT = 1999;

export interface Measure {
  readonly value: number | Unavailable;
  readonly low: number | Unavailable;
  readonly high: number | Unavailable;
}

export interface AssemblageDiversity {
  readonly n: number;
  readonly items: number;
  readonly richness: number;
  readonly rarefied: Measure;
  readonly shannon: Measure;
  readonly simpson: Measure;
  readonly evenness: Measure;
  readonly chao1: Measure;
}

/**
 * How many kinds each assemblage holds and how evenly, with limits: Shannon, Simpson, evenness and rarefied
 * richness by drawing items again, Chao's estimate by its log-normal limits.
 *
 * @param size records to which richness is rarefied.
 */
export function assemblageDiversity(
  counts: readonly number[],
  items: readonly Float64Array[],
  size: number,
  options: SimilarityOptions,
  random: Random,
): AssemblageDiversity {
  const columns = counts.length;
  const measure = (name: string, statistic: (counts: ArrayLike<number>) => number | Unavailable): Measure => {
    const value = statistic(counts);
    if (typeof value !== 'number') return { value, low: value, high: value };
    const interval = bootstrapInterval(
      [items.length],
      ([choice]) => {
        const again = statistic(drawn(items, choice, columns));
        return typeof again === 'number' ? again : Number.NaN;
      },
      { random: random.stream(name), resamples: options.resamples, level: options.confidence },
    );
    return 'why' in interval
      ? { value, low: interval, high: interval }
      : { value, low: interval.low, high: interval.high };
  };
  const of = (key: 'shannon' | 'simpson' | 'evenness') => (values: ArrayLike<number>) => {
    const found = diversity(values);
    return 'why' in found ? found : found[key];
  };
  const whole = diversity(counts);
  const chao = chaoInterval(counts, options.confidence);
  return {
    n: counts.reduce((sum, count) => sum + count, 0),
    items: items.length,
    richness: counts.filter((count) => count > 0).length,
    rarefied: measure('rarefied', (values) => rarefiedRichness(values, size)),
    shannon: measure('shannon', of('shannon')),
    simpson: measure('simpson', of('simpson')),
    evenness: measure('evenness', of('evenness')),
    chao1: {
      value: 'why' in whole ? whole : whole.chao1,
      low: 'why' in chao ? chao : chao.low,
      high: 'why' in chao ? chao : chao.high,
    },
  };
}

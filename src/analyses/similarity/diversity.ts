import { chaoInterval } from '../../numerics/assemblages/chao.ts';
import { diversity, rarefiedRichness } from '../../numerics/assemblages/diversity.ts';
import { drawnCounts } from '../../numerics/assemblages/draws.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { bootstrapInterval } from '../../numerics/resampling/bootstrap.ts';
import type { Unavailable } from '../contract.ts';
import type { AssemblageDiversity, Measure } from './found.ts';
import type { SimilarityOptions } from './options.ts';

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
        const again = statistic(drawnCounts(items, choice, columns));
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

import { chaoInterval } from '../../numerics/assemblages/chao.ts';
import { diversity, rarefiedRichness } from '../../numerics/assemblages/diversity.ts';
import { diversityLimits } from '../../numerics/assemblages/diversity-limits.ts';
import type { ItemKinds } from '../../numerics/assemblages/draws.ts';
import {
  hillNumber,
  richnessAtCoverage,
  sameKind,
  sampleCoverage,
  shannonEstimate,
} from '../../numerics/assemblages/hill.ts';
import { exp, ln } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import type { Unavailable } from '../contract.ts';
import type { AssemblageDiversity, DiversityMeasure } from './found.ts';
import type { SimilarityOptions } from './options.ts';

/** Where assemblages are compared: in samples of one size, and of one coverage. */
export interface ComparedAt {
  readonly size: number;
  readonly coverage: number | Unavailable;
}

/** The least coverage of the assemblages, at which all can be compared. */
export function leastCoverage(counts: readonly (readonly number[])[]): number | Unavailable {
  const known = counts
    .map((line) => sampleCoverage(line))
    .filter((value): value is number => typeof value === 'number' && value > 0);
  return known.length === 0
    ? { why: 'no assemblage has two items of one kind' }
    : known.reduce((least, value) => Math.min(least, value));
}

/**
 * How many kinds each assemblage comes from and how evenly they are spread, what it has not met made up for, with
 * limits: of Chao's estimate of all kinds by his log-normal ones, of the others by `diversityLimits`.
 */
export function assemblageDiversity(
  counts: readonly number[],
  items: ItemKinds,
  at: ComparedAt,
  options: SimilarityOptions,
  random: Random,
): AssemblageDiversity {
  const { coverage } = at;
  const estimators = {
    rarefied: (values: ArrayLike<number>) => rarefiedRichness(values, at.size),
    atCoverage: (values: ArrayLike<number>) =>
      typeof coverage === 'number' ? richnessAtCoverage(values, coverage) : coverage,
    shannon: shannonEstimate,
    simpson: (values: ArrayLike<number>) => {
      const same = sameKind(values);
      return typeof same === 'number' ? 1 - same : same;
    },
    // On the logarithm, where its limits stay finite however even the kinds are.
    logDominant: (values: ArrayLike<number>) => {
      const dominant = hillNumber(values, 2);
      return typeof dominant === 'number' ? ln(dominant) : dominant;
    },
  };
  const names = ['rarefied', 'atCoverage', 'shannon', 'simpson', 'logDominant'] as const;
  const found = names.map((name) => estimators[name](counts));
  const limits = diversityLimits(
    counts,
    items,
    names.map((name) => (values) => {
      const value = estimators[name](values);
      return typeof value === 'number' ? value : Number.NaN;
    }),
    [
      [1, Number.POSITIVE_INFINITY],
      [1, Number.POSITIVE_INFINITY],
      [0, Number.POSITIVE_INFINITY],
      [0, 1],
      [0, Number.POSITIVE_INFINITY],
    ],
    { random, resamples: options.resamples, confidence: options.confidence },
  );
  const [rarefied, atCoverage, shannon, simpson, logDominant] = found.map(
    (value, which): DiversityMeasure => {
      const limit = limits[which];
      if (typeof value !== 'number') return { value, low: value, high: value };
      return 'why' in limit
        ? { value, low: limit, high: limit }
        : { value, low: limit.low, high: limit.high };
    },
  );
  const whole = diversity(counts);
  const chao = chaoInterval(counts, options.confidence);
  return {
    n: counts.reduce((sum, count) => sum + count, 0),
    items: items.length,
    richness: counts.filter((count) => count > 0).length,
    coverage: sampleCoverage(counts),
    rarefied,
    atCoverage,
    chao1: {
      value: 'why' in whole ? whole : whole.chao1,
      low: 'why' in chao ? chao : chao.low,
      high: 'why' in chao ? chao : chao.high,
    },
    // The same limits on the scale of numbers of kinds.
    common: numberOfKinds(shannon),
    dominant: numberOfKinds(logDominant),
    shannon,
    simpson,
    evenness: 'why' in whole ? whole : whole.evenness,
  };
}

function numberOfKinds({ value, low, high }: DiversityMeasure): DiversityMeasure {
  const turn = (one: number | Unavailable) => (typeof one === 'number' ? exp(one) : one);
  return { value: turn(value), low: turn(low), high: turn(high) };
}

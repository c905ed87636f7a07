import { midpoint } from '../../fragments/accessors.ts';
import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { exp, ln } from '../../numerics/elementary.ts';
import { type DipTest, dipTest } from '../../numerics/modes/dip.ts';
import {
  crossing,
  type GaussianMixture,
  gaussianMixture,
  sampleMixture,
} from '../../numerics/modes/gaussian-mixture.ts';
import { quantileSorted } from '../../numerics/quantile.ts';
import type { Random } from '../../numerics/random.ts';
import type { Unavailable } from '../contract.ts';
import { conditionsOf, type Typology } from './rules.ts';

/** Whether the readings of one attribute fall into two heaps where a typology cuts them. */
export interface Split {
  readonly attribute: string;
  readonly label: string;
  readonly unit: string;
  /** Cuts that the rules make, ascending, in the attribute's unit. */
  readonly cuts: readonly number[];
  readonly logarithm: boolean;
  /** Readings used, in the attribute's unit. */
  readonly values: Float64Array;
  readonly dip: DipTest | Unavailable;
  /** The mixture of 1 to 5 parts that BIC prefers, on the scale of comparison. */
  readonly best: GaussianMixture | Unavailable;
  readonly bic: readonly { readonly parts: number; readonly bic: number | Unavailable }[];
  /** Two parts against one by resampled likelihood ratio. */
  readonly twoAgainstOne: { readonly statistic: number; readonly p: number } | Unavailable;
  /** Where two parts cross, with the interval that resampling leaves it, in the attribute's unit. */
  readonly threshold:
    | { readonly estimate: number; readonly low: number; readonly high: number }
    | Unavailable;
}

/** Fewest readings on which a split is looked for. */
const FEWEST = 12;

/**
 * Looks for a split in every numeric attribute that the rules cut.
 *
 * - Dip (Hartigan & Hartigan 1985), on logarithms where ratios matter.
 * - Gaussian mixtures of one to five parts by BIC, one spread or own spreads (Fraley & Raftery 2002).
 * - Two parts against one: likelihood ratio against samples from the single fitted part (McLachlan 1987).
 * - Threshold: where two parts of one spread cross; percentile interval over items drawn again.
 */
export function findSplits(
  table: FragmentTable,
  rows: ArrayLike<number>,
  typology: Typology,
  random: Random,
  resamples: number,
): Split[] {
  const cuts = cutsOf(typology);
  return [...cuts].flatMap(([id, at]) => {
    const column = table.columns.get(id);
    return column?.kind === 'numeric' ? [splitIn(column, rows, at, random.stream(id), resamples)] : [];
  });
}

/** The limits that the rules set, by attribute. */
export function cutsOf(typology: Typology): ReadonlyMap<string, readonly number[]> {
  const cuts = new Map<string, Set<number>>();
  for (const one of typology.types.flatMap((type) => conditionsOf(type.when))) {
    for (const limit of [one.atLeast, one.atMost, one.below]) {
      if (limit === undefined) continue;
      const known = cuts.get(one.attribute) ?? new Set<number>();
      cuts.set(one.attribute, known.add(limit));
    }
  }
  return new Map([...cuts].map(([id, set]) => [id, [...set].sort((a, b) => a - b)]));
}

function splitIn(
  column: NumericColumn,
  rows: ArrayLike<number>,
  cuts: readonly number[],
  random: Random,
  resamples: number,
): Split {
  const { attribute } = column;
  const logarithm = attribute.transform === 'log';
  const values = Float64Array.from(rows, (row) => midpoint(column, row)).filter(
    (value) => !Number.isNaN(value) && (!logarithm || value > 0),
  );
  const scaled = logarithm ? values.map(ln) : values;
  const back = (value: number) => (logarithm ? exp(value) : value);
  const head = {
    attribute: attribute.id,
    label: attribute.label,
    unit: attribute.unit ?? '',
    cuts,
    logarithm,
    values,
  };
  if (values.length < FEWEST) {
    const why = { why: `${values.length} readings are too few to look for a split; ${FEWEST} needed` };
    return { ...head, dip: why, best: why, bic: [], twoAgainstOne: why, threshold: why };
  }
  const fits = [1, 2, 3, 4, 5].map((parts) => bestOf(scaled, parts));
  const fitted = fits.filter((fit): fit is GaussianMixture => !('why' in fit));
  return {
    ...head,
    dip: dipTest(scaled, random.stream('dip'), 999),
    best:
      fitted.length === 0
        ? { why: 'no mixture could be fitted' }
        : fitted.reduce((a, b) => (b.bic > a.bic ? b : a)),
    bic: fits.map((fit, place) => ({ parts: place + 1, bic: 'why' in fit ? fit : fit.bic })),
    twoAgainstOne: twoAgainstOne(scaled, random.stream('two against one')),
    threshold: thresholdOf(scaled, random.stream('threshold'), resamples, back),
  };
}

function bestOf(values: Float64Array, parts: number): GaussianMixture | Unavailable {
  const equal = gaussianMixture(values, parts, 'equal');
  const own = gaussianMixture(values, parts, 'own');
  if ('why' in equal || 'why' in own) return equal;
  return own.bic > equal.bic ? own : equal;
}

const SHUFFLES = 199;

function twoAgainstOne(values: Float64Array, random: Random): Split['twoAgainstOne'] {
  const ratio = (sample: Float64Array): number | undefined => {
    const one = gaussianMixture(sample, 1, 'equal');
    const two = gaussianMixture(sample, 2, 'equal');
    return 'why' in one || 'why' in two ? undefined : 2 * (two.logLikelihood - one.logLikelihood);
  };
  const single = gaussianMixture(values, 1, 'equal');
  const statistic = ratio(values);
  if ('why' in single) return single;
  if (statistic === undefined) return { why: 'two parts could not be fitted' };
  let reached = 0;
  for (let i = 0; i < SHUFFLES; i++) {
    const drawn = ratio(sampleMixture(single, values.length, random));
    if (drawn !== undefined && drawn >= statistic) reached++;
  }
  return { statistic, p: (reached + 1) / (SHUFFLES + 1) };
}

function thresholdOf(
  values: Float64Array,
  random: Random,
  resamples: number,
  back: (value: number) => number,
): Split['threshold'] {
  const at = (sample: Float64Array): number | undefined => {
    const two = gaussianMixture(sample, 2, 'equal');
    return 'why' in two ? undefined : crossing(two.parts[0], two.parts[1]);
  };
  const estimate = at(values);
  if (estimate === undefined) return { why: 'two parts could not be fitted' };
  const drawn: number[] = [];
  for (let i = 0; i < resamples; i++) {
    const found = at(values.map(() => values[random.integer(values.length)]));
    if (found !== undefined) drawn.push(found);
  }
  const sorted = Float64Array.from(drawn).sort();
  return {
    estimate: back(estimate),
    low: back(quantileSorted(sorted, 0.025)),
    high: back(quantileSorted(sorted, 0.975)),
  };
}

import { midpoint } from '../../fragments/accessors.ts';
import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { exp, ln } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import { type DipTest, dipTest } from '../../numerics/modes/dip.ts';
import { type GaussianMixture, gaussianMixture } from '../../numerics/modes/gaussian-mixture.ts';
import { type BandwidthTest, bandwidthTest, valleyOfTwo } from '../../numerics/modes/silverman.ts';
import type { Unavailable } from '../contract.ts';
import { denseItems } from './finer-coarser.ts';
import { conditionsOf, type Typology } from './rules.ts';
import { type CutAnswer, cutAnswers, type Threshold, thresholdOf, twoAgainstOne } from './threshold.ts';

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
  /** Silverman's test of one mode; its bandwidth is on the scale of comparison. */
  readonly bandwidth: BandwidthTest | Unavailable;
  /** The mixture of 1 to 5 parts that BIC prefers, on the scale of comparison. */
  readonly best: GaussianMixture | Unavailable;
  readonly bic: readonly { readonly parts: number; readonly bic: number | Unavailable }[];
  /** Two parts against one by resampled likelihood ratio. */
  readonly twoAgainstOne: { readonly statistic: number; readonly p: number } | Unavailable;
  /** Where two parts cross, with the interval that resampling leaves it, in the attribute's unit. */
  readonly threshold: Threshold | Unavailable;
  /** Valley of the density between its two peaks, in the attribute's unit. */
  readonly valley: number | Unavailable;
  /** How each cut stands to the threshold; empty where there is none. */
  readonly answers: readonly CutAnswer[];
}

/** Fewest readings on which a split is looked for. */
const FEWEST = 12;
const LEVEL = 0.05;

/**
 * Looks for a split in every numeric attribute that the rules cut.
 *
 * - Dip (Hartigan & Hartigan 1985), on logarithms where ratios matter; Silverman's test of one mode (1981).
 * - Gaussian mixtures of one to five parts by BIC, one spread or own spreads (Fraley & Raftery 2002).
 * - Two parts against one: likelihood ratio against samples from the single fitted part (McLachlan 1987).
 * - Threshold: where two parts of one spread cross, percentile interval over items drawn again; and the
 *   valley of the kernel density.
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
    return column?.kind === 'numeric' ? [splitIn(column, table, rows, at, random.stream(id), resamples)] : [];
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

/**
 * More than one heap, when the dip, the bandwidth and BIC all say so; undefined where it cannot be said. The
 * dip alone takes the steps of rounded readings for heaps; the density at its critical bandwidth does not see them.
 */
export function fallsApart({ dip, bandwidth, best }: Omit<Heaps, 'bic'>): boolean | undefined {
  if (isUnavailable(dip) || isUnavailable(bandwidth) || isUnavailable(best)) return undefined;
  return dip.p < LEVEL && bandwidth.p < LEVEL && best.parts.length >= 2;
}

/** Is the data divided, and where the rules divide it? */
export function splitSupported(split: Split): boolean | undefined {
  const apart = fallsApart(split);
  if (apart === undefined || isUnavailable(split.threshold)) return undefined;
  return apart && split.answers.some(({ agrees }) => agrees);
}

function splitIn(
  column: NumericColumn,
  table: FragmentTable,
  rows: ArrayLike<number>,
  cuts: readonly number[],
  random: Random,
  resamples: number,
): Split {
  const { attribute } = column;
  const logarithm = attribute.transform === 'log';
  const used = Array.from(rows).filter((row) => {
    const value = midpoint(column, row);
    return !Number.isNaN(value) && (!logarithm || value > 0);
  });
  const values = Float64Array.from(used, (row) => midpoint(column, row));
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
    const unknown = { dip: why, bandwidth: why, best: why, twoAgainstOne: why, threshold: why, valley: why };
    return { ...head, ...unknown, bic: [], answers: [] };
  }
  const threshold = thresholdOf(
    scaled,
    denseItems(used.map((row) => table.item[row])),
    random.stream('threshold'),
    resamples,
    back,
  );
  const valley = valleyOfTwo(scaled.slice().sort());
  return {
    ...head,
    ...heapsOf(scaled, random),
    twoAgainstOne: twoAgainstOne(scaled, random.stream('two against one')),
    threshold,
    valley: typeof valley === 'number' ? back(valley) : valley,
    answers: isUnavailable(threshold) ? [] : cutAnswers(values, cuts, threshold),
  };
}

export type Heaps = Pick<Split, 'dip' | 'bandwidth' | 'best' | 'bic'>;

/** The tests that together decide whether there is more than one heap, on the scale of comparison. */
export function heapsOf(scaled: Float64Array, random: Random): Heaps {
  const fits = [1, 2, 3, 4, 5].map((parts) => bestOf(scaled, parts));
  const fitted = fits.filter((fit): fit is GaussianMixture => !('why' in fit));
  return {
    dip: dipTest(scaled, random.stream('dip'), 999),
    bandwidth: bandwidthTest(scaled, 1, random.stream('bandwidth')),
    best:
      fitted.length === 0
        ? { why: 'no mixture could be fitted' }
        : fitted.reduce((a, b) => (b.bic > a.bic ? b : a)),
    bic: fits.map((fit, place) => ({ parts: place + 1, bic: 'why' in fit ? fit : fit.bic })),
  };
}

function bestOf(values: Float64Array, parts: number): GaussianMixture | Unavailable {
  const equal = gaussianMixture(values, parts, { spread: 'equal' });
  const own = gaussianMixture(values, parts, { spread: 'own' });
  if ('why' in equal || 'why' in own) return equal;
  return own.bic > equal.bic ? own : equal;
}

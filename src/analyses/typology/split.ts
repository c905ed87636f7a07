import { midpoint } from '../../fragments/accessors.ts';
import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { exp, ln } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import { dipTest } from '../../numerics/modes/dip.ts';
import { type GaussianMixture, gaussianMixture } from '../../numerics/modes/gaussian-mixture.ts';
import { bandwidthTest, valleyOfTwo } from '../../numerics/modes/silverman.ts';
import type { Unavailable } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import { densityOf } from './density.ts';
import { denseItems } from './finer-coarser.ts';
import type { Split, SplitVerdict } from './found.ts';
import { conditionsOf, type Typology } from './rules.ts';
import { cutAnswers, thresholdOf, twoAgainstOne } from './threshold.ts';

/** Fewest readings on which a split is looked for. */
const FEWEST = 12;

export interface Looking {
  readonly random: Random;
  readonly resamples: number;
  readonly confidence: number;
}

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
  { random, resamples, confidence }: Looking,
): Split[] {
  const cuts = cutsOf(typology);
  return [...cuts].flatMap(([id, at]) => {
    const column = table.columns.get(id);
    return column?.kind === 'numeric'
      ? [splitIn(column, table, rows, at, { random: random.stream(id), resamples, confidence })]
      : [];
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
export function fallsApart(
  { dip, bandwidth, best }: Omit<Heaps, 'bic'>,
  confidence: number,
): boolean | undefined {
  if (isUnavailable(dip) || isUnavailable(bandwidth) || isUnavailable(best)) return undefined;
  const told = [dip, bandwidth].every(({ p }) => toldAt(p, confidence) === 'told apart');
  return told && best.parts.length >= 2;
}

/** Are the readings divided, and where the rules divide them? */
function verdictOf(
  heaps: Heaps,
  { threshold, answers }: Pick<Split, 'threshold' | 'answers'>,
  confidence: number,
): SplitVerdict {
  const apart = fallsApart(heaps, confidence);
  if (apart === undefined || isUnavailable(threshold)) return 'cannot be told';
  if (!apart) return 'one range';
  return answers.some(({ agrees }) => agrees) ? 'divided at the cut' : 'divided elsewhere';
}

function splitIn(
  column: NumericColumn,
  table: FragmentTable,
  rows: ArrayLike<number>,
  cuts: readonly number[],
  { random, resamples, confidence }: Looking,
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
  const distinct = new Set(values).size;
  const head = {
    attribute: attribute.id,
    label: attribute.label,
    unit: attribute.unit ?? '',
    cuts,
    logarithm,
    values,
    distinct,
    coarse: distinct * 2 < values.length,
    curve: densityOf(scaled, back),
  };
  if (values.length < FEWEST) {
    const why = { why: `${values.length} readings are too few to look for a split; ${FEWEST} needed` };
    const unknown = { dip: why, bandwidth: why, best: why, twoAgainstOne: why, threshold: why, valley: why };
    return { ...head, ...unknown, bic: [], answers: [], verdict: 'cannot be told' };
  }
  const threshold = thresholdOf(
    scaled,
    denseItems(used.map((row) => table.item[row])),
    random.stream('threshold'),
    resamples,
    back,
  );
  const valley = valleyOfTwo(scaled.slice().sort());
  const heaps = heapsOf(scaled, random);
  const answers = isUnavailable(threshold) ? [] : cutAnswers(values, cuts, threshold);
  return {
    ...head,
    ...heaps,
    twoAgainstOne: twoAgainstOne(scaled, random.stream('two against one')),
    threshold,
    valley: typeof valley === 'number' ? back(valley) : valley,
    answers,
    verdict: verdictOf(heaps, { threshold, answers }, confidence),
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

import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { exp } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { GaussianMixture } from '../../numerics/modes/gaussian-mixture.ts';
import { type Intervals, intervalMixture } from '../../numerics/modes/interval-mixture.ts';
import {
  type Rounded,
  roundedBandwidthTest,
  roundedDipTest,
  spreadEvenly,
} from '../../numerics/modes/rounded-tests.ts';
import { valleyOfTwo } from '../../numerics/modes/silverman.ts';
import type { Unavailable } from '../contract.ts';
import { printCount } from '../phrasing.ts';
import { toldAt } from '../verdicts.ts';
import { densityOf } from './density.ts';
import { visibleSplit } from './power.ts';
import { readingsOf } from './readings.ts';
import { conditionsOf, type Typology } from './rules.ts';
import type { HeapSplit, HeapTest, SplitVerdict } from './split-found.ts';
import { cutAnswers, thresholdOf } from './threshold.ts';
import { twoAgainstOne } from './two-parts.ts';

/** Fewest readings on which a split is looked for. */
const FEWEST = 12;

export interface Looking {
  readonly random: Random;
  readonly resamples: number;
  readonly confidence: number;
  /** Whether nothing but the verdict is wanted: two parts are then not tested against one, which no verdict rests on. */
  readonly alone?: boolean;
}

/**
 * Looks for a split in every numeric attribute that the rules cut. Every reading counts as the interval that its
 * step leaves open, and what the tests are held against is rounded the same way.
 *
 * - Dip (Hartigan & Hartigan 1985), on logarithms where ratios matter; Silverman's test of one mode (1981).
 * - Gaussian mixtures of one to five parts by BIC, one spread or own spreads (Fraley & Raftery 2002).
 * - Two parts against one: likelihood ratio against samples from the single fitted part (McLachlan 1987).
 * - Threshold, only where the readings are divided: where two parts cross, over items drawn again; and the valley
 *   of the kernel density.
 */
export function findSplits(
  table: FragmentTable,
  rows: ArrayLike<number>,
  typology: Typology,
  { random, ...looking }: Looking,
): HeapSplit[] {
  const cuts = cutsOf(typology);
  return [...cuts].flatMap(([id, at]) => {
    const column = table.columns.get(id);
    return column?.kind === 'numeric'
      ? [splitIn(column, table, rows, at, { random: random.stream(id), ...looking })]
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

/** The dip is held against its worst case, the even sample, so that a tail twice as wide still errs too seldom. */
const TAILS_OF_DIP = 2;

/** The tests that find no second heap; undefined where one of them could not be asked. */
function findingOne(
  { dip, bandwidth, best }: Omit<Heaps, 'bic'>,
  confidence: number,
): readonly HeapTest[] | undefined {
  if (isUnavailable(dip) || isUnavailable(bandwidth) || isUnavailable(best)) return undefined;
  const byDip = toldAt(dip.p, 1 - TAILS_OF_DIP * (1 - confidence)) === 'told apart';
  return [
    ...(byDip ? [] : ['dip' as const]),
    ...(toldAt(bandwidth.p, confidence) === 'told apart' ? [] : ['bandwidth' as const]),
    ...(best.parts.length >= 2 ? [] : ['parts' as const]),
  ];
}

/**
 * More than one heap, when the dip, the bandwidth and BIC all say so; undefined where it cannot be said. How often
 * that errs, and what it finds, is simulated (docs/methods/typology.md).
 */
export function fallsApart(heaps: Omit<Heaps, 'bic'>, confidence: number): boolean | undefined {
  const against = findingOne(heaps, confidence);
  return against === undefined ? undefined : against.length === 0;
}

/** The only test that finds one heap; bandwidth and BIC may be led astray together, so that the dip alone decides. */
function standsAgainst(findOne: readonly HeapTest[]): HeapSplit['against'] {
  const [only, ...others] = findOne;
  return only === undefined || only === 'dip' || others.length > 0 ? null : only;
}

/**
 * Are the readings divided, and where the rules divide them? So few that no division would show tell nothing, nor do
 * tests of which the dip and one more find a division and the third does not.
 */
function verdictOf(
  apart: boolean | undefined,
  { threshold, answers, visible, against }: Pick<HeapSplit, 'threshold' | 'answers' | 'visible' | 'against'>,
): SplitVerdict {
  if (apart === undefined) return 'cannot be told';
  if (!apart) return against !== null || isUnavailable(visible.asCut) ? 'cannot be told' : 'one range';
  if (isUnavailable(threshold)) return 'cannot be told';
  return answers.some(({ agrees }) => agrees) ? 'divided at the cut' : 'divided elsewhere';
}

const NOT_ASKED = { why: 'not asked for' };
const NOT_DIVIDED = { why: 'the readings are not divided' };

function splitIn(
  column: NumericColumn,
  table: FragmentTable,
  rows: ArrayLike<number>,
  cuts: readonly number[],
  { random, resamples, confidence, alone = false }: Looking,
): HeapSplit {
  const { attribute } = column;
  const { rounded, items, logarithm, scaleBy, steps, drawnFrom } = readingsOf(
    table,
    column,
    rows,
    random.stream('readings'),
  );
  const { values } = rounded;
  const spread = spreadEvenly(rounded);
  const back = (value: number) => (logarithm ? exp(value) : value);
  const distinct = new Set(values).size;
  const head = {
    attribute: attribute.id,
    label: attribute.label,
    unit: attribute.unit ?? '',
    cuts,
    logarithm,
    scaleBy,
    steps,
    values,
    distinct,
    drawnFrom,
    coarse: distinct * 2 < values.length,
    curve: densityOf(spread, back),
    visible: visibleSplit(values, cuts),
  };
  if (values.length < FEWEST) {
    const why = {
      why: `${printCount(values.length, 'reading')} ${values.length === 1 ? 'is' : 'are'} too few to look for a split; ${FEWEST} needed`,
    };
    const unknown = { dip: why, bandwidth: why, best: why, twoAgainstOne: why, threshold: why, valley: why };
    return { ...head, ...unknown, bic: [], answers: [], against: null, verdict: 'cannot be told' };
  }
  const heaps = heapsOf(rounded, random);
  const apart = fallsApart(heaps, confidence);
  const against = standsAgainst(findingOne(heaps, confidence) ?? []);
  const threshold = apart
    ? thresholdOf({
        readings: rounded,
        items,
        resamples,
        confidence,
        random: random.stream('threshold'),
        back,
      })
    : NOT_DIVIDED;
  const valley = apart ? valleyOfTwo(spread) : NOT_DIVIDED;
  const answers = isUnavailable(threshold) ? [] : cutAnswers(values, cuts, threshold);
  return {
    ...head,
    ...heaps,
    twoAgainstOne: alone ? NOT_ASKED : twoAgainstOne(rounded, random.stream('two against one')),
    threshold,
    valley: typeof valley === 'number' ? back(valley) : valley,
    answers,
    against,
    verdict: verdictOf(apart, { threshold, answers, visible: head.visible, against }),
  };
}

export type Heaps = Pick<HeapSplit, 'dip' | 'bandwidth' | 'best' | 'bic'>;

const DIPS = 999;
const SMOOTHED = 199;

/** The tests that together decide whether there is more than one heap, on the scale of comparison. */
export function heapsOf(readings: Rounded, random: Random): Heaps {
  const fits = [1, 2, 3, 4, 5].map((parts) => bestOf(readings, parts));
  const fitted = fits.filter((fit): fit is GaussianMixture => !('why' in fit));
  return {
    dip: roundedDipTest(readings, random.stream('dip'), DIPS),
    bandwidth: roundedBandwidthTest(readings, 1, random.stream('bandwidth'), SMOOTHED),
    best:
      fitted.length === 0
        ? { why: 'no mixture could be fitted' }
        : fitted.reduce((a, b) => (b.bic > a.bic ? b : a)),
    bic: fits.map((fit, place) => ({ parts: place + 1, bic: 'why' in fit ? fit : fit.bic })),
  };
}

/** So many parts of one spread or of their own, whichever BIC prefers. */
export function bestOf(readings: Intervals, parts: number): GaussianMixture | Unavailable {
  const equal = intervalMixture(readings, parts, { spread: 'equal' });
  const own = intervalMixture(readings, parts, { spread: 'own' });
  if ('why' in equal || 'why' in own) return equal;
  return own.bic > equal.bic ? own : equal;
}

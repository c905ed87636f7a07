import type { Limits } from '../../numerics/foundation/limits.ts';
import type { DipTest } from '../../numerics/modes/dip.ts';
import type { GaussianMixture } from '../../numerics/modes/gaussian-mixture.ts';
import type { BandwidthTest } from '../../numerics/modes/silverman.ts';
import type { Unavailable } from '../contract.ts';

/** Where two parts cross, with what items drawn again leave of it (expanded percentiles), in the attribute's unit. */
export interface Threshold extends Limits {
  readonly estimate: number;
  /** On the far side of the narrower part, where readings of the wider one lie beyond it; null where none do. */
  readonly second: (Limits & { readonly estimate: number }) | null;
  /** Whether parts of one spread or with their own fit better, by BIC. */
  readonly spread: 'equal' | 'own';
  /** How far apart the two parts lie, in standard deviations within a part. */
  readonly distance: number;
  /** The two readings between which none lies, where the whole interval does: any cut there parts the same. */
  readonly gap: Limits | null;
}

/** How a cut of the rules stands to the threshold that the readings show. */
export interface CutAnswer {
  readonly cut: number;
  /** Within the interval of the threshold. */
  readonly within: boolean;
  /** Readings between the cut and the estimate, of `n`. */
  readonly between: number;
  readonly n: number;
  /** Within, or so few readings between that both part the same records. */
  readonly agrees: boolean;
}

/** What the readings of one attribute say about a division where the rules cut them. */
export type SplitVerdict = 'divided at the cut' | 'divided elsewhere' | 'one range' | 'cannot be told';

/** What decides together whether readings are divided: the dip, one mode by bandwidth, the number of parts by BIC. */
export type HeapTest = 'dip' | 'bandwidth' | 'parts';

/** Whether the readings of one attribute fall into two heaps where a typology cuts them. */
export interface HeapSplit {
  readonly attribute: string;
  readonly label: string;
  readonly unit: string;
  /** Cuts that the rules make, ascending, in the attribute's unit. */
  readonly cuts: readonly number[];
  readonly logarithm: boolean;
  /** Why that scale: the definition of the attribute says so, or the readings fit it better. */
  readonly scaleBy: 'definition' | 'fit';
  /** Smallest and largest step that readings were rounded to, in the attribute's unit; 0 where exact. */
  readonly steps: { readonly least: number; readonly most: number };
  /** Readings used, in the attribute's unit, and how many of them differ. */
  readonly values: Float64Array;
  readonly distinct: number;
  /** How many there are of which those used were drawn by chance; null where all are used. */
  readonly drawnFrom: number | null;
  /** So few different readings that rounding could pass for heaps. */
  readonly coarse: boolean;
  readonly dip: DipTest | Unavailable;
  /** Silverman's test of one mode; its bandwidth is on the scale of comparison. */
  readonly bandwidth: BandwidthTest | Unavailable;
  /** The mixture of 1 to 5 parts that BIC prefers, on the scale of comparison. */
  readonly best: GaussianMixture | Unavailable;
  readonly bic: readonly { readonly parts: number; readonly bic: number | Unavailable }[];
  /** Two parts against one by resampled likelihood ratio. */
  readonly twoAgainstOne: { readonly statistic: number; readonly p: number } | Unavailable;
  readonly threshold: Threshold | Unavailable;
  /** Valley of the density between its two peaks, in the attribute's unit. */
  readonly valley: number | Unavailable;
  /** How each cut stands to the threshold; empty where there is none. */
  readonly answers: readonly CutAnswer[];
  /** The density of the readings, places in the attribute's unit. */
  readonly curve: { readonly at: Float64Array; readonly height: Float64Array };
  /** What division could have been seen in so many readings. */
  readonly visible: Visible;
  /** The one test that finds no division where the dip and the other one find it; null otherwise. */
  readonly against: Exclude<HeapTest, 'dip'> | null;
  readonly verdict: SplitVerdict;
}

/**
 * The smallest distance of two heaps, in standard deviations within one, that is found in 8 samples of 10 of this
 * size, by the tests that decide together, at 95 % (simulated; exact readings).
 */
export interface Visible {
  /** Share of the smaller heap, as the rules part the readings. */
  readonly share: number;
  /** Heaps of equal size. */
  readonly halves: number | Unavailable;
  /** Heaps as the rules part them. */
  readonly asCut: number | Unavailable;
}

/** How many records change sides when a cut moves. */
export interface MovedCut {
  readonly attribute: string;
  readonly cut: number;
  /** The cut moved by this share of itself. */
  readonly by: number;
  readonly to: number;
  /** Records whose whole reading lies between the old cut and the new one. */
  readonly changed: number;
  /** Records whose reading straddles the moved cut. */
  readonly undecided: number;
  readonly n: number;
}

/** What a find is and where it comes from, in a simulation of placements. */
export type SetDesign =
  | 'fragment, likeness 0.5'
  | 'fragment, likeness 0.3'
  | 'new site, effect 0.3'
  | 'new site, effect 0.6'
  | 'gaps by value'
  | 'of a label of five'
  | 'ragged labels';

export const SIMULATED_LEVELS = [0.8, 0.9, 0.95] as const;

/** One cell of the simulation: how often sets held the true label of finds whose label is known. */
export interface SetCell {
  readonly design: SetDesign;
  readonly labels: number;
  /** Items a label (of ragged labels the most, the least being two). */
  readonly items: number;
  /** Share of the comparanda's measurements that is not recorded. */
  readonly gaps: number;
  /** Whether readings are ranges half a standard deviation wide. */
  readonly ranges: boolean;
  readonly finds: number;
  /** Finds whose true label was in the set, at each of `SIMULATED_LEVELS`. */
  readonly held: readonly [number, number, number];
  /** Of those, at 90 %, finds whose true label was only too few to exclude. */
  readonly tooFew: number;
  /** Finds said to be none of these at 95 %, though their label is among them. */
  readonly none: number;
  /** Labels in the 90 % set, all finds together. */
  readonly kept: number;
}

/** One cell of the simulation of what splits are found: samples of two heaps, exact readings, at 95 %. */
export interface PowerCell {
  /** Readings. */
  readonly n: number;
  /** Share of the smaller heap. */
  readonly share: number;
  /** Between the two heaps, in standard deviations within one. */
  readonly distance: number;
  readonly samples: number;
  /** Samples found divided by the tests that decide together. */
  readonly found: number;
}

/** One cell of the simulation of what is taken for a split: samples of one kind, recorded in steps, at 95 %. */
export interface ErrorCell {
  /** What the kind is drawn from. */
  readonly shape: string;
  /** Readings. */
  readonly n: number;
  /** Samples, of five steps together. */
  readonly samples: number;
  /** Samples found divided. */
  readonly found: number;
}

/** What a simulation found, and when. */
export interface Simulated<Cell> {
  /** Its name, for `npm run simulate -- NAME`. */
  readonly simulation: string;
  /** Day of the run. */
  readonly date: string;
  readonly cells: readonly Cell[];
}

import type { UnseenChance } from '../../numerics/assemblages/unseen-kinds.ts';
import type { ConformalP, Verdict } from '../../numerics/tests/conformal.ts';
import type { FindingsWithTables } from '../before-answers.ts';
import type { Unavailable } from '../contract.ts';
import type { Move } from './moves.ts';
import type { Neighbour } from './neighbours.ts';
import type { NextMeasurement } from './next.ts';
import type { PlacementOptions } from './options.ts';
import type { Percentile } from './percentiles.ts';

/** One label of one attribute, judged. */
export interface JudgedLabel {
  readonly attribute: string;
  readonly label: string;
  /** Records that carry it, and those of them that it was judged by. */
  readonly size: number;
  readonly judgedBy: number;
  readonly outcome: ConformalP | Unavailable;
}

/** Whether the find belongs to any of the labels of one attribute. */
export interface Novelty {
  readonly attribute: string;
  /** Greatest p of the labels that can be judged at `noneLevel`; "none of these" when all are excluded there. */
  readonly greatest: number | Unavailable;
  readonly tooFew: readonly string[];
  readonly verdict: Verdict;
  readonly unseen: UnseenChance | Unavailable;
}

export interface MapPosition {
  readonly places: readonly {
    readonly row: number;
    readonly id: string;
    readonly x: number;
    readonly y: number;
  }[];
  readonly shares: readonly [number, number];
  readonly find: readonly [number, number];
  readonly cloud: readonly (readonly [number, number])[];
}

export interface PlacementFound extends FindingsWithTables {
  readonly options: PlacementOptions;
  readonly unit: 'fragment' | 'item';
  /** Why the find could not be placed at all; null when it could. */
  readonly unplaced: string | null;
  /** Labels of the attributes that the find was compared on, and of those that it lacks. */
  readonly comparedOn: readonly string[];
  readonly lacking: readonly string[];
  readonly neighbours: readonly Neighbour[];
  readonly percentiles: readonly Percentile[];
  readonly judged: readonly JudgedLabel[];
  /** p of the find among all comparanda together, whatever their labels. */
  readonly anywhere: ConformalP | Unavailable;
  readonly novelty: readonly Novelty[];
  readonly moves: readonly Move[];
  readonly next: readonly NextMeasurement[];
  readonly position: MapPosition | Unavailable;
  readonly notes: readonly string[];
}

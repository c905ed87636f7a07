import type { FragmentTable } from '../table.ts';

/** What counting at a level found: terms that stand for narrower ones, and records that say too little. */

/** A broader term that stands for all its narrower ones, since somebody recorded no further. */
export interface Fold {
  readonly term: string;
  readonly label: string;
  /** It may be meant as a kind of its own: the profile of a catalogue that tells its named forms apart can say so. */
  readonly mayBePlain: boolean;
  /** Labels of the narrower terms that were recorded, and are now counted as this one. */
  readonly narrower: readonly string[];
  /** Records that were named more narrowly. */
  readonly records: number;
  /** What is compared that does not tell the narrower ones, worst first: how many of its records say no more. */
  readonly because: readonly { readonly label: string; readonly broad: number; readonly of: number }[];
}

/** Records that say less than the level, too few to fold it: they are left out, and bound the shares. */
export interface TooBroad {
  readonly term: string;
  readonly label: string;
  readonly rows: readonly number[];
  /** Kinds of the level that each of them could be. */
  readonly couldBe: readonly string[];
}

export interface LevelFound {
  readonly attribute: string;
  /** The table with the attribute counted at the level; the very table that was given where nothing changes. */
  readonly table: FragmentTable;
  readonly folds: readonly Fold[];
  readonly tooBroad: readonly TooBroad[];
  /** Whether the level is other than what was recorded. */
  readonly differs: boolean;
}

import type { DispersionTest } from '../../numerics/tests/dispersion.ts';
import type { PermutationalAnova, SimilarityAnalysis } from '../../numerics/tests/permanova.ts';
import type { Unavailable } from '../contract.ts';
import type { Guard } from '../shared/guard/found.ts';
import type { LevelSaid } from '../shared/level/said.ts';
import type { Told } from '../verdicts.ts';

/** Groups compared in all attributes at once, items as the things compared. */
export interface Together {
  readonly attributes: readonly string[];
  readonly groups: readonly { readonly label: string; readonly items: number }[];
  readonly items: number;
  /** How many there are of which those compared were drawn by chance; null where all were taken. */
  readonly drawnFrom: number | null;
  /** Items that could not be compared with all others. */
  readonly setAside: number;
  readonly place: PermutationalAnova | Unavailable;
  readonly dispersion: DispersionTest | Unavailable;
  readonly similarity: SimilarityAnalysis | Unavailable;
  readonly notes: readonly string[];
  readonly told: Told;
  /** At which level kinds among the attributes were compared, and what that changed. */
  readonly level: LevelSaid;
  /** The verdict by the words as recorded; null where the level changes nothing. */
  readonly asRecorded: Told | null;
  /** What could stand for the difference; null where that cannot be looked at. */
  readonly guard: Guard | null;
  /** Whether the groups spread unequally, which can look like a difference of place. */
  readonly spreadTold: Told;
}

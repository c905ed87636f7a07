import type { Unavailable } from '../contract.ts';
import { printCount } from '../phrasing.ts';
import { SPLIT_ERRORS } from '../shared/simulated/split-errors.ts';
import { SPLIT_POWER } from '../shared/simulated/split-power.ts';
import type { Visible } from './split-found.ts';

/** Share of samples in which a split must be found for its distance to count as visible. */
const POWER = 0.8;

/**
 * What split could have been seen at all with so many readings? As simulated for the tests that decide together
 * (`npm run simulate -- split-power`): of the largest number of readings simulated that is no larger, and between two
 * shares in proportion.
 *
 * @param cuts where the rules part the values; the cut that parts them most evenly counts.
 */
export function visibleSplit(values: ArrayLike<number>, cuts: readonly number[]): Visible {
  const share = smallerShare(values, cuts);
  return { share, halves: visibleAt(values.length, 0.5), asCut: visibleAt(values.length, share) };
}

/** How often one kind was taken for two, of how many simulated samples of as many readings as were tried. */
export function takenForTwo(): { readonly found: number; readonly samples: number } {
  return SPLIT_ERRORS.cells.reduce(
    (all, { found, samples }) => ({ found: all.found + found, samples: all.samples + samples }),
    { found: 0, samples: 0 },
  );
}

const SHARES = [...new Set(SPLIT_POWER.cells.map(({ share }) => share))].sort((a, b) => a - b);

/** Of two shares simulated the distance between theirs; where one has none, there is none. */
function visibleAt(n: number, share: number): number | Unavailable {
  const sizes = SPLIT_POWER.cells.map((cell) => cell.n).filter((size) => size <= n);
  const heaps = `heaps of ${Math.round(100 * share)} and ${100 - Math.round(100 * share)} %`;
  const [below, above] = [SHARES.findLast((one) => one <= share), SHARES.find((one) => one >= share)];
  if (sizes.length === 0)
    return { why: `how a split shows in ${printCount(n, 'reading')} was not simulated` };
  if (below === undefined || above === undefined) return { why: `how ${heaps} show was not simulated` };
  const size = sizes.reduce((most, one) => Math.max(most, one));
  const [far, near] = [leastSeen(size, below), leastSeen(size, above)];
  if (far === undefined || near === undefined)
    return {
      why: `with ${printCount(n, 'reading')} ${heaps} can be missed even ${FARTHEST} standard deviations apart`,
    };
  return below === above ? near : near + ((far - near) * (above - share)) / (above - below);
}

const FARTHEST = SPLIT_POWER.cells.reduce((most, { distance }) => Math.max(most, distance), 0);

/** The least distance simulated at which a split was found often enough. */
function leastSeen(n: number, share: number): number | undefined {
  const seen = SPLIT_POWER.cells.filter(
    (cell) => cell.n === n && cell.share === share && cell.found >= POWER * cell.samples,
  );
  return seen.length === 0
    ? undefined
    : seen.reduce((least, { distance }) => Math.min(least, distance), FARTHEST);
}

/** The share of the values on the smaller side of the cut that parts them most evenly, from 0 to 0.5. */
function smallerShare(values: ArrayLike<number>, cuts: readonly number[]): number {
  const n = values.length;
  if (n === 0) return 0;
  return Math.max(
    0,
    ...cuts.map((cut) => {
      const below = Array.from(values).filter((value) => value < cut).length / n;
      return Math.min(below, 1 - below);
    }),
  );
}

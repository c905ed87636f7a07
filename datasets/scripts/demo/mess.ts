import type { Random } from '../../../src/numerics/foundation/random.ts';
import { picked } from './draw.ts';
import type { Fragment } from './fragments.ts';
import type { Resource } from './package.ts';

/** Counts every untidiness put in, so that a reading can be held against it. */
export interface Tally {
  add(kind: string): void;
  readonly counts: Readonly<Record<string, number>>;
}

export function createTally(): Tally {
  const counts: Record<string, number> = {};
  return {
    add: (kind) => {
      counts[kind] = (counts[kind] ?? 0) + 1;
    },
    counts,
  };
}

/** Chooses `count` of the fragments that `fits`; a cell form that is to occur exactly so often. */
export function chosen(
  random: Random,
  name: string,
  fragments: readonly Fragment[],
  count: number,
  fits: (fragment: Fragment) => boolean,
): ReadonlySet<Fragment> {
  const candidates = fragments.filter(fits);
  if (candidates.length < count)
    throw new Error(`only ${candidates.length} fragments for ${count} of "${name}"`);
  return new Set(picked(random.stream(name), candidates.length, count).map((i) => candidates[i]!));
}

/** What one catalogue looks like when it is done. */
export interface Catalogue extends Resource {
  readonly tally: Tally;
  /** Fragments catalogued, a fragment listed twice counted once. */
  readonly fragments: readonly Fragment[];
}

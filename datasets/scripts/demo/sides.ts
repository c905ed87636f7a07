import type { Random } from '../../../src/numerics/foundation/random.ts';
import { chance } from './draw.ts';
import type { Kind } from './scenario.ts';

/** The sides of a structure that a specialist names in one breath with it; null = does not apply. */
export interface Sides {
  /** Whether a twined row takes the same passive elements as the row before, or alternate pairs. */
  readonly engagement: 'simple' | 'diagonal' | null;
  readonly pile: 'present' | 'absent' | null;
  /** Whether the elements of a tabby go singly, or in pairs in one system. */
  readonly grouping: 'single' | 'half-basket' | null;
}

/** Shares of each kind; drawn from a stream of their own, so that no other planted value hangs on them. */
export const SIDES: Readonly<
  Partial<Record<Kind, { readonly diagonal?: number; readonly pile?: number; readonly halfBasket?: number }>>
> = {
  'open twining': { diagonal: 0.3, pile: 0.3 },
  'close twining': { diagonal: 0.15, pile: 0 },
  'balanced tabby': { halfBasket: 0.12 },
  'weft-faced repp': { halfBasket: 0 },
};

export function sidesOf(random: Random, kind: Kind): Sides {
  const { diagonal, pile, halfBasket } = SIDES[kind] ?? {};
  return {
    engagement: diagonal === undefined ? null : chance(random, diagonal) ? 'diagonal' : 'simple',
    pile: pile === undefined ? null : chance(random, pile) ? 'present' : 'absent',
    grouping: halfBasket === undefined ? null : chance(random, halfBasket) ? 'half-basket' : 'single',
  };
}

import type { Direction } from './direction.ts';

export type PlyItem =
  | { readonly kind: 'letter'; readonly twist: Direction; readonly capital: boolean }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'group'; readonly items: readonly PlyItem[] };

/** A notation taken apart: its symbols, and what words say about them. */
export interface PlyItems {
  readonly symbols: readonly PlyItem[];
  /** Letter that a word calls plied, and letter that a word calls spun, where both or one is named. */
  readonly outer: Direction | null;
  readonly inner: Direction | null;
  /** "2-ply". */
  readonly count: number | null;
}

/** A yarn or cord from its final twist inwards; `of` is absent for a single, or where nothing is said. */
export interface Ply {
  readonly twist: Direction | null;
  /** Strands combined by this twist; null where not stated. */
  readonly count: number | null;
  readonly of: Ply | null;
  /** Written as a single: a lower-case letter, or said to be spun. */
  readonly single: boolean;
}

/** Normal form, from the final twist inwards: "S2z", "Z3S2z", "Sz" (number not stated), "S2" (singles not stated). */
export function formatPly(ply: Ply): string {
  if (ply.twist === null && ply.of === null) return ply.count === null ? '' : `${ply.count}-ply`;
  if (ply.of === null && ply.count === null)
    return ply.single ? (ply.twist ?? '').toLowerCase() : (ply.twist ?? '');
  const inner =
    ply.of === null
      ? ''
      : formatPly(ply.of.of === null && ply.of.count === null ? { ...ply.of, single: true } : ply.of);
  return `${ply.twist ?? ''}${ply.count ?? ''}${inner}`;
}

/** A thread of one direction, of which nothing more is known; `spun` where it is said to be a single. */
export const single = (twist: Direction, spun: boolean): Ply => ({
  twist,
  count: null,
  of: null,
  single: spun,
});

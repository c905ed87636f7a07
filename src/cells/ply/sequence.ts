import type { CellContext } from '../context.ts';
import { flagged, notUnderstood } from '../notes.ts';
import type { Note } from '../reading.ts';
import { type Ply, type PlyItem, single } from './notation.ts';

/** Letters, numbers and brackets of a ply notation, from the order in which they stand to the order of the twists. */

export interface Sequence {
  readonly ply: Ply;
  /** A number before the whole, which counts it: the 3 in "3S(2z)". */
  readonly leading?: number;
}

/** Letters, numbers and brackets at one level. */
export function sequence(
  items: readonly PlyItem[],
  order: CellContext['plyOrder'],
  notes: Note[],
): Sequence | null {
  const groups = items.filter((item) => item.kind === 'group');
  const letters = items.filter((item) => item.kind === 'letter');
  if (groups.length > 1 || (groups.length === 1 && letters.length !== 1)) return null;
  const group = groups[0];
  if (group === undefined)
    return letters.length === 1 ? loneLetter(items) : flatSequence(items, order, notes);
  const inner = sequence(group.items, order, notes);
  const outer = letters[0];
  if (inner === null || outer === undefined) return null;
  const at = items.indexOf(group);
  const before = items[at - 1];
  const adjacent = before?.kind === 'number' ? before.value : undefined;
  const own = items.find((item) => item.kind === 'number' && item.value !== adjacent);
  const ply: Ply = {
    twist: outer.twist,
    count: inner.leading ?? adjacent ?? null,
    of: inner.ply,
    single: false,
  };
  return { ply, ...(own?.kind === 'number' ? { leading: own.value } : {}) };
}

/** "2z", "z2", "z", "Z". */
function loneLetter(items: readonly PlyItem[]): Sequence | null {
  const letter = items.find((item) => item.kind === 'letter');
  const numbers = items.filter((item) => item.kind === 'number');
  if (letter?.kind !== 'letter' || numbers.length > 1) return null;
  const count = numbers[0]?.kind === 'number' ? numbers[0].value : undefined;
  const capital = letter.capital && count !== undefined && items[0]?.kind === 'letter';
  // "S2" is an S ply of two; "2z" and "z2" are two z.
  if (capital) return { ply: { twist: letter.twist, count: count ?? null, of: null, single: false } };
  const ply = single(letter.twist, !letter.capital);
  return count === undefined || count === 1
    ? { ply: { ...ply, single: ply.single || count === 1 } }
    : { ply, leading: count };
}

function flatSequence(
  items: readonly PlyItem[],
  order: CellContext['plyOrder'],
  notes: Note[],
): Sequence | null {
  const letters = items.filter((item) => item.kind === 'letter');
  if (letters.length < 2 || letters.length > 4) return null;
  const direction = orderOf(items, letters, order, notes);
  if (direction === null) return null;
  const inwards = direction === 'final-first' ? letters : [...letters].reverse();
  const counts = new Map<PlyItem, number>();
  const numbersLead = direction === 'final-first' || items[0]?.kind === 'number';
  for (const [at, item] of items.entries()) {
    if (item.kind !== 'number') continue;
    const next = items[at + 1];
    const previous = items[at - 1];
    const counted = numbersLead ? (next ?? previous) : (previous ?? next);
    // A number by the final letter says how many strands it combines, which is what is counted one level in.
    const target = counted === inwards[0] ? inwards[1] : counted;
    if (target === undefined || counts.has(target)) return null;
    counts.set(target, item.value);
  }
  let ply: Ply | null = null;
  for (const [depth, letter] of [...inwards.entries()].reverse()) {
    const inner = inwards[depth + 1];
    const count: number | null = inner === undefined ? null : (counts.get(inner) ?? null);
    ply = { twist: letter.twist, count, of: ply, single: ply === null };
  }
  return ply === null ? null : { ply };
}

type Letter = Extract<PlyItem, { kind: 'letter' }>;

function orderOf(
  items: readonly PlyItem[],
  letters: readonly Letter[],
  order: CellContext['plyOrder'],
  notes: Note[],
): 'final-first' | 'singles-first' | null {
  const first = letters[0];
  const last = letters.at(-1);
  if (first?.capital === true && last?.capital === false) return 'final-first';
  if (first?.capital === false && last?.capital === true) return 'singles-first';
  if (order !== undefined) return order;
  const counted = items.some((item) => item.kind === 'number');
  if (counted) {
    const direction = items[0]?.kind === 'number' ? 'singles-first' : 'final-first';
    notes.push(
      flagged(
        'ply-case',
        `all letters have one case; read ${direction.replace('-', ' ')} by the place of the number`,
      ),
    );
    return direction;
  }
  notes.push(
    notUnderstood(
      'ply-order',
      'letters of one case without number or bracket may be ply and singles in either order, or two systems',
    ),
  );
  return null;
}

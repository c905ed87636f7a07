import type { CellContext } from './context.ts';
import { flagged, notUnderstood, readAs } from './notes.ts';
import type { Direction } from './ply-direction.ts';
import { type PlyItem, plyItems } from './ply-items.ts';
import type { Note } from './reading.ts';

/** A yarn or cord from its final twist inwards; `of` is absent for a single, or where nothing is said. */
export interface Ply {
  readonly twist: Direction | null;
  /** Strands combined by this twist; null where not stated. */
  readonly count: number | null;
  readonly of: Ply | null;
  /** Written as a single: a lower-case letter, or said to be spun. */
  readonly single: boolean;
}

export interface PlyReading {
  readonly ply: Ply | null;
  readonly notes: readonly Note[];
}

/**
 * Reads a ply notation in any of its spellings: S2z, S(2z), S2Z, 2zS, z2S, zS, Z3S2z, "z-spun, S-plied",
 * "retors S de 2 z", "2 cabos z torsión S", "2-ply S". Mixed case: the capital is the final ply; a number
 * counts the strands whose letter it stands by; all capitals without a number ("ZS") are questioned unless
 * the source's habit is given. A missing number stays "not stated", never 2. Common practice, no source.
 */
/** "S2z (2-ply)": the number said twice. */
const REPEATED = /^(.*[sz](\d)[sz].*?) ?[,(] ?\2[- ]?(?:ply|fach|brins|capi|cabos)\)?$/iu;

export function parsePly(text: string, order?: CellContext['plyOrder']): PlyReading {
  const items = plyItems(countedSpins(text.replace(REPEATED, '$1')));
  if ('rule' in items) return { ply: null, notes: [items] };
  const notes: Note[] = [];
  if (items.outer !== null && items.inner !== null) {
    const inner: Ply = { twist: items.inner, count: null, of: null, single: true };
    return finished({ twist: items.outer, count: items.count, of: inner, single: false }, notes);
  }
  const parsed = items.symbols.length > 0 ? sequence(items.symbols, order, notes) : null;
  if (parsed === null && items.symbols.length > 0) {
    return { ply: null, notes: notes.length > 0 ? notes : [unclear(text)] };
  }
  const twist = items.outer ?? items.inner;
  let ply: Ply | null = parsed?.ply ?? (twist === null ? null : single(twist, items.inner !== null));
  if (ply === null && items.count === null) return { ply: null, notes: [unclear(text)] };
  ply ??= { twist: null, count: null, of: null, single: false };
  if (parsed?.leading !== undefined) {
    ply = { twist: null, count: parsed.leading, of: { ...ply, single: true }, single: false };
  }
  if (items.count !== null && ply.count === null) ply = { ...ply, count: items.count, single: false };
  // Every letter of the text must stand in the reading: one that is lost may be the one that matters.
  if (directionsIn(formatPly(ply)) < directionsIn(countedSpins(text)))
    return { ply: null, notes: [unclear(text)] };
  return finished(ply, notes);
}

/** Letters S and Z that stand alone or side by side. */
function directionsIn(text: string): number {
  const runs = text.match(/(?<![\p{L}\p{M}'])[sziSZI]{1,4}(?![\p{L}\p{M}])/gu) ?? [];
  return runs.join('').replace(/i/giu, '').length;
}

/**
 * A spin written once for each strand before or behind its ply: "zzS", "zz/S", "z/z/S" and "S/zz" are two z
 * singles plied S. Capitals alone ("ZZS") are left as they are: they may be anything.
 */
function countedSpins(text: string): string {
  if (text.length > 20) return text;
  const plain = text.trim();
  const before = /^((?:z[-/ ]?){2,4}|(?:s[-/ ]?){2,4})(?:[-/ ]| ?→ ?)?([SZ])$/u.exec(plain);
  const behind = before === null ? /^([SZ])[-/ ]?((?:z[-/ ]?){2,4}|(?:s[-/ ]?){2,4})$/u.exec(plain) : null;
  const ply = before?.[2] ?? behind?.[1];
  const spins = (before?.[1] ?? behind?.[2])?.replace(/[-/ ]/gu, '');
  if (ply === undefined || spins === undefined || spins[0] === ply.toLowerCase()) return text;
  return `${ply}${spins.length}${spins[0]}`;
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

const single = (twist: Direction, spun: boolean): Ply => ({ twist, count: null, of: null, single: spun });

const unclear = (text: string): Note =>
  notUnderstood(
    'ply-notation',
    `"${text.slice(0, 40)}" is no ply notation that is known; the text is kept without a reading`,
  );

function finished(ply: Ply, notes: Note[]): PlyReading {
  for (let level: Ply | null = ply; level !== null; level = level.of) {
    if (level.of !== null && level.count === null) {
      notes.push(readAs('ply-number', 'plied, but the number of strands is not stated'));
      break;
    }
  }
  if (ply.twist === null)
    notes.push(flagged('ply-direction', 'the direction of the final twist is not stated'));
  return { ply, notes };
}

interface Sequence {
  readonly ply: Ply;
  /** A number before the whole, which counts it: the 3 in "3S(2z)". */
  readonly leading?: number;
}

/** Letters, numbers and brackets at one level. */
function sequence(items: readonly PlyItem[], order: CellContext['plyOrder'], notes: Note[]): Sequence | null {
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

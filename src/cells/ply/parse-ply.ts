import type { CellContext } from '../context.ts';
import { flagged, notUnderstood, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import { plyItems } from './items.ts';
import { formatPly, type Ply, single } from './notation.ts';
import { sequence } from './sequence.ts';

export interface PlyReading {
  readonly ply: Ply | null;
  readonly notes: readonly Note[];
}

/** "S and Z plies": two yarns, or a ply and its singles. */
const BOTH = /(?<!\p{L})[SZ] ?(?:and|und|u\.|et|e|y|og|&|\+) ?[SZ](?!\p{L})/u;
/** "S2z (2-ply)": the number said twice. */
const REPEATED = /^(.*[sz](\d)[sz].*?) ?[,(] ?\2[- ]?(?:ply|fach|brins|capi|cabos)\)?$/iu;

/**
 * Reads a ply notation in any of its spellings: S2z, S(2z), S2Z, 2zS, z2S, zS, Z3S2z, "z-spun, S-plied",
 * "retors S de 2 z", "2 cabos z torsión S", "2-ply S". Mixed case: the capital is the final ply; a number
 * counts the strands whose letter it stands by; all capitals without a number ("ZS") are questioned unless
 * the source's habit is given. A missing number stays "not stated", never 2. Common practice, no source.
 */
export function parsePly(text: string, order?: CellContext['plyOrder']): PlyReading {
  if (BOTH.test(text))
    return {
      ply: null,
      notes: [
        notUnderstood('alternative', 'both directions are named, of which each may be of another yarn'),
      ],
    };
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

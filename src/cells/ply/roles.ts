import { notUnderstood } from '../notes.ts';
import type { Note } from '../reading.ts';
import type { Direction } from './direction.ts';
import type { PlyItem, PlyItems } from './notation.ts';
import type { Part } from './parts.ts';

/** Lets "z-spun", "S-plied", "torsión S" and "2-ply" say which letter or number they mean. */
export function withRoles(parts: readonly Part[]): PlyItems | Note {
  const strands = parts.find((part) => part.kind === 'strands');
  let rest = [...parts];
  let outer: Direction | null = null;
  let inner: Direction | null = null;
  let count: number | null = null;
  const plied = parts.some(({ kind }) => kind === 'plied');
  const letterAt = (at: number): Direction | null => {
    const part = rest[at];
    return part?.kind === 'letters' && part.text.length === 1 ? (part.text.toUpperCase() as Direction) : null;
  };
  const lettersIn = () =>
    rest.reduce((sum, part) => sum + (part.kind === 'letters' ? part.text.length : 0), 0);
  for (let at = 0; at < rest.length; at += 1) {
    const part = rest[at];
    const role = part?.kind;
    // "2 fils z": beside a number the word for a spun thread counts them.
    const counted = part?.kind === 'spun' && part.before && rest[at - 1]?.kind === 'number';
    if (role === 'strands' || counted) {
      rest.splice(at, 1);
      at -= 1;
    }
    if (counted || (part?.kind !== 'plied' && part?.kind !== 'spun')) continue;
    const number = rest[at - 1];
    rest.splice(at, 1);
    at -= 1;
    if (number?.kind === 'number' && role === 'plied') {
      count = number.value;
      rest.splice(at, 1);
      at -= 1;
      continue;
    }
    // A comma parts what is said of the ply from what is said of its singles: "2 ply, S; singles z".
    const from =
      [at, at + 1].sort((a, b) => (part.before ? b - a : a - b)).find((place) => letterAt(place) !== null) ??
      -1;
    const letter = letterAt(from);
    if (letter === null || (role === 'plied' ? outer : inner) !== null) continue;
    if (lettersIn() === 1 && outer === null && inner === null && role === 'spun') inner = letter;
    else if (role === 'plied') outer = letter;
    else inner = letter;
    rest.splice(from, 1);
    if (from <= at) at -= 1;
  }
  rest = rest.filter(({ kind }) => kind !== 'break');
  if (plied && inner !== null && outer === null && lettersIn() === 1) {
    // "z-spun, 2-ply S": the word for the ply took the number, and the letter that is left is its own.
    const at = rest.findIndex(({ kind }) => kind === 'letters');
    outer = letterAt(at);
    rest.splice(at, 1);
  }
  if (plied && inner === null && outer === null && count !== null && lettersIn() === 1) {
    // "zweifach S": plied of so many, and nothing is said of the singles.
    const at = rest.findIndex(({ kind }) => kind === 'letters');
    const capital = (rest[at] as { text: string }).text;
    if (capital === capital.toUpperCase()) {
      outer = letterAt(at);
      rest.splice(at, 1);
    }
  }
  if (strands !== undefined && !plied && inner === null && outer === null) {
    const number = rest.find((part) => part.kind === 'number');
    if (number?.kind === 'number' && lettersIn() === 0 && strands.ofPly)
      return { symbols: [], outer, inner, count: number.value };
    // "2 brins en S": a capital may be the ply, or the spin of each in a source that writes no small letters.
    if (
      number !== undefined &&
      lettersIn() === 1 &&
      rest.some((part) => part.kind === 'letters' && /^[SZ]$/u.test(part.text))
    )
      return notUnderstood(
        'ply-or-spin',
        'the letter may be the direction of the ply or of the spin of each strand',
      );
  }
  if (outer !== null && inner === null && lettersIn() > 0) {
    // "S-plied from 2 z": the letter that a word calls plied is the final one.
    const bare = rest[0]?.kind === 'open' && rest.at(-1)?.kind === 'close' ? rest.slice(1, -1) : rest;
    rest = [{ kind: 'letters', text: outer }, { kind: 'open' }, ...bare, { kind: 'close' }];
    outer = null;
  }
  if (outer !== null || inner !== null) {
    const number = rest.find((part) => part.kind === 'number');
    if (number?.kind === 'number') count ??= number.value;
    rest = rest.filter((part) => part.kind !== 'number');
    if (outer !== null && inner !== null && rest.length > 0) return misfit();
  }
  const symbols = nest(rest);
  if (symbols === null) return misfit();
  return { symbols, outer, inner, count };
}

const misfit = (): Note =>
  notUnderstood('ply-notation', 'the letters and brackets do not make a ply notation');

function nest(parts: readonly Part[]): readonly PlyItem[] | null {
  const levels: PlyItem[][] = [[]];
  for (const part of parts) {
    const level = levels.at(-1);
    if (level === undefined) return null;
    if (part.kind === 'open') levels.push([]);
    else if (part.kind === 'close') {
      const items = levels.pop();
      const outer = levels.at(-1);
      if (items === undefined || outer === undefined) return null;
      outer.push({ kind: 'group', items });
    } else if (part.kind === 'number') level.push({ kind: 'number', value: part.value });
    else if (part.kind === 'letters') {
      for (const letter of part.text) {
        level.push({
          kind: 'letter',
          twist: letter.toUpperCase() as Direction,
          capital: letter !== letter.toLowerCase(),
        });
      }
    }
  }
  return levels.length === 1 ? (levels[0] ?? null) : null;
}

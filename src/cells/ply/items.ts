import { notUnderstood } from '../notes.ts';
import type { Note } from '../reading.ts';
import { foldCell, plainSigns } from '../text.ts';
import { STRENGTH } from '../wording/twist-words.ts';
import type { PlyItems } from './notation.ts';
import { type Part, partOf } from './parts.ts';
import { withRoles } from './roles.ts';
import { NOISE, PLIED, STRANDS } from './words.ts';

/** "S2z plied yarn": a notation that is whole, and the word for what it is. */
const WHOLE = /^([SZ]\d?\(?\d?[sz]\)?|\d[sz][SZ]|[sz]\d?[SZ])[ ,]+(\p{L}[\p{L} -]*)$/u;
const saysPly = (word: string): boolean =>
  !/^[szi]+$/iu.test(word) && [PLIED, STRANDS, NOISE, STRENGTH].some((words) => words.test(foldCell(word)));

/** Cuts a ply notation into symbols and words; a note where a word is not known. */
export function plyItems(text: string): PlyItems | Note {
  const whole = WHOLE.exec(plainSigns(text));
  if (whole !== null && whole[2]!.match(/[\p{L}\p{M}]+/gu)?.every(saysPly) === true)
    return plyItems(whole[1]!);
  const parts: Part[] = [];
  for (const [raw] of plainSigns(text)
    .slice(0, 120)
    .matchAll(/\d+|[\p{L}\p{M}]+|[^\s\p{L}\p{M}\d]/gu)) {
    const part = partOf(raw);
    if (part === 'unknown') {
      return notUnderstood(
        'ply-notation',
        `"${raw}" is not understood in a ply notation; the text is kept without a reading`,
      );
    }
    if (part?.kind === 'fold')
      parts.push({ kind: 'number', value: part.value }, { kind: 'plied', before: false });
    else if (part !== null) parts.push(part);
  }
  if (parts.some(({ kind }) => kind === 'slash') && !mixedSlash(parts)) {
    return notUnderstood(
      'two-systems',
      'a slash between two letters may part two systems, or singles and ply; split the column or settle it',
    );
  }
  return withRoles(parts.filter(({ kind }) => kind !== 'slash'));
}

/** "z/S": one small and one capital letter, so ply and singles rather than two systems. */
function mixedSlash(parts: readonly Part[]): boolean {
  const letters = parts.flatMap((part) => (part.kind === 'letters' ? [...part.text] : []));
  return (
    letters.length === 2 &&
    letters.some((letter) => letter === letter.toLowerCase()) &&
    letters.some((letter) => letter !== letter.toLowerCase())
  );
}

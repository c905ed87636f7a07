import type { CellContext } from '../../cells/context.ts';
import { readNothing } from '../../cells/nothing.ts';
import { splitCell } from '../../cells/split-cell.ts';
import { isNumberLike } from '../layout/cell-shapes.ts';
import type { SplitRule } from '../profile/profile.ts';
import type { SplitParts } from './split-parts.ts';
import { byPhrases } from './split-phrases.ts';
import { eachWith, type PieceHabit, pickPiece, withSizeWords } from './split-sizes.ts';

/**
 * How one cell of a column is parted among the targets of its rule.
 * @param numeric for each target whether it takes numbers; null where it takes anything.
 * @param sizes what to do with several pieces, where the targets are sizes of the find; null where they are not.
 */
export function splitText(
  text: string,
  rule: SplitRule,
  numeric: readonly (boolean | null)[],
  context: CellContext,
  sizes: PieceHabit | null = null,
): SplitParts {
  const trimmed = text.trim();
  if (trimmed === '') return { parts: rule.into.map(() => ''), rest: '', why: '', level: 'read' };
  switch (rule.by) {
    case 'systems':
      return bySystems(trimmed, rule, numeric, context, sizes);
    case 'separator':
      return bySeparator(trimmed, rule);
    case 'number':
      return byNumber(trimmed, rule);
    case 'phrases':
      return byPhrases(trimmed, rule.into);
  }
}

function bySystems(
  whole: string,
  rule: SplitRule,
  numeric: readonly (boolean | null)[],
  context: CellContext,
  sizes: PieceHabit | null,
): SplitParts {
  const words = withSizeWords(whole, sizes);
  const text = words.text;
  const entire = splitCell(text, context);
  const picked = entire === null && sizes !== null ? pickPiece(text, sizes, context) : null;
  if (picked !== null && picked.split === null) {
    return {
      parts: rule.into.map(() => ''),
      rest: whole,
      why: picked.why,
      level: 'not-understood',
      pieces: picked.listed,
    };
  }
  if (picked !== null && picked.split !== null) {
    const parted = distribute(eachWith(words.each, picked.split.parts), rule, `${picked.why}.`, picked.level);
    return { ...parted, pieces: true };
  }
  const found =
    entire === null || words.why === ''
      ? entire
      : {
          parts: eachWith(words.each, entire.parts),
          note: { ...entire.note, why: `${entire.note.why}; ${words.why}` },
        };
  if (found === null) {
    // A code for "nothing here" holds for every part; any other undivided text belongs to the first.
    const code = context.missing !== undefined && Object.hasOwn(context.missing, whole);
    const everywhere = code || readNothing(whole) !== null;
    return {
      parts: rule.into.map((_, i) => (everywhere || i === 0 ? whole : '')),
      rest: '',
      why: everywhere
        ? 'The cell holds for every part.'
        : 'The cell has one part only; it was taken for the first.',
      level: 'read',
    };
  }
  const { why, level } = found.note;
  // Where all targets take numbers, only the order can tell the parts apart.
  const misfit =
    numeric.some((takes) => takes !== true) &&
    found.parts.some((part, i) => numeric[i] !== undefined && numeric[i] === !isNumberLike(part));
  if (!misfit && found.parts.length <= rule.into.length)
    return distribute(found.parts, rule, `${why}.`, level);
  return byKind(found.parts, numeric, why, level);
}

/** Numbers go to the targets that take numbers, letters to the others, each in order. */
function byKind(
  found: readonly string[],
  numeric: readonly (boolean | null)[],
  why: string,
  level: SplitParts['level'],
): SplitParts {
  const parts = numeric.map(() => '');
  const rest: string[] = [];
  for (const part of found) {
    const number = isNumberLike(part);
    const free = parts.findIndex(
      (taken, i) => taken === '' && (numeric[i] === null || numeric[i] === number),
    );
    if (free < 0) rest.push(part);
    else parts[free] = part;
  }
  const lost = rest.length > 0;
  return {
    parts,
    rest: rest.join(' '),
    why: lost ? `${why}; no attribute takes ${rest.map((part) => `"${part}"`).join(', ')}.` : `${why}.`,
    level: lost ? 'flagged' : level,
  };
}

function bySeparator(text: string, rule: SplitRule): SplitParts {
  const parts = text.split(rule.separator ?? '/').map((part) => part.trim());
  return distribute(parts, rule, `The cell was parted at "${rule.separator ?? '/'}".`, 'read');
}

function distribute(
  found: readonly string[],
  rule: SplitRule,
  why: string,
  level: SplitParts['level'],
): SplitParts {
  const wanted = rule.into.length;
  const offset = rule.align === 'end' ? Math.max(0, wanted - found.length) : 0;
  const parts = rule.into.map((_, i) => found[i - offset] ?? '');
  const rest = found.slice(wanted).join(' ');
  if (rest !== '')
    return { parts, rest, why: `${why} It has more parts than the profile names.`, level: 'flagged' };
  return found.length < wanted
    ? { parts, rest, why: `${why} It has ${found.length} of ${wanted} parts.`, level }
    : { parts, rest, why, level };
}

/** "21.5K" -> "21.5" and "K"; "20.K" -> "20" and "K"; "B" has no number; "腰17" has its word in front. */
function byNumber(text: string, rule: SplitRule): SplitParts {
  const wanted = rule.into;
  const blank = wanted.map(() => '');
  const tail = /^([<>≤≥~≈]?\s*\d+(?:[.,]\d+)?)([.,]?)\s*(\D*)$/u.exec(text);
  if (tail !== null) {
    const [, number, mark, word] = tail;
    return {
      parts: fill(blank, number!, word!.trim()),
      rest: '',
      why:
        mark === ''
          ? 'The number and the letters were parted.'
          : 'A decimal mark without decimals; check the number.',
      level: mark === '' ? 'read' : 'flagged',
    };
  }
  const head = /^(\D*?[^\d.,\s<>])\s*([<>≤≥~≈]?\d+(?:[.,]\d+)?)$/u.exec(text);
  if (head !== null) {
    return {
      parts: fill(blank, head[2]!, head[1]!.trim()),
      rest: '',
      why: 'The word and the number were parted.',
      level: 'read',
    };
  }
  if (!/\d/.test(text)) {
    return { parts: fill(blank, '', text), rest: '', why: 'The cell has no number.', level: 'read' };
  }
  // A letter O or l where a digit belongs, and other mixtures, are for a person to settle.
  return {
    parts: blank,
    rest: text,
    why: 'The cell is not a number with a word before or after it; check it.',
    level: 'not-understood',
  };
}

function fill(parts: readonly string[], number: string, word: string): string[] {
  return parts.map((_, i) => (i === 0 ? number : i === 1 ? word : ''));
}

import type { CellContext } from '../cells/context.ts';
import { readNothing } from '../cells/nothing.ts';
import { splitCell } from '../cells/split-cell.ts';
import { isNumberLike } from './layout/cell-shapes.ts';
import type { SplitRule, SplitTarget } from './profile.ts';

/** One cell taken apart: a text a target ("" where there is none), and what was left over. */
export interface SplitParts {
  readonly parts: readonly string[];
  /** Text that no target took; it is kept in the ledger. */
  readonly rest: string;
  readonly why: string;
  readonly level: 'read' | 'flagged' | 'not-understood';
}

/**
 * How one cell of a column is parted among the targets of its rule.
 * @param numeric for each target whether it takes numbers; null where it takes anything.
 */
export function splitText(
  text: string,
  rule: SplitRule,
  numeric: readonly (boolean | null)[],
  context: CellContext,
): SplitParts {
  const trimmed = text.trim();
  if (trimmed === '') return { parts: rule.into.map(() => ''), rest: '', why: '', level: 'read' };
  switch (rule.by) {
    case 'systems':
      return bySystems(trimmed, rule, numeric, context);
    case 'separator':
      return bySeparator(trimmed, rule);
    case 'number':
      return byNumber(trimmed, rule);
    case 'phrases':
      return byPhrases(trimmed, rule.into);
  }
}

/** "12 x 8": a length and a width side by side. */
const PAIR_OF_SIZES = /\d[\d.,+–-]*\s*(?:mm|cm|m)?\s*[x×]\s*[<>c.a ]*\d/giu;

function bySystems(
  text: string,
  rule: SplitRule,
  numeric: readonly (boolean | null)[],
  context: CellContext,
): SplitParts {
  const found = splitCell(text, context);
  if (found === null && (text.match(PAIR_OF_SIZES)?.length ?? 0) > 1) {
    return {
      parts: rule.into.map(() => ''),
      rest: text,
      why: 'The cell holds the sizes of several pieces and a row can hold one; give each piece a row of its own.',
      level: 'not-understood',
    };
  }
  if (found === null) {
    // A code for "nothing here" holds for every part; any other undivided text belongs to the first.
    const code = context.missing !== undefined && Object.hasOwn(context.missing, text);
    const everywhere = code || readNothing(text) !== null;
    return {
      parts: rule.into.map((_, i) => (everywhere || i === 0 ? text : '')),
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

const NUMBER_BEFORE =
  /((?:c\.|ca\.?|about|approx\.?|[~≈<>])?\s*\d+(?:[.,]\d+)?(?:\s*[½¼¾])?(?:\s*\d+\/\d+)?(?:\s*(?:[-–−/]|to|or)\s*\d+(?:[.,]\d+)?(?:\s*[½¼¾])?)?)\s*$/iu;
const NUMBER_AFTER =
  /^\s*:?\s*((?:c\.|ca\.?|[~≈<>])?\s*\d+(?:[.,]\d+)?(?:\s*(?:[-–−/]|to|or)\s*\d+(?:[.,]\d+)?)?)/iu;
const REACH = 60;

/** Finds numbers in running text by the words that follow or stand before them. */
function byPhrases(text: string, targets: readonly SplitTarget[]): SplitParts {
  const lower = text.toLowerCase();
  const parts = targets.map((target) => {
    for (const phrase of target.before ?? []) {
      const wanted = phrase.toLowerCase();
      for (let at = lower.indexOf(wanted); at >= 0; at = lower.indexOf(wanted, at + 1)) {
        const found = NUMBER_BEFORE.exec(text.slice(Math.max(0, at - REACH), at));
        if (found !== null) return found[1]!.trim();
      }
    }
    for (const phrase of target.after ?? []) {
      const wanted = phrase.toLowerCase();
      for (let at = lower.indexOf(wanted); at >= 0; at = lower.indexOf(wanted, at + 1)) {
        const found = NUMBER_AFTER.exec(text.slice(at + wanted.length, at + wanted.length + REACH));
        if (found !== null) return found[1]!.trim();
      }
    }
    return '';
  });
  const found = parts.filter((part) => part !== '').length;
  return {
    parts,
    rest: text,
    why:
      found === 0 ? 'None of the phrases was met.' : `${found} numbers were found by the words beside them.`,
    level: 'read',
  };
}

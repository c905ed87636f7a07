import { flagged } from '../notes.ts';
import { FRACTIONS, readLiteral } from './literal.ts';
import type { Found, Match, Token } from './token.ts';

const SCIENTIFIC = /(\d{1,9}(?:\.\d{1,9})?)e([+-]?\d{1,2})(?![\p{L}\d.,])/uy;
const NUMBER = /(?:\d+(?:[.,']\d+)*(?:\.(?![.\d]))?|[.,]\d+)/uy;
const SPACED = /\d{1,3}(?: \d{3})+(?![\d.,]| ?\/)/uy;

/** The number at this place: digits with marks, a vulgar fraction, a power of ten, or a list glued by commas. */
export function numberAt(match: Match, decimal: ',' | '.', folded: string, at: number): Found | null {
  const vulgar = FRACTIONS[folded[at] ?? ''];
  if (vulgar !== undefined) return { tokens: [fraction(0, vulgar)], length: 1 };
  const power = match(SCIENTIFIC);
  if (power !== null) {
    const decimals = (power[1]?.split('.')[1] ?? '').length;
    const notes = [flagged('scientific', `"${power[0]}" read as a number with a power of ten`)];
    const step = Number(`1e${Number(power[2]) - decimals}`);
    return { tokens: [{ kind: 'number', value: Number(power[0]), step, notes }], length: power[0].length };
  }
  const spaced = match(SPACED);
  const digits = spaced?.[0] ?? match(NUMBER)?.[0];
  if (digits === undefined) return null;
  const literal = readLiteral(digits.replace(/^[.,]/u, '0$&'), decimal);
  if ('level' in literal) {
    const parts = digits.split(',');
    const list = decimal === '.' && parts.every((part) => /^\d+(?:\.\d+)?$/u.test(part));
    if (!list) return { tokens: [{ kind: 'other', text: digits, tight: false }], length: digits.length };
    const note = flagged(
      'comma-list',
      `"${digits}" read as a list, since its commas fit neither decimals nor thousands`,
    );
    const tokens = parts.flatMap((part, index): Token[] => {
      const one = readLiteral(part, decimal);
      if ('level' in one) return [];
      const number: Token = { kind: 'number', ...one, notes: index === 0 ? [note] : [] };
      return index === 0 ? [number] : [{ kind: 'sign', sign: ',', tight: true }, number];
    });
    return { tokens, length: digits.length };
  }
  const rest = folded.slice(at + digits.length, at + digits.length + 2);
  const joined = FRACTIONS[rest[0] ?? ''] ?? (rest[0] === ' ' ? FRACTIONS[rest[1] ?? ''] : undefined);
  if (joined !== undefined && Number.isInteger(literal.value)) {
    return {
      tokens: [fraction(literal.value, joined)],
      length: digits.length + (rest[0] === ' ' ? 2 : 1),
    };
  }
  const notes =
    spaced === null
      ? literal.notes
      : [flagged('thousands-space', `"${digits}" read as one number with a space between thousands`)];
  return {
    tokens: [{ kind: 'number', value: literal.value, step: literal.step, notes }],
    length: digits.length,
  };
}

/** 3½ -> 3.5, whose smallest step is the half. */
export function fraction(
  whole: number,
  [numerator, denominator]: readonly [number, number],
): Token & { kind: 'number' } {
  return {
    kind: 'number',
    value: (whole * denominator + numerator) / denominator,
    step: 1 / denominator,
    notes: [],
  };
}

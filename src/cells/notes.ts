import type { CellState, Certainty, Note, NumericReading, TermReading, TextReading } from './reading.ts';

/** A rule changed the text into its reading, as the trade would. */
export const readAs = (rule: string, why: string): Note => ({ level: 'read', rule, why });

/** Read, but a person should look again. */
export const flagged = (rule: string, why: string): Note => ({ level: 'flagged', rule, why });

/** No reading; the raw text is kept by whoever holds the cell. */
export const notUnderstood = (rule: string, why: string): Note => ({ level: 'not-understood', rule, why });

/** A numeric cell without a number. */
export function emptyNumeric(state: CellState, notes: readonly Note[]): NumericReading {
  return { kind: 'numeric', low: Number.NaN, high: Number.NaN, state, notes };
}

/** A cell of kinds, grades or yes/no without a term. */
export function emptyTerm(
  state: CellState,
  notes: readonly Note[],
  certainty: Certainty = 'indeterminate',
): TermReading {
  return { kind: 'term', term: null, state, certainty, notes };
}

export function textReading(text: string, state: CellState, notes: readonly Note[]): TextReading {
  return { kind: 'text', text, state, notes };
}

/** Shortens a cell text for a sentence. */
export function quote(text: string): string {
  const flat = text.replace(/\s+/gu, ' ').trim();
  return `"${flat.length > 60 ? `${flat.slice(0, 57)}...` : flat}"`;
}

/** Each note once, in the order of their first appearance. */
export function distinct(notes: readonly Note[]): readonly Note[] {
  return notes.length < 2
    ? notes
    : notes.filter(
        (note, at) => notes.findIndex(({ rule, why }) => rule === note.rule && why === note.why) === at,
      );
}

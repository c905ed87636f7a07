import { takeDoubt } from './certainty.ts';
import type { CellContext } from './context.ts';
import { readFreeTerm } from './free-terms.ts';
import { emptyTerm, notUnderstood, quote, readAs } from './notes.ts';
import { readNothing } from './nothing.ts';
import { formatPly } from './ply/notation.ts';
import { parsePly } from './ply/parse-ply.ts';
import type { Note, TermReading } from './reading.ts';
import { doubtNotes, readTerm, termReading, translated } from './terms.ts';
import { plainSigns } from './text.ts';
import { readTwist, twistTerm } from './twist.ts';

/** A vocabulary of twist: what its own synonyms do not know is read as a direction or a notation. */
export function readTwistCell(
  text: string,
  context: CellContext,
  vocabulary: NonNullable<CellContext['vocabulary']>,
): TermReading {
  const settled = translated(text, context);
  if (settled !== undefined) return readTerm(text, vocabulary, context);
  if (vocabulary.id === 'slant' && /^[\s/\\|]+$/u.test(plainSigns(text)) && text.trim() !== '') {
    const why = `${quote(text)} may be a slant that was drawn, or no more than a dash`;
    return emptyTerm('not-observed', [notUnderstood('drawn-slant', why)]);
  }
  const doubt = takeDoubt(plainSigns(text));
  const { twist, notes } = readTwist(doubt.rest, context);
  if (notes.some(({ rule }) => rule === 'unplied')) return emptyTerm('not-observed', notes);
  // Rows of both slants are a structure with a name, not a question of how one thread was spun.
  const slant = vocabulary.id === 'slant' && twist === 'both' ? twistTerm(twist, vocabulary) : null;
  if (slant !== null) return termReading(slant, doubt.steps, doubtNotes(doubt.marks));
  if (twist !== null) {
    const term = twistTerm(twist, vocabulary);
    if (term !== null) return termReading(term, doubt.steps, [...doubtNotes(doubt.marks), ...notes]);
  }
  const known = readTerm(text, vocabulary, context);
  const problems = notes.filter(({ level }) => level === 'not-understood');
  const informed = known.term !== null || !known.notes.some(({ level }) => level === 'not-understood');
  return informed || problems.length === 0 ? known : emptyTerm('not-observed', problems);
}

/** How a yarn is plied, in the normal form of the notation. */
export function readPlyCell(text: string, context: CellContext): TermReading {
  const settled = translated(text, context);
  if (settled !== undefined) return readFreeTerm(text, context);
  const nothing = readNothing(text, 'without absent');
  if (nothing !== null) return emptyTerm(nothing.state, nothing.notes);
  const doubt = takeDoubt(plainSigns(text));
  const { ply, notes } = parsePly(doubt.rest, context.plyOrder);
  const marks = doubtNotes(doubt.marks);
  if (ply !== null)
    return termReading(formatPly(ply), doubt.steps, [
      ...marks,
      ...rewritten(doubt.rest, formatPly(ply)),
      ...notes,
    ]);
  const { twist } = readTwist(doubt.rest, context);
  if (twist === 'none') {
    return termReading('I', doubt.steps, [
      ...marks,
      readAs('twist-none', `${quote(text)} read as observed without twist`),
    ]);
  }
  return emptyTerm('not-observed', notes);
}

const rewritten = (text: string, normal: string): readonly Note[] =>
  text === normal ? [] : [readAs('ply-notation', `${quote(text)} written as ${normal}`)];

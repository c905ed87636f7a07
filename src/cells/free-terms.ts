import type { AttributeDefinition } from '../attributes/definition.ts';
import { takeDoubt } from './certainty.ts';
import type { CellContext } from './context.ts';
import { emptyTerm, notUnderstood, quote } from './notes.ts';
import { readNothing } from './nothing.ts';
import type { TermReading } from './reading.ts';
import { doubtNotes, termReading, translated, translatedReading } from './terms.ts';
import { nothingInWords } from './wording/nothing-in-words.ts';
import { DENYING, DETERMINING, wordsOf } from './wording/word-classes.ts';

/** Attributes whose cells are names of places and times: there, "unprov." is no name. */
export const NAMES: ReadonlySet<string> = new Set(['site', 'region', 'phase', 'period']);
/** Attributes that say what a thing is, in free words: there a denial names no kind, and a word of doubt is one. */
const THINGS: ReadonlySet<string> = new Set(['recordedUse', 'part', 'colour']);
/**
 * A name may begin with any word ("Likely", "Nok"), so beside one only a longer word of doubt counts, before a capital
 * letter or behind a comma: "vermutlich Drommavel", "Drommavel, probably".
 */
const DOUBTFUL_NAME = /^(?:\p{Ll}{6,} (?=\p{Lu})|.*[,(] ?\p{Ll}{4,}\.?\)?$)/u;

/** "A bag", "bag.", "brown (now)": an article, a full stop at the end, and that it is so today, make no other kind. */
function bareThing(text: string): string {
  const bare = text
    .replace(/^(?:a|an|the|eine?|der|die|das|une?|le|la|il|lo|uno?|una|el|en|et) (?=\p{L}{3})/iu, '')
    .replace(/^(?:now|jetzt|heute|actuellement|ora|oggi|ahora|nu|nå) (?=\p{L}{3})/iu, '')
    .replace(/,? ?[([]?(?<!\p{L})(?:now|today|jetzt|heute|actuellement|ora|oggi|ahora|nu|nå)[)\]]?$/iu, '')
    .replace(/(?<=^[^.]*\p{L}{3})\.$/u, '')
    .trim();
  return bare === '' ? text : bare;
}

/** Reads a kind of an attribute without a vocabulary: every wording is its own kind. */
export function readFreeTerm(
  text: string,
  context: CellContext,
  attribute?: AttributeDefinition,
): TermReading {
  const settled = translated(text, context);
  // A name may hold any word; only a sign is no part of one.
  if (settled !== undefined) return translatedReading(text, settled, (mark) => mark.startsWith('?'));
  const nothing = readNothing(text, 'without absent');
  if (nothing !== null) return emptyTerm(nothing.state, nothing.notes);
  const thing = attribute !== undefined && THINGS.has(attribute.id);
  const written = text.replace(/\s+/gu, ' ').trim();
  const wording = thing ? bareThing(written) : written;
  const said = thing ? nothingInWords(text, attribute) : null;
  if (said !== null) return emptyTerm(said.state, [said.note]);
  const doubt = takeDoubt(wording);
  const meant =
    doubt.steps > 0 &&
    (doubt.marks.every((mark) => mark.startsWith('?')) ||
      (thing && !doubt.marks.includes('( )')) ||
      (attribute !== undefined &&
        NAMES.has(attribute.id) &&
        wording.length < 80 &&
        DOUBTFUL_NAME.test(wording)));
  const rest = meant ? (thing ? bareThing(doubt.rest) : doubt.rest) : wording;
  const [first = '', ...more] = thing ? wordsOf(rest) : [];
  if (more.length > 0 && (DENYING.test(first) || DETERMINING.test(first))) {
    const why = `${quote(text)} says what it is not, and not what it is`;
    return emptyTerm('not-observed', [notUnderstood('denied-term', why)]);
  }
  return meant
    ? termReading(translated(rest, context) ?? rest, doubt.steps, doubtNotes(doubt.marks))
    : termReading(wording, 0, []);
}
